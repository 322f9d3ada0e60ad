import { batchesFor, batchSizes, ceilForgiving } from "../../component/batch.js";
import { sameShare } from "../../engine-limits.js";
import type { KeepingClass } from "../../model/keeping.js";
import { rawLines } from "../check/raw-lines.js";
import type { ScaledComponent, ScaledLine, ScaledPlan } from "../scaled.js";

/** Days after the first session on which raw meat, poultry or fish bought for it may still wait (USDA FSIS, Cold Food Storage Chart: one to two). */
const rawWaits = 1;

/** What is made of each component on each of some days, in their order. */
export type DayShares = readonly (readonly ScaledComponent[])[];

const sum = (values: readonly number[]): number => values.reduce((all, each) => all + each, 0);

/** Part of what is made, in whole batches of its own. */
const partOf = (made: ScaledComponent, batches: number): ScaledComponent => {
  const share = batches / made.batches;
  const of = <T extends { readonly low: number; readonly high: number }>(amount: T | null): T | null =>
    amount && { ...amount, low: amount.low * share, high: amount.high * share };
  const { loads } = batchesFor(batches, batchSizes(made.component.batch));
  const lines = made.lines.map((line): ScaledLine => ({
    ...line,
    amount: of(line.amount),
    inUnit: of(line.inUnit),
    need: of(line.need),
  }));
  return share === 1 ? made : { ...made, batches, loads, lines };
};

/** Batches made on each day, so that none is late and every day's making is one its writer allows; null: it cannot be divided. Whole batches, so that as many are begun as in one. */
function batchesByDay(made: ScaledComponent, wanted: readonly number[]): readonly number[] | null {
  const { batches, component } = made;
  const sizes = batchSizes(component.batch);
  const allowed = (size: number): boolean =>
    size === 0 || Math.abs(batchesFor(size, sizes).made - size) <= size * sameShare;
  const total = sum(wanted);
  let done = 0;
  const found = wanted.map((_, at) => {
    const due = Math.max(done, ceilForgiving((batches * sum(wanted.slice(0, at + 1))) / total));
    let until = due;
    while (until < batches && !(allowed(until - done) && allowed(batches - until))) until += 1;
    const size = Math.min(until, batches) - done;
    done += size;
    return size;
  });
  return Math.abs(done - batches) <= batches * sameShare && found.every(allowed) ? found : null;
}

/** Components that take different parts of the same pieces: zest here and juice there are of one lemon, cut once. */
function sharingPieces({ components, meals }: ScaledPlan): ReadonlySet<string> {
  const partsOf = (lines: readonly ScaledLine[]) =>
    lines.flatMap(({ item }) => (item.kind === "FOOD" && item.part !== null ? [{ ...item, part: item.part }] : []));
  const users = [...components, ...meals.filter(({ meal }) => meal.day === 0)].map(({ lines }) => partsOf(lines));
  const shared = (food: string): boolean => {
    const taken = users.map((each) => each.filter((one) => one.food === food)).filter((each) => each.length > 0);
    return taken.length > 1 && new Set(taken.flat().map(({ part }) => part)).size > 1;
  };
  return new Set(
    components
      .filter(({ lines }) => partsOf(lines).some(({ food }) => shared(food)))
      .map(({ component: { slug } }) => slug),
  );
}

/**
 * What has to be made on each of some days, where a session makes what is eaten from its day until the next one. Nothing
 * is made earlier than in one session on the first day but what others need by then, so that nothing keeps for longer.
 *
 * @param days ascending, the first is 0
 * @param divides whether a component is made on several days; otherwise all of it on the first on which some is needed
 */
export function dayShares(
  scaled: ScaledPlan,
  classes: readonly KeepingClass[],
  days: readonly number[],
  divides: boolean,
): DayShares {
  const wanted = new Map(scaled.components.map(({ component }) => [component.slug, days.map(() => 0)]));
  const want = ({ item, amount }: ScaledLine, at: number, share: number): void => {
    const by = item.kind === "COMPONENT" ? wanted.get(item.component) : undefined;
    if (by !== undefined && amount !== null) by[at]! += amount.high * share;
  };
  for (const { meal, lines } of scaled.meals)
    for (const line of lines)
      want(
        line,
        days.findLastIndex((day) => day <= meal.day),
        1,
      );
  const together = sharingPieces(scaled);
  const byDay: ScaledComponent[][] = days.map(() => []);
  for (const made of scaled.components.toReversed()) {
    if (made.batches === 0) continue;
    const { slug } = made.component;
    const by = wanted.get(slug)!;
    const latest =
      rawLines(made.lines, scaled, classes).size > 0 ? days.findLastIndex((day) => day <= rawWaits) : days.length - 1;
    const needed = by.map((amount, at) => (at > latest ? 0 : at === latest ? sum(by.slice(at)) : amount));
    const first = together.has(slug)
      ? 0
      : Math.max(
          0,
          needed.findIndex((amount) => amount > 0),
        );
    const divided = divides && !together.has(slug) && sum(needed) > 0 ? batchesByDay(made, needed) : null;
    const batches = divided ?? days.map((_, at) => (at === first ? made.batches : 0));
    batches.forEach((size, at) => {
      if (size === 0) return;
      const part = partOf(made, size);
      byDay[at]!.unshift(part);
      for (const line of made.lines) want(line, at, size / made.batches);
    });
  }
  return byDay;
}
