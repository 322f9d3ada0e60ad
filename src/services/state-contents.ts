import type { Food } from "../domain/model/food.js";
import type { Household } from "../domain/model/household.js";
import { askedRegion, regionsOf, type RegionOwner } from "../domain/model/region.js";
import { latest, onceFor } from "../domain/once-for.js";
import { allergenStatement, type AllergenStatement } from "../domain/nutrition/allergens.js";
import type { AllergenRules } from "../domain/nutrition/allergen-rules.js";
import { dietStatements, type DietStatement } from "../domain/nutrition/diets.js";
import type { CompiledPlan } from "../domain/plan/compiled-plan.js";
import { effectiveServings } from "../domain/plan/eaters.js";
import { planNutrition } from "../domain/plan/contents.js";
import { foodsEaten, foodsOfDish } from "../domain/plan/foods-eaten.js";
import type { Contents, PlanContents } from "../domain/plan/plan-answer.js";
import type { RuleSet } from "../domain/plan/rule-set.js";
import type { ScaledPlan } from "../domain/plan/scaled.js";
import { isCooking } from "../domain/prep-session/heating.js";
import { cautionedThings } from "../domain/storage/cautioned-things.js";
import { cautionsFor, type CautionsFound } from "../domain/storage/cautions.js";
import type { Clock } from "./deps.js";

export type { Contents } from "../domain/plan/plan-answer.js";

/** What is said about lists of foods. Those of a dish are one list for all households of a compiled plan, so each is judged once. */
interface Statements {
  allergens(foods: readonly Food[]): AllergenStatement;
  diets(foods: readonly Food[]): readonly DietStatement[];
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

const statementsBy = onceFor((rules: AllergenRules) =>
  latest(
    "statements",
    keptRegions,
    ({ region, asked, whose, today }) => JSON.stringify([region, asked, whose, today]),
    ({ region, asked, whose, today }: StatedFor): Statements => ({
      allergens: onceFor((foods) => ({ ...allergenStatement(foods, rules, region, today), asked, whose })),
      diets: onceFor((foods) => dietStatements(foods, rules, region)),
    }),
  ),
);

function statementsFor(household: Household, { allergens: rules }: RuleSet, clock: Clock): Statements {
  const today = clock().toISOString().slice(0, 10);
  const [first] = regionsOf(household);
  const { region } = household;
  return statementsBy(rules)({ region, asked: askedRegion(household), whose: first?.owner ?? null, today });
}

/** Allergens and diets of the whole plan and of each meal by slug, by the lists in force today in the reader's region. */
export function stateContents(
  { compiled }: ScaledPlan,
  household: Household,
  rules: RuleSet,
  clock: Clock,
): PlanContents {
  const { allergens, diets } = statementsFor(household, rules, clock);
  const of = (foods: readonly Food[]): Contents => ({ allergens: allergens(foods), diets: diets(foods) });
  const { plan, meals } = foodsEaten(compiled);
  return { plan: of(plan), meals: new Map([...meals].map(([meal, foods]) => [meal, of(foods)])) };
}

/** Allergens of the plan, or of one of its meals alone. */
export const stateAllergens = (
  { compiled }: ScaledPlan,
  meal: string | null,
  household: Household,
  rules: RuleSet,
  clock: Clock,
): AllergenStatement => statementsFor(household, rules, clock).allergens(foodsOfDish(compiled, meal));

/** Diets of the plan, or of one of its meals alone. */
export const stateDiets = (
  { compiled }: ScaledPlan,
  meal: string | null,
  household: Household,
  rules: RuleSet,
  clock: Clock,
): readonly DietStatement[] => statementsFor(household, rules, clock).diets(foodsOfDish(compiled, meal));

/** Nutrition of the plan and its meals for the servings really eaten. */
export const stateNutrition = (scaled: ScaledPlan, household: Household) =>
  planNutrition(scaled, effectiveServings(scaled.servings, household));

/** The cautions that are due, with the routes and foods as they were taken. */
export const findCautions = (
  { compiled }: ScaledPlan,
  { region }: Pick<Household, "region">,
  { safety }: RuleSet,
): CautionsFound => cautionsOf(compiled)(safety)(region);

const cautionsOf = onceFor((plan: CompiledPlan) => {
  const made = plan.makeOrder
    .map((index) => plan.components[index]!)
    .map((each) => ({ ...each, isHeated: (each.route?.steps ?? each.component.steps).some(isCooking) }));
  const things = cautionedThings(made, plan.meals, plan.bundle.foods);
  return onceFor((safety: RuleSet["safety"]) =>
    latest(
      "cautions",
      keptRegions,
      (region: string | null) => region ?? "",
      (region) => cautionsFor(things, safety, region),
    ),
  );
});
