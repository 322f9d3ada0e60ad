import type { Food } from "../../domain/model/food.js";
import type { Household } from "../../domain/model/household.js";
import { askedRegion, regionsOf, type RegionOwner } from "../../domain/model/region.js";
import { memoizeLatest, memoizeLatestInSlices, memoize, memoizeInSlices } from "../../domain/memoize.js";
import { allergenStatementInSlices, type AllergenStatement } from "../../domain/nutrition/allergens.js";
import type { AllergenRules } from "../../domain/nutrition/allergen-rules.js";
import { dietStatementsInSlices, type DietStatement } from "../../domain/nutrition/diets.js";
import type { CompiledPlan } from "../../domain/plan/compile/compiled-plan.js";
import { effectiveServings } from "../../domain/plan/contents/eaters.js";
import { nutritionInSlices, type PlanNutrition } from "../../domain/plan/contents/contents.js";
import { foodsEaten, foodsOfDish } from "../../domain/plan/contents/foods-eaten.js";
import type { Contents, PlanContents } from "../../domain/plan/plan-answer.js";
import type { RuleSet } from "../../domain/plan/compile/rule-set.js";
import type { ScaledPlan } from "../../domain/plan/scaled.js";
import { isCooking } from "../../domain/prep-session/heating.js";
import { cautionedThings } from "../../domain/storage/cautioned-things.js";
import { cautionsInSlices, type CautionsFound } from "../../domain/storage/cautions.js";
import { runToEnd, unlimitedWork, type InSlices, type Work } from "../../domain/counted-work.js";
import type { Clock } from "../deps.js";
import { utcDay } from "../../domain/utc-day.js";

/** What is said about lists of foods. Those of a dish are one list for all households of a compiled plan, so each is judged once. */
interface Statements {
  allergens(foods: readonly Food[], work: Work): InSlices<AllergenStatement>;
  diets(foods: readonly Food[], work: Work): InSlices<readonly DietStatement[]>;
}

interface StatedFor {
  readonly region: string | null;
  readonly asked: string | null;
  readonly whose: RegionOwner | null;
  /** ISO date. */
  readonly today: string;
}

/** Regions of readers, each on its day. */
const keptRegions = 32;

const statementsBy = memoize((rules: AllergenRules) =>
  memoizeLatest(
    "statements",
    keptRegions,
    ({ region, asked, whose, today }) => JSON.stringify([region, asked, whose, today]),
    ({ region, asked, whose, today }: StatedFor): Statements => ({
      allergens: memoizeInSlices(function* (foods, work) {
        return { ...(yield* allergenStatementInSlices(foods, rules, region, today, work)), asked, whose };
      }),
      diets: memoizeInSlices((foods, work) => dietStatementsInSlices(foods, rules, region, work)),
    }),
  ),
);

function statementsFor(household: Household, { allergens: rules }: RuleSet, clock: Clock): Statements {
  const today = utcDay(clock());
  const [first] = regionsOf(household);
  const { region } = household;
  return statementsBy(rules)({ region, asked: askedRegion(household), whose: first?.owner ?? null, today });
}

/** Allergens and diets of the whole plan and of each meal by slug, by the lists in force today in the reader's region. */
export const stateContents = (scaled: ScaledPlan, household: Household, rules: RuleSet, clock: Clock): PlanContents =>
  runToEnd(stateContentsInSlices(scaled, household, rules, clock, unlimitedWork));

/** The same turn by turn. */
export function* stateContentsInSlices(
  { compiled }: ScaledPlan,
  household: Household,
  rules: RuleSet,
  clock: Clock,
  work: Work,
): InSlices<PlanContents> {
  const { allergens, diets } = statementsFor(household, rules, clock);
  const of = function* (foods: readonly Food[]): InSlices<Contents> {
    return { allergens: yield* allergens(foods, work), diets: yield* diets(foods, work) };
  };
  const eaten = foodsEaten(compiled);
  const plan = yield* of(eaten.plan);
  const meals = new Map<string, Contents>();
  for (const [meal, foods] of eaten.meals) meals.set(meal, yield* of(foods));
  return { plan, meals };
}

/** Allergens of the plan, or of one of its meals alone. */
export const stateAllergens = (
  { compiled }: ScaledPlan,
  meal: string | null,
  household: Household,
  rules: RuleSet,
  clock: Clock,
  work: Work,
): InSlices<AllergenStatement> => statementsFor(household, rules, clock).allergens(foodsOfDish(compiled, meal), work);

/** Diets of the plan, or of one of its meals alone. */
export const stateDiets = (
  { compiled }: ScaledPlan,
  meal: string | null,
  household: Household,
  rules: RuleSet,
  clock: Clock,
  work: Work,
): InSlices<readonly DietStatement[]> =>
  statementsFor(household, rules, clock).diets(foodsOfDish(compiled, meal), work);

/** Nutrition of the plan and its meals for the servings really eaten. */
export const stateNutrition = (scaled: ScaledPlan, household: Household): PlanNutrition =>
  runToEnd(stateNutritionInSlices(scaled, household, unlimitedWork));

/** The same turn by turn. */
export const stateNutritionInSlices = (scaled: ScaledPlan, household: Household, work: Work): InSlices<PlanNutrition> =>
  nutritionInSlices(scaled, effectiveServings(scaled.servings, household), work);

/** The cautions that are due, with the routes and foods as they were taken. */
export const findCautions = (scaled: ScaledPlan, household: Pick<Household, "region">, rules: RuleSet): CautionsFound =>
  runToEnd(findCautionsInSlices(scaled, household, rules, unlimitedWork));

/** The same turn by turn. */
export const findCautionsInSlices = (
  { compiled }: ScaledPlan,
  { region }: Pick<Household, "region">,
  { safety }: RuleSet,
  work: Work,
): InSlices<CautionsFound> => cautionsOf(compiled)(safety)({ region, work });

const cautionsOf = memoize((plan: CompiledPlan) => {
  const made = plan.makeOrder
    .map((index) => plan.components[index]!)
    .map((each) => ({ ...each, isHeated: (each.route?.steps ?? each.component.steps).some(isCooking) }));
  const things = cautionedThings(made, plan.meals, plan.bundle.foods);
  return memoize((safety: RuleSet["safety"]) =>
    memoizeLatestInSlices(
      "cautions",
      keptRegions,
      ({ region }: { readonly region: string | null; readonly work: Work }) => region ?? "",
      ({ region, work }) => cautionsInSlices(things, safety, region, work),
    ),
  );
});
