import path from "node:path";
import { describe, expect, it } from "vitest";
import { readSeeds } from "../../../../seeds/load-seeds.js";
import { noHousehold } from "../../../../src/domain/model/household.js";
import type { AllergenPresence } from "../../../../src/domain/model/food.js";
import { eatenFoods } from "../../../../src/domain/plan/contents/eaten.js";
import type { PlanContents } from "../../../../src/domain/plan/plan-answer.js";
import type { ComputedPlan } from "../../../../src/domain/plan/compile/plan-facts.js";
import { reviewPlan, type ReviewedDifference } from "../../../../src/domain/plan/review/review-plan.js";
import { scalePlan } from "../../../../src/domain/plan/scale-plan.js";
import { shop } from "../../../../src/domain/plan/shop.js";
import type { StorageAnswer } from "../../../../src/domain/storage/guidance.js";
import { density } from "../../../kit/builders.js";

const { bundles: written } = await readSeeds(path.resolve(import.meta.dirname, "../../../../seeds"));
/** As the service published them: water has its density from the open table (USDA SR 26, NDB 14411: 1000 g the litre). */
const bundles = written.map((bundle) => ({
  ...bundle,
  foods: bundle.foods.map((each) => (each.slug === "water" ? { ...each, densities: [density(1)] } : each)),
}));

interface Said {
  readonly presence?: AllergenPresence;
  readonly fits?: boolean | null;
  readonly days?: number | null;
}

/** A demo plan of which this is said of one allergen, one diet and one component. */
function saying(
  slug: string,
  servings: number,
  { presence = "UNKNOWN", fits = null, days = null }: Said,
): ComputedPlan {
  const bundle = bundles.find(({ plan }) => plan.slug === slug)!;
  const scaled = scalePlan(bundle, servings, noHousehold);
  if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
  const allergens = { findings: [{ code: "peanut", presence, asIngredient: { presence } }] };
  const contents = { plan: { allergens, diets: [{ diet: "vegan", fits }] }, meals: new Map() };
  const guidance =
    days === null ? [] : [{ subject: { kind: "COMPONENT", slug: "roast-roots" }, place: "FRIDGE", days }];
  return {
    scaled: scaled.value,
    list: shop([scaled.value], noHousehold),
    storage: { guidance } as unknown as StorageAnswer,
    contents: contents as unknown as PlanContents,
  };
}

function reviewed(
  before: Said,
  after: Said,
  slug = "roots-and-barley",
  servings = 4,
  asBy010 = true,
): readonly ReviewedDifference[] {
  const now = saying(slug, servings, after);
  return reviewPlan({
    before: saying(slug, servings, before),
    after: { ...now, eaten: eatenFoods(now.scaled) },
    servings,
    isClass: () => true,
    asBy010,
  });
}

const ofKind = (kind: string, found: readonly ReviewedDifference[]) =>
  found
    .filter(({ kind: of, path }) => of === kind && path.at(-1) !== "as-ingredient")
    .map(({ before, after, lessSafe }) => [before, after, lessSafe]);

