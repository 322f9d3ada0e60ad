import type { BaseAmount } from "../../domain/model/amount.js";
import type { Food, Pack } from "../../domain/model/food.js";
import type { Reader } from "../../domain/plan/plan-answer.js";
import type { ShoppingLine } from "../../domain/plan/scaled.js";
import { presentAmount, presentWritten } from "../../domain/quantity/format.js";
import { toNumber } from "../../domain/quantity/rational.js";
import { findUnit } from "../../domain/quantity/unit.js";
import { packName } from "./pack-names.js";
import { wordsFor } from "./words-for.js";

/**
 * `2 × bag of 400 g + 1 × bag of 200 g`; null where no pack is known. What is sold singly is `4 apples`, `1 head`, what is sold
 * loose is weighed: `5 lb`.
 */
export const packsText = ({ buy, food }: Pick<ShoppingLine, "buy" | "food">, reader: Reader): string | null =>
  buy.length === 0 ? null : buy.map(({ pack, count }) => packText(pack, food, count, reader)).join(" + ");

/** What to take from the shelf: packs, or the amount itself, of pieces whole ones; null: nothing, or nobody can say how much. */
export function takenText(line: Pick<ShoppingLine, "buy" | "food" | "toBuy">, reader: Reader): string | null {
  const { food, toBuy } = line;
  const packs = packsText(line, reader);
  return packs !== null || toBuy === null || toBuy.high === 0 ? packs : toBuyText(toBuy, food, reader);
}

/** An amount that is to be bought, in words: nobody sells half a lemon. */
export function toBuyText(amount: BaseAmount, food: Food, reader: Reader): string {
  // Doubles that make up a whole piece may be off in the last digits.
  const whole = Math.ceil(amount.high - 1e-9);
  const bought = amount.dimension === "COUNT" ? { ...amount, low: whole, high: whole } : amount;
  return presentAmount(bought, food, reader).text;
}

function packText(pack: Pack, food: Food, count: number, reader: Reader): string {
  const { low, high, unit } = pack.content;
  const content = (times: number): string =>
    presentWritten(times * toNumber(low), times * toNumber(high), unit, food, reader).text;
  // What is weighed out is an amount and no pack.
  if (pack.loose !== undefined) return content(count);
  const single = low === "1" && high === "1" && (unit === "piece" || unit.startsWith("own:"));
  if (single || isLoose(pack)) return content(count);
  const words = wordsFor(reader.locale);
  return words.packOf({ count, pack: packName(pack.name, reader.locale), content: content(1) });
}

/** A "pound of 1 lb" is no pack but a price by weight. */
function isLoose({ name, content }: Pack): boolean {
  const named = findUnit(name, { locale: "en", measures: "METRIC" });
  return named?.kind === "FOUND" && named.id === content.unit && content.low === "1" && content.high === "1";
}
