import type { Household } from "../../../domain/model/household.js";
import { labelSchemeOf } from "../../../domain/nutrition/label-figure.js";
import { lateMeals } from "../../../domain/plan/session/late-meals.js";
import type { ScaledPlan } from "../../../domain/plan/scaled.js";
import { wholeDay, type DaySession } from "../../../domain/plan/session/split-session.js";
import { kitchenOf } from "../../../domain/plan/session/session-input.js";
import { shopInSlices } from "../../../domain/plan/shop.js";
import { allergensIn, cautionsIn, dietsIn } from "../../../exports/sentences/rules-in-language.js";
import { partIn } from "../../../exports/words/part-words.js";
import { wordsFor } from "../../../exports/words/words-for.js";
import { runInSlices } from "../../../services/time-slices.js";
import { prepSessionInSlices, prepSessionsInSlices } from "../../../services/answers/plan-prep-session.js";
import { inStage } from "../../../services/answer-stage.js";
import { findCautionsInSlices, stateAllergens, stateDiets } from "../../../services/answers/state-contents.js";
import { valueOf } from "../../errors.js";
import { showAmount, showScaledLine } from "../../../exports/words/shown-amount.js";
import type {
  ScaledComponentResolvers,
  ScaledLineResolvers,
  ScaledMealResolvers,
  ScaledPlanResolvers,
} from "../../generated/resolver-types.js";
import type {
  ScaledComponentParent,
  ScaledLineParent,
  ScaledMealParent,
  ScaledPlanParent,
} from "../../parent-types.js";
import { guidanceInPlan } from "./storage-guidance.js";
import type { FieldsToResolve } from "../fields-to-resolve.js";
import { componentOf, componentParent, factsOf, foodOf, mealParent } from "../make-parents.js";
import { shownWarnings } from "./warning.js";
import { languagesOf } from "../../../exports/words/languages-of.js";

/** A session with the meals it is late for. */
const timed = (each: DaySession, scaled: ScaledPlan, household: Household) => ({
  ...each,
  late: lateMeals(each, scaled, household),
});

export const scaledPlanResolvers: FieldsToResolve<ScaledPlanResolvers, ScaledPlanParent> = {
  servings: ({ scaled }) => scaled.servings,
  languages: ({ scaled, show }) => [...languagesOf(show, scaled.bundle)],
  language: ({ scaled }) => scaled.bundle.plan.locale,
  title: ({ scaled }) => scaled.bundle.plan.title,
  summary: ({ scaled }) => scaled.bundle.plan.summary,
  introduction: ({ scaled }) => scaled.bundle.plan.introduction ?? null,
  notes: ({ scaled }) => scaled.bundle.plan.notes ?? null,
  tips: ({ scaled }) => scaled.bundle.plan.tips ?? null,
  regions: ({ household }) => household.regions ?? [],
  meals: (plan) => plan.scaled.meals.map((meal) => ({ scaled: meal, frozen: plan.frozen, show: plan.show, plan })),
  components: ({ scaled, frozen, show }) => scaled.components.map((made) => ({ scaled: made, frozen, show })),
  shoppingList: async ({ scaled, household, frozen, show, today }, _, { deps }) => {
    const list = await inStage(deps, "shop", () =>
      runInSlices(deps, (work) => shopInSlices([scaled], household, today, work)),
    );
    return { list, plans: [frozen], show };
  },
  storage: async (plan) => guidanceInPlan(await plan.keeping(), plan),
  session: async ({ scaled, household, rules, frozen, show }, _, { deps }) => ({
    ...timed(
      wholeDay(
        scaled,
        valueOf(
          await inStage(deps, "schedule", () =>
            runInSlices(deps, (work) => prepSessionInSlices(scaled, household, rules, work)),
          ),
        ),
      ),
      scaled,
      household,
    ),
    cooks: kitchenOf(scaled.bundle.plan.kitchen, household).cooks,
    frozen,
    locale: show.locale,
    degrees: show.degrees,
  }),
  sessions: async ({ scaled, household, rules, frozen, show }, _, { deps }) => {
    const { days } = await inStage(deps, "schedule", () =>
      runInSlices(deps, (work) => prepSessionsInSlices(scaled, household, rules, work)),
    );
    const { cooks } = kitchenOf(scaled.bundle.plan.kitchen, household);
    return days.map((each) => ({
      ...timed(each, scaled, household),
      cooks,
      frozen,
      locale: show.locale,
      degrees: show.degrees,
    }));
  },
  allergens: async ({ scaled, household, rules, frozen, show }, _, { deps }) => {
    const stated = await runInSlices(deps, (work) => stateAllergens(scaled, null, household, rules, deps.clock, work));
    return { ...allergensIn(stated, wordsFor(show.locale)), frozen };
  },
  diets: async ({ scaled, household, rules, frozen, show }, _, { deps }) => {
    const stated = await runInSlices(deps, (work) => stateDiets(scaled, null, household, rules, deps.clock, work));
    return dietsIn(stated, wordsFor(show.locale)).map((diet) => ({ ...diet, frozen }));
  },
  nutrition: async ({ nutrition, household, frozen }) => ({
    ...(await nutrition()).plan,
    labelScheme: labelSchemeOf(household.region),
    frozen,
  }),
  cautions: async ({ scaled, household, frozen, rules, show }, _, { deps }) => {
    const { cautions } = await runInSlices(deps, (work) => findCautionsInSlices(scaled, household, rules, work));
    return cautionsIn(cautions, wordsFor(show.locale)).map((caution) => ({ ...caution, frozen }));
  },
  // Whose rules all of it goes by comes first.
  warnings: async ({ scaled, keeping, show }) =>
    shownWarnings(
      [...scaled.warnings, ...(await keeping()).warnings].toSorted(
        (a, b) => Number(b.code === "REGION_NOT_GIVEN") - Number(a.code === "REGION_NOT_GIVEN"),
      ),
      [scaled.bundle],
      show,
    ),
};

