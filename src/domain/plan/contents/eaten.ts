import { runToEnd, unlimitedWork, type InSlices, type Work } from "../../counted-work.js";
import type { BaseAmount } from "../../model/amount.js";
import type { Step } from "../../model/component.js";
import type { Food } from "../../model/food.js";
import type { Meal } from "../../model/plan.js";
import type { NotEatenReason, Span } from "../../nutrition/nutrients.js";
import { inDimension } from "../../quantity/convert.js";
import { toNumber } from "../../quantity/rational.js";
import { pouredAway, type Pot, type PouredAway, type PutIn } from "../poured-away.js";
import { gramsPutIn } from "./eaten-grams.js";
import { lineContext } from "../compile/line-context.js";
import { oneBatch } from "../one-batch.js";
import type { ScaledComponent, ScaledLine, ScaledPlan } from "../scaled.js";

/** Why there is more of a food than was weighed: the reader adds it, or nobody knows what an amount of it weighs. */
type Rest = "TO_TASTE" | "EXTRA" | "UNWEIGHED";

/** Of one food or part. Grams are of its edible portion, raw. */
export interface EatenFood {
  readonly food: Food;
  readonly part: string | null;
  readonly optional: boolean;
  /** Some of the grams come by a line that may be left out. */
  readonly mayBeLeftOut: boolean;
  /** What is known of it, whatever else is not; null where no line of it can be weighed. */
  readonly grams: Span | null;
  readonly rest: readonly Rest[];
  readonly notEaten: Span;
  readonly why: readonly NotEatenReason[];
}

export interface EatenMeal {
  readonly meal: Meal;
  /** Of all its servings together. One entry for each food and part, in no particular order. */
  readonly foods: readonly EatenFood[];
}

const none: Span = { low: 0, high: 0 };
const plus = (a: Span, b: Span): Span => ({ low: a.low + b.low, high: a.high + b.high });
const times = ({ low, high }: Span, share: Span): Span => ({ low: low * share.low, high: high * share.high });
const union = <T>(a: readonly T[], b: readonly T[]): readonly T[] => [...new Set([...a, ...b])];

/** What is known of either is known of both: a line that nobody can weigh hides no other. */
const known = (a: Span | null, b: Span | null): Span | null => (a === null ? b : b === null ? a : plus(a, b));

const together = (a: EatenFood, b: EatenFood): EatenFood => ({
  food: a.food,
  part: a.part,
  optional: a.optional && b.optional,
  mayBeLeftOut: a.mayBeLeftOut || b.mayBeLeftOut,
  grams: known(a.grams, b.grams),
  rest: union(a.rest, b.rest),
  notEaten: plus(a.notEaten, b.notEaten),
  why: union(a.why, b.why),
});

class Tally {
  private readonly byKey = new Map<string, EatenFood>();

  add(eaten: EatenFood): void {
    const key = JSON.stringify([eaten.food.slug, eaten.part]);
    const before = this.byKey.get(key);
    this.byKey.set(key, before === undefined ? eaten : together(before, eaten));
  }

  foods(): readonly EatenFood[] {
    return [...this.byKey.values()];
  }
}

/** What share of a component's batches an amount of it is. Both ends. */
const shareOf = (amount: BaseAmount, made: BaseAmount): Span => ({
  low: amount.low / made.high,
  high: amount.high / made.low,
});

/** What of a line is eaten, 0..1: the writer's word, else what is not poured away. */
interface LineShare {
  readonly eaten: Span;
  readonly why: readonly NotEatenReason[];
}

function lineShare({ line }: ScaledLine, poured: ReadonlyMap<string, PouredAway>): LineShare {
  if (line.eaten !== undefined) {
    const share = toNumber(line.eaten);
    return { eaten: { low: share, high: share }, why: ["STATED"] };
  }
  const away = poured.get(line.id);
  if (away === undefined) return { eaten: { low: 1, high: 1 }, why: [] };
  return { eaten: { low: 1 - away.share.high, high: 1 - away.share.low }, why: [away.why] };
}

const complement = ({ low, high }: Span): Span => ({ low: 1 - high, high: 1 - low });

function restOf(line: ScaledLine, grams: Span | null): readonly Rest[] {
  if (line.amount === null) return ["TO_TASTE"];
  return [...(grams === null ? (["UNWEIGHED"] as const) : []), ...(line.line.extra ? (["EXTRA"] as const) : [])];
}

function ofFood(line: ScaledLine, food: Food, part: string | null, { eaten, why }: LineShare): EatenFood {
  const whole = gramsPutIn(line, food, part);
  const { optional } = line.line;
  const thrown = eaten.high === 0;
  // Nothing of what is thrown away is eaten, whatever it weighs.
  const grams = thrown ? none : whole && times(whole, eaten);
  return {
    food,
    part,
    optional,
    mayBeLeftOut: optional,
    grams,
    rest: thrown ? [] : restOf(line, whole),
    notEaten: whole === null ? none : times(whole, complement(eaten)),
    why,
  };
}

