import fc from "fast-check";
import { expect, it } from "vitest";
import { thingOfTranslation, translationSlug, type TranslatedThing } from "../../../src/domain/model/translation.js";

// Every form that a tag of a document may have (BCP 47, RFC 5646 section 2.1): language, script, region in letters or digits.
const tags = ["de", "de-AT", "zh-Hant", "zh-Hant-TW", "es-419", "sr-Latn", "sr-Latn-RS", "az-Cyrl-419", "hsb", "en-GB"];
const languages = fc.constantFrom(...tags);
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

// Slugs that begin like a part of a tag, or like the name of a translation.
const beginnings = [
  "plan",
  "component",
  "de",
  "at",
  "latn",
  "419",
  "hant-tw",
  "de-plan",
  "zh-hant-tw-plan",
  "latn-plan",
];
it.each(tags)("leads back from %s too where a slug begins like a tag", (language) => {
  for (const kind of ["PLAN", "COMPONENT"] as const)
    for (const slug of [...beginnings, ...beginnings.map((begin) => `${begin}-x`)])
      expect(thingOfTranslation(translationSlug({ of: { kind, slug }, language }))).toEqual({ kind, slug });
});
