import type { Cost } from "../../domain/shopping/cost.js";
import { moneyText } from "./money-text.js";
import type { Words } from "./words.js";

/**
 * What the till asks for, the share of each, and what is in no sum.
 *
 * @param servings null: a list over several plans, of which no serving is the same
 * @param food what the reader calls a food of that slug
 */
export function costText(cost: Cost, servings: number | null, words: Words, food: (slug: string) => string): string {
  const unpriced =
    cost.unpriced.length === 0 ? [] : [words.withoutPrice({ foods: cost.unpriced.map(food).join(", ") })];
  if (cost.atTill === null) return words.noPrice;
  const each =
    cost.perServing === null || servings === null
      ? []
      : [words.perServing({ price: moneyText(cost.perServing), servings })];
  return [`${[words.atTill({ price: moneyText(cost.atTill) }), ...each].join(", ")}.`, ...unpriced].join(" ");
}