/** A food of a component, in the share of the component that a line takes. */
function ofTaken(each: EatenFood, line: ScaledLine, made: BaseAmount, { eaten, why }: LineShare): EatenFood {
  const optional = line.line.optional || each.optional;
  const mayBeLeftOut = line.line.optional || each.mayBeLeftOut;
  if (eaten.high === 0) return { ...each, optional, mayBeLeftOut, grams: none, rest: [], why: union(each.why, why) };
  if (line.amount === null) return { ...each, optional, mayBeLeftOut, grams: null, rest: ["TO_TASTE"], notEaten: none };
  const share = shareOf(line.amount, made);
  const whole = each.grams && times(each.grams, share);
  return {
    ...each,
    optional,
    mayBeLeftOut,
    grams: whole && times(whole, eaten),
    rest: line.line.extra ? union(each.rest, ["EXTRA"]) : each.rest,
    notEaten: plus(times(each.notEaten, share), whole === null ? none : times(whole, complement(eaten))),
    why: union(each.why, why),
  };
}

interface Making {
  readonly lines: readonly ScaledLine[];
  readonly steps: readonly Step[];
  readonly keepsAs: string | null;
  readonly weighs: Span | null;
}

/** @returns what drained water takes with it, by id of the line */
function pouredIn({ lines, steps, keepsAs, weighs }: Making, scaled: ScaledPlan): ReturnType<typeof pouredAway> {
  const { foods, components } = lineContext(scaled.bundle);
  const putIn = lines.map((line): PutIn => {
    const { item } = line;
    if (item.kind === "COMPONENT") {
      const component = components.get(item.component)?.component;
      const mass = component && line.amount ? inDimension(line.amount, "MASS", component, line.line.form) : null;
      return { line, food: null, grams: mass?.ok === true ? mass.amount : null };
    }
    const food = foods.get(item.food) ?? null;
    if (food === null) return { line, food, grams: null };
    return { line, food, grams: line.line.eaten === "0" ? none : gramsPutIn(line, food, item.part) };
  });
  return pouredAway({ lines: putIn, steps, keepsAs, weighs } satisfies Pot);
}

function makingOf({
  component,
  route,
  lines,
  made,
}: Pick<ScaledComponent, "component" | "route" | "lines" | "made">): Making {
  const mass = inDimension(made, "MASS", component, null);
  return {
    lines,
    steps: (route ?? component).steps,
    keepsAs: route?.keepsAs ?? component.keepsAs,
    weighs: mass.ok ? mass.amount : null,
  };
}

const stepsOfLine = 4;

/**
 * What the eaters of each meal eat, as raw food: through every component down to the foods, in the share of the
 * component that the meal takes. What is left over, thrown away or poured away is not eaten. Foods without an amount are there
 * all the same, and take nothing from what is known of them by other lines.
 */
export const eatenFoods = (scaled: ScaledPlan): readonly EatenMeal[] => runToEnd(eatenInSlices(scaled, unlimitedWork));

/** The same turn by turn. */
export function* eatenInSlices(scaled: ScaledPlan, work: Work): InSlices<readonly EatenMeal[]> {
  const { foods } = lineContext(scaled.bundle);
  const ofComponent = new Map<string, { readonly made: BaseAmount; readonly foods: readonly EatenFood[] }>();
  const tally = (making: Making): readonly EatenFood[] => {
    const sum = new Tally();
    const poured = pouredIn(making, scaled);
    for (const line of making.lines) {
      const { item } = line;
      const share = lineShare(line, poured);
      if (item.kind === "FOOD") {
        const food = foods.get(item.food);
        if (food !== undefined) sum.add(ofFood(line, food, item.part, share));
        continue;
      }
      const taken = ofComponent.get(item.component);
      if (taken === undefined) continue;
      for (const each of taken.foods) sum.add(ofTaken(each, line, taken.made, share));
    }
    return sum.foods();
  };
  // Inputs come before what uses them, so every component a line takes is there already.
  for (const each of scaled.components) {
    yield;
    work.step(stepsOfLine * each.lines.length);
    const once = oneBatch(each, scaled.compiled);
    ofComponent.set(each.component.slug, { made: once.made, foods: tally(makingOf(once)) });
  }
  const eaten: EatenMeal[] = [];
  for (const { meal, lines } of scaled.meals) {
    yield;
    const foods = tally({ lines, steps: meal.steps, keepsAs: null, weighs: null });
    work.step(stepsOfLine * (lines.length + foods.length));
    eaten.push({ meal, foods });
  }
  return eaten;
}
