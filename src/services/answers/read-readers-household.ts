import type { InSlices, Work } from "../../domain/counted-work.js";
import type { Household } from "../../domain/model/household.js";
import { foodSlug } from "../../domain/model/open-table-slug.js";
import type { PlanBundle } from "../../domain/model/plan.js";
import type { DietRule } from "../../domain/nutrition/allergen-rules.js";
import { failed, ok, type Problem, type Result } from "../../domain/problem.js";
import { checkAsked, type AskedPortion, type ofPortion } from "../../domain/plan/check/check-asked.js";
import { nearestCodes } from "../../domain/quantity/naming/nearest-words.js";
import type { Deps } from "../deps.js";
import { findFoods } from "../foods/find-foods.js";
import { runInSlices, type Sliced } from "../time-slices.js";
import { namesFor } from "../foods/names-for.js";
import type { FoodReader } from "../foods/foods-today.js";
import { findOnHandFoods, type FoodCatalogue } from "./on-hand-foods.js";
import { readHouseholdInSlices, type GivenHousehold } from "./read-household.js";

/**
 * A household as the plans are computed for it, checked once: everything that is wrong with it and with the servings is listed together. Beside
 * `readHousehold`, the foods on hand and those of its swaps exist. A reader's swaps go with many plans, so one of a food that only other plans have is no
 * mistake; the plan then warns that it does not offer it. Foods are looked up only for such swaps.
 */
export async function readReadersHousehold(
  given: GivenHousehold,
  portions: readonly AskedPortion[],
  diets: readonly Pick<DietRule, "code">[],
  catalogue: FoodCatalogue,
  sliced: Sliced = {},
  placed?: typeof ofPortion,
): Promise<Result<Household>> {
  const bundles = portions.map(({ bundle }) => bundle);
  const foods = await findOnHandFoods(given, bundles, catalogue, sliced);
  const { household, problems } = await runInSlices(sliced, (work) =>
    readHouseholdInSlices(given, bundles, diets, work, foods),
  );
  const all = [
    ...problems,
    ...(await unknownSwaps(household.swaps, given.swaps ?? [], bundles, catalogue, sliced)),
    ...checkAsked(portions, household, placed),
  ];
  return all.length === 0 ? ok(household) : failed(all);
}

/** The same with the foods that the database knows today. */
export const readHouseholdOf = (
  deps: Deps,
  given: GivenHousehold,
  portions: readonly AskedPortion[],
  diets: readonly Pick<DietRule, "code">[],
  placed?: typeof ofPortion,
): Promise<Result<Household>> =>
  readReadersHousehold(
    given,
    portions,
    diets,
    foodCatalogue(deps, (slugs) => findFoods(deps, slugs)),
    deps,
    placed,
  );

/** The foods of the database that readers may name. */
export const foodCatalogue = (deps: Deps, bySlugs: FoodReader): FoodCatalogue => ({
  bySlugs,
  names: async () => (await namesFor(deps, null)).names,
});

type Swap = Household["swaps"][number];

async function unknownSwaps(
  swaps: Household["swaps"],
  asGiven: Household["swaps"],
  bundles: readonly PlanBundle[],
  { bySlugs }: FoodCatalogue,
  sliced: Sliced,
): Promise<readonly Problem[]> {
  if (swaps.length === 0) return [];
  const inPlans = [...new Set(bundles.flatMap(({ foods }) => foods.map(({ slug }) => slug)))];
  const known = new Set(inPlans);
  const others = [...new Set(swaps.flatMap(({ from, to }) => [from, to]))].filter((slug) => !known.has(slug));
  if (others.length === 0) return [];
  for (const food of await bySlugs(others)) if (food !== null) known.add(food.slug);
  return runInSlices(sliced, (work) => swapsOfNoFood(swaps, asGiven, inPlans, known, work));
}

/** Each is looked for among the foods of the plans. */
function* swapsOfNoFood(
  swaps: Household["swaps"],
  asGiven: Household["swaps"],
  inPlans: readonly string[],
  known: ReadonlySet<string>,
  work: Work,
): InSlices<readonly Problem[]> {
  const problems: Problem[] = [];
  for (const swap of swaps)
    for (const side of ["from", "to"] as const) {
      const slug = swap[side];
      if (known.has(slug)) continue;
      work.step(inPlans.length);
      yield;
      const nearest = nearestCodes(slug, inPlans);
      const what = `the slug of a food${nearest.length > 0 ? `; near it in the plan: ${nearest.join(", ")}` : " of the plan"}`;
      const path = ["household", "swaps", placeOf(swap, asGiven), side];
      problems.push({ code: "BAD_HOUSEHOLD", path, what, value: slug.slice(0, 60) });
    }
  return problems;
}

const placeOf = (swap: Swap, asGiven: readonly Swap[]): number =>
  asGiven.findIndex(({ from, to }) => foodSlug(from) === swap.from && foodSlug(to) === swap.to);
