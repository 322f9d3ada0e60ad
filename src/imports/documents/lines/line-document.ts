import type { TakenLine } from "../../../domain/quantity/read-line.js";
import { ownMeasureName } from "../../../domain/quantity/unit.js";
import { amountText } from "../amount-text.js";
import type { PlainDocument } from "../plain-document.js";
import { measuredWords, ruleWords } from "../schemas/line-schema.js";

/** A line of text that was read, as a line of a document. */
export function lineDocument(written: string, line: TakenLine): PlainDocument {
  const { amount } = line;
  const preparation = [sizeWords(line), line.preparation].filter((each) => each !== null).join(", ");
  return {
    food: line.food,
    ...(line.part === null ? {} : { part: line.part }),
    ...(amount === null ? { rule: ruleWords.TO_TASTE } : { amount: amountText(amount) }),
    ...(line.each === null ? {} : { each: amountText(line.each) }),
    written,
    ...(line.measured === "READY" ? { measured: measuredWords.READY } : {}),
    ...(line.form === null ? {} : { form: line.form }),
    ...(preparation === "" ? {} : { preparation }),
    ...(line.extra ? { "plus-more": "yes" } : {}),
    ...(line.optional ? { optional: "yes" } : {}),
  };
}

/** The size of one, where the amount does not carry it: "large", "6 oz each". */
function sizeWords({ size, amount, each }: TakenLine): string | null {
  if (size === null || amount === null || each !== null || ownMeasureName(amount.unit) !== null) return null;
  return /^\d/.test(size) ? `${size} each` : size;
}
