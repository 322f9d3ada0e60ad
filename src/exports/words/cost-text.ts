import type { Cost } from "../../domain/shopping/cost.js";
import type { Reader } from "../../domain/plan/plan-answer.js";
import { moneyText } from "./money-text.js";
import { wordsFor } from "./words-for.js";

/**
 * What the till asks for, the share of each, and what is in no sum.
 *
 * @param servings null: a list over several plans, of which no serving is the same
 * @param food what the reader calls a food of that slug
 */
export function costText(cost: Cost, servings: number | null, reader: Reader, food: (slug: string) => string): string {
  const words = wordsFor(reader.locale);
  const unpriced =
    cost.unpriced.length === 0 ? [] : [words.withoutPrice({ foods: cost.unpriced.map(food).join(", ") })];
  if (cost.atTill === null) return words.noPrice;
  const each =
    cost.perServing === null || servings === null
      ? []
      : [words.perServing({ price: moneyText(cost.perServing, reader), servings })];
  return [`${[words.atTill({ price: moneyText(cost.atTill, reader) }), ...each].join(", ")}.`, ...unpriced].join(" ");
}
