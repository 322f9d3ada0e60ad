import type { ScaledComponent, ScaledLine, ScaledMeal, ScaledPlan } from "../../domain/plan/scaled.js";
import { resolvedMealSteps, resolvedSteps } from "../../domain/plan/session/resolved-steps.js";
import { heats } from "../../domain/prep-session/heating.js";
import type { SessionStep } from "../../domain/prep-session/session.js";
import { minutesOf } from "../../domain/prep-session/task.js";

/** A stretch of a recipe: a component made for the meal, or the meal's own finishing. */
export interface RecipePart {
  /** null: the finishing of the meal. */
  readonly component: ScaledComponent | null;
  /** In the share of the component that this meal takes. A component that is not made, because it is there, is a line itself. */
  readonly lines: readonly ScaledLine[];
  readonly steps: readonly SessionStep[];
  readonly batches: number;
  readonly loads: number;
}

/** A meal as a recipe that stands alone: all it is made from, components first, in an order in which they can be made. */
export function recipeParts(meal: ScaledMeal, { components }: ScaledPlan): readonly RecipePart[] {
  const made = new Map(components.flatMap((each) => (each.batches > 0 ? [[each.component.slug, each] as const] : [])));
  const shares = new Map<string, number>();
  const take = (lines: readonly ScaledLine[], share: number): void => {
    for (const { item, amount } of lines) {
      const taken = item.kind === "COMPONENT" ? made.get(item.component) : undefined;
      if (taken === undefined || amount === null) continue;
      const { slug } = taken.component;
      const whole = taken.made.high + taken.onHand.high;
      shares.set(slug, (shares.get(slug) ?? 0) + (share * amount.high) / whole);
    }
  };
  take(meal.lines, 1);
  // What uses a component comes after it, so from the back every share is known in time.
  for (const each of components.toReversed()) take(each.lines, shares.get(each.component.slug) ?? 0);
  const own = (lines: readonly ScaledLine[]): readonly ScaledLine[] =>
    lines.filter(({ item }) => item.kind === "FOOD" || !made.has(item.component));
  return [
    ...components.flatMap((each): readonly RecipePart[] => {
      const share = shares.get(each.component.slug);
      if (share === undefined) return [];
      const { batches, loads } = each;
      const lines = own(each.lines).map((line) => shareOf(line, share));
      return [{ component: each, lines, steps: resolvedSteps(each), batches, loads }];
    }),
    { component: null, lines: own(meal.lines), steps: resolvedMealSteps(meal), batches: meal.factor, loads: 1 },
  ];
}

const shareOf = (line: ScaledLine, share: number): ScaledLine => ({
  ...line,
  amount: line.amount && { ...line.amount, low: line.amount.low * share, high: line.amount.high * share },
  inUnit: line.inUnit && { ...line.inUnit, low: line.inUnit.low * share, high: line.inUnit.high * share },
});

/** Minutes. */
interface CookingTimes {
  /** Work with the hands away from the heat. */
  readonly prep: number;
  /** On or in something hot, watched or not. */
  readonly cook: number;
  /** Everything one after another, soaks and waits too. The prep session of the plan is shorter: it does things side by side. */
  readonly total: number;
}

/** The times of a recipe, from its steps as they grow with what is made: every load of a step counts. */
export function cookingTimes(parts: readonly Pick<RecipePart, "steps" | "batches" | "loads">[]): CookingTimes {
  let [prep, cook, total] = [0, 0, 0];
  for (const { steps, batches, loads } of parts) {
    for (const step of steps) {
      const minutes = minutesOf(step, { batches, loads });
      total += minutes + step.minWait;
      if (heats(step)) cook += minutes;
      else if (step.attention === "HANDS_ON") prep += minutes;
    }
  }
  return { prep, cook, total };
}
