import type { InSlices, Work } from "../../domain/counted-work.js";
import type { Food } from "../../domain/model/food.js";
import type { Household } from "../../domain/model/household.js";
import { foodSlug } from "../../domain/model/open-table-slug.js";
import type { PlanBundle } from "../../domain/model/plan.js";
import { compileFoodNamesInSlices, findFood } from "../../domain/quantity/food-name.js";
import { languageOf } from "../../domain/quantity/reader-locale.js";
import type { DietRule } from "../../domain/nutrition/allergen-rules.js";
import { failed, ok, type Problem, type Result } from "../../domain/problem.js";
import { checkAsked, type AskedPortion, type ofPortion } from "../../domain/plan/check/check-asked.js";
import { nearestCodes } from "../../imports/documents/checks/nearest-words.js";
import type { Deps } from "../deps.js";
import { findFoods } from "../foods/find-foods.js";
import { runInSlices, type Sliced } from "../time-slices.js";
import { longestHouseholdList, readHouseholdInSlices, readLocale, type GivenHousehold } from "./read-household.js";

/** Reads foods as known today, in the order asked for; null where there is none. */
type FoodFinder = (slugs: readonly string[]) => Promise<readonly (Pick<Food, "slug"> | null)[]>;

/**
 * A household as the plans are computed for it, checked once: everything that is wrong with it and with the servings is listed together. Beside
 * `readHousehold`, the foods of its swaps exist. A reader's swaps go with many plans, so one of a food that only other plans have is no
 * mistake; the plan then warns that it does not offer it. Foods are looked up only for such swaps.
 */
export async function readReadersHousehold(
  given: GivenHousehold,
  portions: readonly AskedPortion[],
  diets: readonly Pick<DietRule, "code">[],
  findFoods: FoodFinder,
  sliced: Sliced = {},
  placed?: typeof ofPortion,
): Promise<Result<Household>> {
  const bundles = portions.map(({ bundle }) => bundle);
  const called = await withSlugs(given, bundles, findFoods, sliced);
  const { household, problems } = await runInSlices(sliced, (work) =>
    readHouseholdInSlices(called, bundles, diets, work),
  );
  const all = [
    ...problems,
    ...(await unknownSwaps(household.swaps, given.swaps ?? [], bundles, findFoods, sliced)),
    ...checkAsked(portions, household, placed),
  ];
  return all.length === 0 ? ok(household) : failed(all);
}

/**
 * What is on hand by the slugs of the plans' foods, where somebody wrote a name of one of them ("Möhren", "chick peas"). What is a food's slug
 * stays that food, and what may be two of the plans' foods stays as written: the plan then warns that it is no food.
 */
async function withSlugs(
  given: GivenHousehold,
  bundles: readonly PlanBundle[],
  findFoods: FoodFinder,
  sliced: Sliced,
): Promise<GivenHousehold> {
  const onHand = given.onHand ?? [];
  if (onHand.length === 0 || onHand.length > longestHouseholdList) return given;
  const slugs = new Set(bundles.flatMap(({ foods }) => foods.map(({ slug }) => slug)));
  const locale = readLocale(given.locale ?? null, []);
  const language = locale.ok && locale.value !== null ? languageOf(locale.value) : null;
  const written = [...new Set(onHand.map((each) => each.food))].filter(
    (food): food is string => food !== null && food !== undefined && !slugs.has(foodSlug(food)),
  );
  if (written.length === 0) return given;
  const meant = await runInSlices(sliced, (work) => foodsMeant([...new Set(bundles)], written, language, work));
  if (meant.size === 0) return given;
  for (const food of await findFoods([...meant.keys()])) if (food !== null) meant.delete(food.slug);
  return { ...given, onHand: onHand.map((each) => ({ ...each, food: meant.get(each.food ?? "") ?? each.food })) };
}

/** What names mean in some plans, as far as it is one food: in the reader's language, or else in any. Each name is looked up in each plan. */
function* foodsMeant(
  bundles: readonly PlanBundle[],
  written: readonly string[],
  language: string | null,
  work: Work,
): InSlices<Map<string, string>> {
  const plans = [];
  for (const { foods } of bundles) plans.push(yield* compileFoodNamesInSlices(foods, work));
  const meant = new Map<string, string>();
  for (const name of written)
    for (const spoken of new Set([language, null])) {
      const found = new Set<string>();
      for (const names of plans) {
        work.step(spoken === null ? stepsInAnyLanguage : stepsInOneLanguage);
        yield;
        const match = findFood(names, name, spoken, null);
        if (match.kind === "FOUND") found.add(match.slug);
        else if (match.kind === "AMBIGUOUS") for (const slug of match.slugs) found.add(slug);
      }
      const [slug] = found;
      if (slug === undefined) continue;
      if (found.size === 1) meant.set(name, slug);
      break;
    }
  return meant;
}

/** A name is read in each of its forms before it is known that a plan has no such food. */
const stepsInOneLanguage = 30;
const stepsInAnyLanguage = 120;

/** The same with the foods that the database knows today. */
export const readHouseholdOf = (
  deps: Deps,
  given: GivenHousehold,
  portions: readonly AskedPortion[],
  diets: readonly Pick<DietRule, "code">[],
  placed?: typeof ofPortion,
): Promise<Result<Household>> =>
  readReadersHousehold(given, portions, diets, (slugs) => findFoods(deps, slugs), deps, placed);

type Swap = Household["swaps"][number];

async function unknownSwaps(
  swaps: Household["swaps"],
  asGiven: Household["swaps"],
  bundles: readonly PlanBundle[],
  findFoods: FoodFinder,
  sliced: Sliced,
): Promise<readonly Problem[]> {
  if (swaps.length === 0) return [];
  const inPlans = [...new Set(bundles.flatMap(({ foods }) => foods.map(({ slug }) => slug)))];
  const known = new Set(inPlans);
  const others = [...new Set(swaps.flatMap(({ from, to }) => [from, to]))].filter((slug) => !known.has(slug));
  if (others.length === 0) return [];
  for (const food of await findFoods(others)) if (food !== null) known.add(food.slug);
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