describe("the review of a published plan", () => {
  it("calls less safe what warns of more than before, and not what warns of less", () => {
    const allergen = (before: AllergenPresence, after: AllergenPresence) =>
      ofKind("ALLERGEN", reviewed({ presence: before }, { presence: after }));
    expect(allergen("UNKNOWN", "CONTAINS")).toEqual([["UNKNOWN", "CONTAINS", true]]);
    expect(allergen("DOES_NOT_CONTAIN", "UNKNOWN")).toEqual([["DOES_NOT_CONTAIN", "UNKNOWN", true]]);
    expect(allergen("MAY_CONTAIN", "UNKNOWN")).toEqual([["MAY_CONTAIN", "UNKNOWN", false]]);
    expect(allergen("CONTAINS", "CONTAINS")).toEqual([]);
    // An ingredient is told of apart from traces: it may become less sure while traces are not known all along.
    const both = reviewed({ presence: "DOES_NOT_CONTAIN" }, { presence: "UNKNOWN" });
    expect(both.filter(({ path }) => path.at(-1) === "as-ingredient")).toMatchObject([{ lessSafe: true }]);
    const diet = (before: boolean | null, after: boolean | null) =>
      ofKind("DIET", reviewed({ fits: before }, { fits: after })).map(([, , lessSafe]) => lessSafe);
    expect([diet(true, null), diet(true, false), diet(null, false), diet(null, true)]).toEqual([
      [true],
      [true],
      [true],
      [false],
    ]);
    const keeps = (before: number | null, after: number | null) =>
      ofKind("KEEPING", reviewed({ days: before }, { days: after })).map(([, , lessSafe]) => lessSafe);
    expect([keeps(4, 2), keeps(null, 2), keeps(2, 4), keeps(2, null)]).toEqual([[true], [true], [false], [false]]);
  });

  it("puts what is less safe first", () => {
    const found = reviewed({ presence: "CONTAINS", fits: true }, { presence: "UNKNOWN", fits: false });
    const flags = found.map(({ lessSafe }) => lessSafe);
    expect(flags).toEqual(flags.toSorted((a, b) => Number(b) - Number(a)));
    expect(flags).toContain(true);
  });

  it("names classes that no published rule knows", () => {
    const now = saying("roots-and-barley", 4, {});
    const found = reviewPlan({
      before: now,
      after: { ...now, eaten: [] },
      servings: 4,
      isClass: (code) => code !== "cooked-vegetable",
      asBy010: false,
    });
    expect(found.filter(({ kind }) => kind === "KEEPING")).toEqual([
      {
        kind: "KEEPING",
        path: ["components", "roast-roots", "keeps-as"],
        before: null,
        after: "cooked-vegetable, which no published rule knows",
        lessSafe: true,
      },
    ]);
  });

  // What release 0.1.0 printed for four: a line to taste erased the weighed salt of its meal.
  it.each([
    ["roots-and-barley", "kale-and-barley-salad", 41],
    ["roots-and-barley", "root-mash-and-egg", 168],
    ["roots-and-barley", "barley-soup", 74],
    ["lentils-and-greens", "spread-on-toast", 323],
    ["lentils-and-greens", "lentil-broth", 43],
    ["bean-night", "bean-pot", 38],
  ])(
    "says what 0.1.0 said of the sodium of a meal, and that more is less safe: %s, %s, %d mg",
    (slug, meal, milligrams) => {
      const found = reviewed({}, {}, slug).find(({ kind, path: at }) => kind === "NUTRITION" && at[1] === meal);
      expect(found).toMatchObject({ before: `${milligrams} mg`, lessSafe: true });
    },
  );

  it("names steps that were counted as fixed because nobody had said how they grow", () => {
    const steps = bundles[0]!.components.flatMap(({ slug, steps: all }) => all.map((step) => ({ slug, step })));
    const named = reviewed({}, {}, bundles[0]!.plan.slug).flatMap(({ kind, path: at }) =>
      kind === "STEP" ? [`${at[1]} ${at[3]}`] : [],
    );
    const unsaid = steps.filter(({ step }) => step.grows === "FIXED" && step.growthStated !== true);
    const byHand = unsaid
      .filter(({ step }) => step.attention === "HANDS_ON")
      .map(({ slug, step }) => `${slug} ${step.id}`);
    expect(byHand.length).toBeGreaterThan(0);
    expect(named).toEqual(expect.arrayContaining(byHand));
    const said = steps.filter(({ step }) => step.grows !== "FIXED" || step.growthStated === true);
    expect(named.filter((each) => said.some(({ slug, step }) => each === `${slug} ${step.id}`))).toEqual([]);
  });

  it("finds nothing of sodium where the same is said", () => {
    const meals = reviewed({}, {}, "lentils-and-greens").map(({ path: at }) => at[1]);
    expect(meals).toContain("lentil-broth");
    expect(meals).not.toContain("greens-omelette");
    expect(reviewed({}, {}, "lentils-and-greens", 4, false)).toEqual([]);
  });
});
