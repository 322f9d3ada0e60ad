import type { Money } from "../model/amount.js";
import type { Pack } from "../model/food.js";
import { moneyOf, roundedToHundredths, roundedTogether } from "./money.js";

export interface PackCount {
  readonly pack: Pack;
  readonly count: number;
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

const costOf = (
  parts: { readonly atTill: number; readonly used: number } | null,
  servings: number,
  currency: string | null,
  unpriced: readonly string[],
): Cost => {
  if (parts === null || currency === null) {
    return { currency, atTill: null, used: null, carriedOver: null, perServing: null, unpriced };
  }
  const { atTill, used } = parts;
  return {
    currency,
    atTill: moneyOf(atTill, currency),
    used: moneyOf(used, currency),
    carriedOver: moneyOf(atTill - used, currency),
    perServing: servings > 0 ? moneyOf(roundedToHundredths(used / servings), currency) : null,
    unpriced,
  };
};

/**
 * Costs of the lines of a list and of the whole list. What is eaten is rounded to hundredths once, over all lines together,
 * so that lines add up to the list and atTill = used + carriedOver to the last digit. A price that is not known is in no
 * sum; its food is named.
 */
export function costsOf(
  lines: readonly LineCost[],
  servings: number,
  currency: string | null,
): { readonly lines: readonly Cost[]; readonly list: Cost } {
  const used = roundedTogether(lines.map(({ atTill, usedShare }) => (atTill ?? 0) * usedShare));
  const costs = lines.map(({ food, atTill }, index) => {
    const eaten = Math.min(used[index]!, atTill ?? 0);
    return atTill === null
      ? costOf(null, servings, currency, [food])
      : costOf({ atTill, used: eaten }, servings, currency, []);
  });
  const unpriced = lines.filter(({ atTill }) => atTill === null).map(({ food }) => food);
  const known = lines.flatMap(({ atTill }, index) =>
    atTill === null ? [] : [{ atTill, used: Math.min(used[index]!, atTill) }],
  );
  const total = {
    atTill: known.reduce((sum, each) => sum + each.atTill, 0),
    used: known.reduce((sum, each) => sum + each.used, 0),
  };
  return {
    lines: costs,
    list: costOf(known.length === 0 && unpriced.length > 0 ? null : total, servings, currency, unpriced),
  };
}
