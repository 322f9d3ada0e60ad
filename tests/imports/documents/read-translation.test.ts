import { describe, expect, it } from "vitest";
import type { Plan } from "../../../src/domain/model/plan.js";
import type { Translation } from "../../../src/domain/model/translation.js";
import { readTranslation } from "../../../src/imports/documents/read-translation.js";
import { translationSchema } from "../../../src/imports/documents/schemas/translation-schema.js";
import { demo } from "../../graphql/open-test-app.js";

const [written] = demo.plans;
if (written === undefined) throw new Error("the demo is empty");
const plan: Plan = { ...written, slug: "week", title: "A week of kale", summary: "Three suppers." };

function read(document: object, original: Plan = plan, before: readonly Translation[] = []) {
  const parsed = translationSchema.parse({ kind: "translation", plan: "week", language: "de", ...document });
  return readTranslation(parsed, {
    plans: new Map([[original.slug, original]]),
    components: new Map(),
    localeOf: () => null,
    before: new Map(before.map((each) => ["de-plan-week", each])),
  });
}

const taken = (...given: Parameters<typeof read>): Translation => {
  const result = read(...given);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

describe("the originals that a translation was made from", () => {
  const changed: Plan = { ...plan, title: "A fortnight of kale" };
  const said = { title: "Eine Woche Grünkohl" };
  const of = (translation: Translation) => translation.texts.map((text) => text.of);

  // Whoever says nothing of having looked again has not looked again.
  it.each([
    ["nothing was said nor is", undefined, undefined, "A week of kale"],
    ["the same is said", "2026-11-01", "2026-11-01", "A week of kale"],
    ["what was said is left out", "2026-11-01", undefined, "A week of kale"],
    ["another day is said", "2026-11-01", "2026-11-30", "A fortnight of kale"],
    ["a day is said for the first time", undefined, "2026-11-30", "A fortnight of kale"],
  ])("are those of then or of now: %s", (_, then, now, expected) => {
    const before = taken({ ...said, checked: then });
    expect(of(before)).toEqual(["A week of kale"]);
    expect(of(taken({ ...said, checked: now }, changed, [before]))).toEqual([expected]);
  });

  it("are those of now for a text that is another", () => {
    const before = taken(said);
    expect(of(taken({ title: "Zwei Wochen Grünkohl" }, changed, [before]))).toEqual(["A fortnight of kale"]);
  });
});
