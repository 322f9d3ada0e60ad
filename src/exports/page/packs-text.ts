import type { Food, Pack } from "../../domain/model/food.js";
import type { Reader } from "../../domain/plan/plan-answer.js";
import type { ShoppingLine } from "../../domain/plan/scaled.js";
import { presentInUnit } from "../../domain/quantity/format.js";
import { toNumber } from "../../domain/quantity/rational.js";
import { wordsFor } from "../words.js";

/** `2 × bag of 400 g + 1 × bag of 200 g`; null where no pack is known. What is sold singly is `4 apples`, `1 head`. */
export const packsText = ({ buy, food }: ShoppingLine, reader: Reader): string | null =>
  buy.length === 0 ? null : buy.map(({ pack, count }) => packText(pack, food, count, reader)).join(" + ");

function packText(pack: Pack, food: Food, count: number, reader: Reader): string {
  const { low, high, unit } = pack.content;
  const content = (times: number): string =>
    presentInUnit(times * toNumber(low), times * toNumber(high), unit, food, reader).text;
  const single = low === "1" && high === "1" && (unit === "piece" || unit.startsWith("own:"));
  return single ? content(count) : wordsFor(reader.locale).packOf(String(count), pack.name, content(1));
}
