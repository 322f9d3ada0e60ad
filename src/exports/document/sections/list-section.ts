import type { Reader } from "../../../domain/plan/plan-answer.js";
import type { ShoppingLine, ShoppingList } from "../../../domain/plan/scaled.js";
import { aside, heading, listOf, section, strong, text, type Block, type Lines } from "../document.js";
import { byAisle, codeWords, coveredLines, shoppingText } from "../shopping-text.js";
import { wordsFor } from "../../words/words-for.js";

/** The list by aisle, to tick off: how much of what, in which packs, for what. */
export function listBlocks(list: ShoppingList, reader: Reader, severalPlans: boolean, level: 2 | 3): readonly Block[] {
  const items = (lines: readonly ShoppingLine[]): readonly Lines[] =>
    lines.map((line) => lineLines(line, reader, severalPlans));
  return [
    ...byAisle(list.lines).flatMap(([aisle, lines]) => [
      heading(level, codeWords(aisle)),
      ...listOf("TICKS", items(lines)),
    ]),
    ...section(level, wordsFor(reader.locale).inTheHouse, listOf("TICKED", items(coveredLines(list.lines)))),
  ];
}

function lineLines(line: ShoppingLine, reader: Reader, severalPlans: boolean): Lines {
  const words = wordsFor(reader.locale);
  const { food, need, onHand, take, price, uses, over, optional } = shoppingText(line, reader, severalPlans);
  const buy = take === null || take === need ? [] : [`${words.buy} ${take}${price === null ? "" : `, ${price}`}`];
  const said = [need, onHand, optional ? words.optional : null].filter((each) => each !== null);
  return [
    [strong(food), text(said.join(", "))],
    ...buy.map((each) => [text(each)]),
    ...(over.length === 0 ? [] : [[aside(words.partsOver({ parts: over.join("; ") }))]]),
    ...(uses.length === 0 ? [] : [[aside(`${words.uses}: ${uses.join("; ")}`)]]),
  ];
}
