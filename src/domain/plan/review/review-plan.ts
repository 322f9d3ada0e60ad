import type { AllergenPresence } from "../../model/food.js";
import { growthOf } from "../../prep-session/solver/step-growth.js";
import { comparePlans, type PlanDifference } from "./compare-plans.js";
import type { EatenFood, EatenMeal } from "../contents/eaten.js";
import { isWater, partNutrients } from "../contents/eaten-grams.js";
import type { ComputedPlan } from "../compile/plan-facts.js";

/** Something that readers of a published plan find otherwise than it was published. */
export interface ReviewedDifference extends PlanDifference {
  /** What was said before is less careful than what is said now. */
  readonly lessSafe: boolean;
}

/** A plan computed with what is eaten of it. */
interface ReviewedPlan extends ComputedPlan {
  readonly eaten: readonly EatenMeal[];
}

interface ReviewQuestion {
  /** As it was frozen: facts of its own foods, and the rules it was checked against. */
  readonly before: ComputedPlan;
  /** With what is known today. */
  readonly after: ReviewedPlan;
  /** Persons that share each meal. */
  readonly servings: number;
  readonly isClass: (code: string) => boolean;
  /** It was published when 0.1.0 computed it. */
  readonly asBy010: boolean;
}

/** An allergen that a food is now known to contain comes before all else: lists of differences are cut at their end. */
const urgency = ({ kind, after, lessSafe }: ReviewedDifference): number =>
  lessSafe ? (kind === "ALLERGEN" && after === "CONTAINS" ? 0 : 1) : 2;

/** Less safe differences first; within them as they stand in the plan. */
export function reviewPlan(question: ReviewQuestion): readonly ReviewedDifference[] {
  const found = [
    ...comparePlans(question.before, question.after).map((each) => ({ ...each, lessSafe: isLessSafe(each) })),
    ...unknownClasses(question),
    ...(question.asBy010 ? [...sodium(question), ...growths(question)] : []),
  ];
  return found.toSorted((a, b) => urgency(a) - urgency(b));
}

const care: readonly AllergenPresence[] = ["DOES_NOT_CONTAIN", "UNKNOWN", "MAY_CONTAIN", "CONTAINS"];
const fit: readonly string[] = ["FITS", "UNKNOWN", "DOES_NOT_FIT"];

/** Whether what is said now warns of more, or allows less, than what was said. A new fact that is missing before warns of it. */
function isLessSafe({ kind, before, after }: PlanDifference): boolean {
  const rank = (order: readonly string[], word: string | null): number => (word === null ? -1 : order.indexOf(word));
  switch (kind) {
    case "ALLERGEN":
      return rank(care, after) > Math.max(0, rank(care, before));
    case "DIET":
      return before !== null && rank(fit, after) > rank(fit, before);
    case "KEEPING":
      return after !== null && (before === null || parseFloat(after) < parseFloat(before));
    default:
      return false;
  }
}

/** A class that no published rule knows gave no limit in 0.1.0. It is read as the strictest since. */
function unknownClasses({ after, isClass }: ReviewQuestion): readonly ReviewedDifference[] {
  return after.scaled.components.flatMap(({ component, route }): readonly ReviewedDifference[] => {
    const code = route?.keepsAs ?? component.keepsAs;
    if (code === null || isClass(code)) return [];
    const path = ["components", component.slug, "keeps-as"];
    return [{ kind: "KEEPING", path, before: null, after: `${code}, which no published rule knows`, lessSafe: true }];
  });
}

const growthWords = {
  FIXED: "takes the same however much is made",
  PER_BATCH: "grows with the batches",
  PER_LOAD: "once for every load",
};

/** Steps of components that 0.1.0 counted as fixed, since nobody had said how they grow. */
function growths({ after }: ReviewQuestion): readonly ReviewedDifference[] {
  return after.scaled.components.flatMap(({ component, route }) =>
    (route ?? component).steps.flatMap((step): readonly ReviewedDifference[] => {
      const grows = growthOf(step);
      if (step.grows !== "FIXED" || grows === "FIXED") return [];
      const path = ["components", component.slug, "steps", step.id, "grows"];
      return [{ kind: "STEP", path, before: growthWords.FIXED, after: growthWords[grows], lessSafe: false }];
    }),
  );
}

/** Milligrams of sodium that 0.1.0 counted: a line to taste erased what was weighed of its food, nothing was poured away, water had no weight. */
function sodiumOf010({ food, part, grams, rest, notEaten }: EatenFood): number {
  const erased = grams === null || rest.some((each) => each !== "EXTRA");
  if (erased || part !== null || (isWater(food) && food.densities.length === 0)) return 0;
  return ((grams.low + notEaten.low) * (food.nutrients?.per100g.sodiumMg ?? 0)) / 100;
}

const sodiumToday = ({ food, part, grams }: EatenFood): number => {
  const figures = part === null ? food.nutrients : partNutrients(food, part);
  return ((grams?.low ?? 0) * (figures?.per100g.sodiumMg ?? 0)) / 100;
};

/** What a serving of each meal is said to have of sodium, where it was said otherwise; more than was said is less safe. */
function sodium({ after, servings }: ReviewQuestion): readonly ReviewedDifference[] {
  return after.eaten.flatMap(({ meal, foods }): readonly ReviewedDifference[] => {
    const sum = (of: (food: EatenFood) => number): number =>
      Math.round(foods.reduce((total, each) => total + of(each), 0) / servings);
    const [was, is] = [sum(sodiumOf010), sum(sodiumToday)];
    if (was === is) return [];
    const path = ["meals", meal.slug, "nutrition", "sodiumMg"];
    return [{ kind: "NUTRITION", path, before: `${was} mg`, after: `${is} mg`, lessSafe: is > was }];
  });
}