export const scaledMealResolvers: FieldsToResolve<ScaledMealResolvers, ScaledMealParent> = {
  meal: ({ scaled, frozen }) => mealParent(frozen, scaled.meal),
  factor: ({ scaled }) => scaled.factor,
  allergens: async ({ scaled: { meal }, plan: { scaled, household, rules }, frozen, show }, _, { deps }) => {
    const stated = await runInSlices(deps, (work) =>
      stateAllergens(scaled, meal.slug, household, rules, deps.clock, work),
    );
    return { ...allergensIn(stated, wordsFor(show.locale)), frozen };
  },
  diets: async ({ scaled: { meal }, plan: { scaled, household, rules }, frozen, show }, _, { deps }) => {
    const stated = await runInSlices(deps, (work) => stateDiets(scaled, meal.slug, household, rules, deps.clock, work));
    return dietsIn(stated, wordsFor(show.locale)).map((diet) => ({ ...diet, frozen }));
  },
  nutrition: async ({ scaled, plan, frozen }) => {
    const found = (await plan.nutrition()).meals.find(({ meal }) => meal === scaled.meal.slug);
    if (found === undefined) throw new Error(`the meal ${scaled.meal.slug} has no nutrition`);
    return { ...found.nutrition, labelScheme: labelSchemeOf(plan.household.region), frozen };
  },
  lines: ({ scaled, frozen, show }) => scaled.lines.map((line) => ({ scaled: line, frozen, show })),
};

export const scaledComponentResolvers: FieldsToResolve<ScaledComponentResolvers, ScaledComponentParent> = {
  component: ({ scaled, frozen }) => componentParent(frozen, scaled.component),
  route: ({ scaled, frozen }) => scaled.route && { ...scaled.route, frozen },
  batches: ({ scaled }) => scaled.batches,
  loads: ({ scaled }) => scaled.loads,
  made: ({ scaled, show }) => showAmount(scaled.made, scaled.component, show),
  used: ({ scaled, show }) => showAmount(scaled.used, scaled.component, show),
  leftOver: ({ scaled, show }) => showAmount(scaled.leftOver, scaled.component, show),
  onHand: ({ scaled, show }) => showAmount(scaled.onHand, scaled.component, show),
  lines: ({ scaled, frozen, show }) => scaled.lines.map((line) => ({ scaled: line, frozen, show })),
};

export const scaledLineResolvers: FieldsToResolve<ScaledLineResolvers, ScaledLineParent> = {
  line: ({ scaled, frozen }) => ({ ...scaled.line, frozen }),
  food: ({ scaled, frozen }) => foodOf(frozen, scaled.item),
  component: ({ scaled, frozen }) => componentOf(frozen, scaled.item),
  part: ({ scaled }) => (scaled.item.kind === "FOOD" ? scaled.item.part : null),
  partName: ({ scaled: { item }, show }) =>
    item.kind === "FOOD" && item.part !== null ? partIn(show.locale, item.part) : null,
  swapped: ({ scaled: { item, line } }) =>
    item.kind === "FOOD" && line.item.kind === "FOOD" && item.food !== line.item.food,
  amount: ({ scaled, frozen, show }) => showScaledLine(scaled, factsOf(frozen, scaled.item), show),
};
