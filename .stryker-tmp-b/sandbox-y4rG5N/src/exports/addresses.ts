/**
 * Where one answer can be asked for again: absolute URLs, made by whoever serves them. All but `publisher` carry what the
 * reader asked for (servings, swaps, region…) where that changes the answer.
 */
// @ts-nocheck

export interface Addresses {
  /** The moving address: the newest revision of the plan. */
  readonly plan: string;
  /** This revision, for ever. */
  readonly revision: string;
  readonly publisher: string;
  /** The shopping list. */
  readonly list: string;
  /** The calendar of the session and the days after it. */
  readonly calendar: string;
}
