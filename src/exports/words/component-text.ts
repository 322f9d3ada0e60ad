import type { Reader } from "../../domain/plan/plan-answer.js";
import type { ScaledComponent } from "../../domain/plan/scaled.js";
import { presentInUnit } from "../../domain/quantity/format.js";
import { noFacts, type NameBook } from "./name-book.js";
import type { Words } from "./words.js";

/** How much of a component is made, and what is left of it: "2.5 batches, 2.88 kg made, 250 g left over". */
export function componentText(made: ScaledComponent, { words, show, reader }: NameBook): string {
  const { component } = made;
  return [
    batchesText(made.batches, reader, words),
    words.made({ amount: show(made.made, component) }),
    ...(made.onHand.high > 0 ? [words.onHand({ amount: show(made.onHand, component) })] : []),
    made.leftOver.high > 0 ? words.leftOver({ amount: show(made.leftOver, component) }) : words.nothingLeftOver,
  ].join(", ");
}

/** "2½ batches"; "about 1 batch" where the kitchen's fractions do not say it. */
function batchesText(batches: number, reader: Reader, { roughly }: Pick<Words, "roughly">): string {
  const { text, rounded } = presentInUnit(batches, batches, "batch", noFacts, reader);
  return Math.abs(rounded - batches) <= 0.01 * batches ? text : roughly({ amount: text });
}

/** "1½" of a recipe made one and a half times. */
export function timesText(batches: number, reader: Reader): string {
  return presentInUnit(batches, batches, "piece", noFacts, reader).text;
}
