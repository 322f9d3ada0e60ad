import type { InSlices } from "../../../domain/counted-work.js";
import type { Reader } from "../../../domain/plan/plan-answer.js";
import type { ShoppingLine, ShoppingList } from "../../../domain/plan/scaled.js";
import { aside, heading, listOf, section, strong, text, type Block, type Lines } from "../document.js";
import { byAisle, coveredLines, shoppingText, usesTexts } from "../shopping-text.js";
import { wordsFor } from "../../words/words-for.js";
import { otherFoodLanguage } from "../../words/food-words.js";
import { codeName } from "../../words/rule-words.js";

/** The list by aisle, to tick off: how much of what, in which packs, for what. A turn for each line. */
export function* listBlocksInSlices(
  list: ShoppingList,
  reader: Reader,
  severalPlans: boolean,
  level: 2 | 3,
): InSlices<readonly Block[]> {
  const blocks: Block[] = [];
  for (const [aisle, lines] of byAisle(list.lines))
    blocks.push(
      heading(level, codeName("aisles", aisle, wordsFor(reader.locale))),
      ...listOf("TICKS", yield* items(lines)),
    );
  const covered = yield* items(coveredLines(list.lines));
  return [...blocks, ...section(level, wordsFor(reader.locale).inTheHouse, listOf("TICKED", covered))];

  function* items(lines: readonly ShoppingLine[]): InSlices<readonly Lines[]> {
    const written: Lines[] = [];
    for (const line of lines) {
      yield;
      written.push(lineLines(line, reader, severalPlans));
    }
    return written;
  }
}

function lineLines(line: ShoppingLine, reader: Reader, severalPlans: boolean): Lines {
  const words = wordsFor(reader.locale);
  const { food, need, onHand, take, price, over, optional } = shoppingText(line, reader);
  const uses = usesTexts(line, reader, severalPlans);
  const buy = take === null || take === need ? [] : [`${words.buy} ${take}${price === null ? "" : `, ${price}`}`];
  const said = [need, onHand, optional ? words.optional : null].filter((each) => each !== null);
  return [
    [strong(food, otherFoodLanguage(line.food, reader.locale, words)), text(said.join(", "))],
    ...buy.map((each) => [text(each)]),
    ...(over.length === 0 ? [] : [[aside(words.partsOver({ parts: over.join("; ") }))]]),
    ...(uses.length === 0 ? [] : [[aside(`${words.uses}: ${uses.join("; ")}`)]]),
  ];
}
