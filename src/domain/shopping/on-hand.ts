/** Some of a food the household has, in base units of the need. */
export interface Stock {
  readonly amount: number;
  /** Days after the session until which it may be used; null: no date. */
  readonly lastDay: number | null;
}

/**
 * How much of a need is covered by what is on hand. What has a date covers only uses up to that date, so it is taken first;
 * never more than the need.
 *
 * @param need what is needed in all
 * @param needUntil what is needed up to a day, from 0 to `need`, never falling
 */
export function coveredByStock(need: number, stock: readonly Stock[], needUntil: (day: number) => number): number {
  const dated = stock.flatMap(({ amount, lastDay }) => (lastDay === null ? [] : [{ amount, lastDay }]));
  let covered = 0;
  for (const { amount, lastDay } of dated.toSorted((a, b) => a.lastDay - b.lastDay)) {
    covered = Math.max(covered, Math.min(covered + amount, needUntil(lastDay)));
  }
  const undated = stock.reduce((sum, { amount, lastDay }) => (lastDay === null ? sum + amount : sum), 0);
  return Math.min(need, covered + undated);
}
