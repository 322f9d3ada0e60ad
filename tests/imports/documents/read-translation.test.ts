import { countSteps } from "../../kit/count-steps.js";
import { describe, expect, it } from "vitest";
import type { Plan } from "../../../src/domain/model/plan.js";
import type { Translation } from "../../../src/domain/model/translation.js";
import { readTranslation } from "../../../src/imports/documents/read-translation.js";
import { translationSchema } from "../../../src/imports/documents/schemas/translation-schema.js";
import { readDocuments } from "../../../src/imports/documents/read-documents.js";
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

describe("a translation that is nothing but mistakes", () => {
  const steps = (count: number, of: string) =>
    Object.fromEntries(Array.from({ length: count }, (_, at) => [`${of}${String(at)}`, "Rühren."]));
  const meal = plan.meals[0];
  if (meal === undefined) throw new Error("the plan has no meals");
  const [step] = meal.steps;
  const large = (count: number): Plan => ({
    ...plan,
    meals: [{ ...meal, steps: Object.keys(steps(count, "s")).map((id) => ({ ...step, id, text: "Stir." }) as never) }],
  });
  const wrong = (count: number) => ({
    meals: { [meal.slug]: { steps: steps(count, "w") } },
    "numbers-differ": Array.from({ length: count }, (_, at) => `none${String(at)}`),
  });

  it("is told of the first hundred, and how many more there are", () => {
    const result = read(wrong(200), large(200));
    if (result.ok) throw new Error("it was taken");
    const more = result.problems.filter(({ code }) => code === "MORE_PROBLEMS");
    expect(result.problems.length).toBe(100);
    expect(more).toEqual([{ code: "MORE_PROBLEMS", path: [], count: 301 }]);
  });

  it("takes about twice the work where it is twice as long", () => {
    const work = (count: number) => {
      const [document, original] = [wrong(count), large(count)];
      return countSteps(() => read(document, original));
    };
    work(10);
    expect(work(280)).toBeLessThan(2.3 * work(140));
  });
});

describe("keys that no translation could keep", () => {
  const problemsOf = (swaps: string) =>
    readDocuments(`kind: translation\nplan: week\nlanguage: de\nmeals: { stew: ${swaps} }\n`, "de.yaml").problems;

  it.each([
    ["{ swaps: { beans: { usda 11233: { note: a }, usda-11233: { note: b } } } }", "usda-11233"],
    ['{ swaps: { beans: { kale: { note: a }, "kale ": { note: b } } } }', "kale "],
  ])("are refused where two name one food: %s", (swaps, got) => {
    const path = ["meals", "stew", "swaps", "beans", got];
    expect(problemsOf(swaps)).toMatchObject([{ line: 4, path, problem: { code: "BAD_SHAPE", got } }]);
  });

  it.each(["{ steps: { __proto__: Rühren. } }", '{ swaps: { "__proto__": { kale: { note: a } } } }'])(
    "are refused where nothing could be kept under them: %s",
    (swaps) => {
      expect(problemsOf(swaps)).toMatchObject([{ line: 4, problem: { code: "BAD_SHAPE" } }]);
      expect(problemsOf(swaps)[0]?.problem).toMatchObject({ got: expect.stringContaining("__proto__") as string });
    },
  );

  it("are refused in every kind of document", () => {
    const { documents, problems } = readDocuments("kind: food\nslug: kale\nnames: { en: kale, __proto__: x }\n", "x");
    expect([documents, problems.length]).toEqual([[], 1]);
  });
});
