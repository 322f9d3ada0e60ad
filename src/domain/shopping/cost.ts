import type { Money } from "../model/amount.js";
import type { Pack } from "../model/food.js";
import { minorParts, moneyOf, roundedTo, roundedTogether } from "./money.js";

export interface PackCount {
  /** Of loose goods: what is weighed out, as one pack with its price. */
  readonly pack: Pack;
  readonly count: number;
  /** Of loose goods: the price they are weighed out at. Absent: a pack. */
  readonly weighedFrom?: Pack;
}

/** Decimal strings. `unpriced` names the foods whose price nobody knows; they are in no sum. */
export interface Cost {
  readonly currency: string | null;
  /** What the till asks for. */
  readonly atTill: Money | null;
  /** The share of it that these servings eat. */
  readonly used: Money | null;
  /** What stays in the cupboard: atTill - used. */
  readonly carriedOver: Money | null;
  /** used / servings */
  readonly perServing: Money | null;
  readonly unpriced: readonly string[];
}

/** What one line costs before anything is rounded, in parts of the currency unit (money.ts). */
export interface LineCost {
  readonly food: string;
  /** null: something must be bought and its price is not known. */
  readonly atTill: number | null;
  /** Share of what is bought that is eaten, 0..1. */
  readonly usedShare: number;
}

interface Known {
  readonly atTill: number;
  readonly used: number;
}

const costOf = (known: Known | null, servings: number, currency: string | null, unpriced: readonly string[]): Cost => {
  if (known === null || currency === null) {
    return { currency, atTill: null, used: null, carriedOver: null, perServing: null, unpriced };
  }
  const { atTill, used } = known;
  return {
    currency,
    atTill: moneyOf(atTill, currency),
    used: moneyOf(used, currency),
    carriedOver: moneyOf(atTill - used, currency),
    perServing: servings > 0 ? moneyOf(roundedTo(minorParts(currency), used / servings), currency) : null,
    unpriced,
  };
};

/**
 * Costs of the lines of a list and of the whole list. What is eaten is rounded to the currency's smallest coin once, half
 * upwards, over all lines together, so that lines add up to the list and atTill = used + carriedOver to the last digit. A
 * price that is not known is in no sum; its food is named, once.
 *
 * @param currency of all prices; null where none is known
 */
export function costsOf(
  lines: readonly LineCost[],
  servings: number,
  currency: string | null,
): { readonly lines: readonly Cost[]; readonly list: Cost } {
  const coin = currency === null ? 1 : minorParts(currency);
  const used = roundedTogether(
    coin,
    lines.map(({ atTill, usedShare }) => ({ paid: atTill ?? 0, share: usedShare })),
  );
  const known = lines.map(({ atTill }, at): Known | null => (atTill === null ? null : { atTill, used: used[at]! }));
  const unpriced = [...new Set(lines.flatMap(({ food, atTill }) => (atTill === null ? [food] : [])))];
  const sums = known.reduce<Known>(
    (sum, each) => ({ atTill: sum.atTill + (each?.atTill ?? 0), used: sum.used + (each?.used ?? 0) }),
    { atTill: 0, used: 0 },
  );
  const nothingKnown = unpriced.length > 0 && known.every((each) => each === null);
  return {
    lines: lines.map(({ food }, at) => costOf(known[at]!, servings, currency, known[at] === null ? [food] : [])),
    list: costOf(nothingKnown ? null : sums, servings, currency, unpriced),
  };
}
