import fc from "fast-check";
import { expect, it } from "vitest";
import { thingOfTranslation, translationSlug, type TranslatedThing } from "../../../src/domain/model/translation.js";

// Every form that a tag of a document may have (BCP 47, RFC 5646 section 2.1): language, script, region in letters or digits.
const languages = fc.constantFrom("de", "de-AT", "zh-Hant-TW", "es-419", "sr-Latn", "hsb", "en-GB");
const slugs = fc
  .array(fc.constantFrom("plan", "component", "de", "b", "at", "419", "week", "latn"), { minLength: 1, maxLength: 5 })
  .map((words) => words.join("-"));
const things: fc.Arbitrary<TranslatedThing> = fc.record({
  kind: fc.constantFrom("PLAN" as const, "COMPONENT" as const),
  slug: slugs,
});

it("is named so that its name leads back to what it translates, whatever words that is called by", () => {
  fc.assert(
    fc.property(things, languages, (of, language) => {
      expect(thingOfTranslation(translationSlug({ of, language }))).toEqual(of);
    }),
    { examples: [[{ kind: "PLAN", slug: "plan-b" }, "de"]] },
  );
});
