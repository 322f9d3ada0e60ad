// @ts-nocheck
import type { Reader } from "../../domain/plan/plan-answer.js";
import type { ShoppingLine, ShoppingList } from "../../domain/plan/scaled.js";
import { aside, heading, listOf, strong, text, type Block, type Lines } from "../document.js";
import { byAisle, codeWords, shoppingText } from "../shopping-text.js";
import { wordsFor } from "../words.js";

/** The list by aisle, to tick off: how much of what, in which packs, for what. */
export function listBlocks(list: ShoppingList, reader: Reader, severalPlans: boolean, level: 2 | 3): readonly Block[] {
  return byAisle(list.lines).flatMap(([aisle, lines]) => [
    heading(level, codeWords(aisle)),
    ...listOf(
      "TICKS",
      lines.map((line) => lineLines(line, reader, severalPlans)),
    ),
  ]);
}

function lineLines(line: ShoppingLine, reader: Reader, severalPlans: boolean): Lines {
  const words = wordsFor(reader.locale);
  const { food, need, onHand, packs, price, uses } = shoppingText(line, reader, severalPlans);
  const buy = packs === null ? [] : [`${words.buy} ${packs}${price === null ? "" : `, ${price}`}`];
  return [
    [strong(food), text([need, onHand].filter((each) => each !== null).join(", "))],
    ...buy.map((each) => [text(each)]),
    ...(uses.length === 0 ? [] : [[aside(`${words.uses}: ${uses.join("; ")}`)]]),
  ];
}
