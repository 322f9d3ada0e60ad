/** Some of a thing the household has, in base units of the need. */
export interface Stock {
  readonly amount: number;
  /** Days after the session until which it may be used; null: no date. */
  readonly lastDay: number | null;
}

const firstToGo = (a: Stock, b: Stock): number => (a.lastDay ?? Infinity) - (b.lastDay ?? Infinity) || 0;

/**
 * How much of each stock a need takes, in the order of the stocks given. What has a date covers only uses up to that date, so the
 * one that is first to go is taken first; never more than the need.
 *
 * @param need what is needed in all
 * @param needUntil what is needed up to a day, from 0 to `need`, never falling
 */
export function takeFromStock(
  need: number,
  stock: readonly Stock[],
  needUntil: (day: number) => number,
): readonly number[] {
  const taken = stock.map(() => 0);
  let covered = 0;
  const inOrder = stock.map((each, at) => ({ ...each, at })).toSorted(firstToGo);
  for (const { amount, lastDay, at } of inOrder) {
    const open = (lastDay === null ? need : Math.min(need, needUntil(lastDay))) - covered;
    taken[at] = Math.max(0, Math.min(amount, open));
    covered += taken[at];
  }
  return taken;
}
