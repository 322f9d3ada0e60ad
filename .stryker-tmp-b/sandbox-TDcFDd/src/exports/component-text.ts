// @ts-nocheck
import type { ScaledComponent } from "../domain/plan/scaled.js";
import type { NameBook } from "./name-book.js";

/** How much of a component is made, and what is left of it: "2.5 batches, 2.88 kg made, 250 g left over". */
export function componentText(made: ScaledComponent, { words, show, number }: NameBook): string {
  const { component } = made;
  const batches = number(made.batches, 2);
  return [
    words.batches(batches),
    words.made(show(made.made, component)),
    ...(made.onHand.high > 0 ? [words.onHand(show(made.onHand, component))] : []),
    words.leftOver(made.leftOver.high > 0 ? show(made.leftOver, component) : null),
  ].join(", ");
}
