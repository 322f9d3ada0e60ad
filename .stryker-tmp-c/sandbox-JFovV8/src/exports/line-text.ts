// @ts-nocheck
import type { Food } from "../domain/model/food.js";
import type { ScaledLine } from "../domain/plan/scaled.js";
import type { MeasureFacts } from "../domain/quantity/convert.js";
import { foodWords } from "./food-words.js";
import { noFacts, type NameBook } from "./name-book.js";
import { showScaledLine, type ShownAmount } from "./shown-amount.js";

/**
 * A scaled line as a cook reads it: "1.2 kg carrot, peeled, in thumb-sized pieces". In the writer's own unit unless the reader
 * cooks with others.
 */
export function lineText(line: ScaledLine, book: NameBook): string {
  const { reader, words } = book;
  const { one, many, facts } = namesOf(line, book);
  const { preparation, optional, extra, mark } = line.line;
  const details = [
    swappedFrom(line, book),
    partOf(line),
    preparation,
    extra ? words.plusMore : null,
    optional ? words.optional : null,
  ];
  const shown = showScaledLine(line, facts, reader);
  const said = shown === null ? [many, ...details, words.toTaste] : [counted(shown, one, many, facts), ...details];
  return said.filter((each) => each !== null).join(", ") + (mark === null ? "" : ` (${mark})`);
}

interface Named {
  readonly one: string;
  readonly many: string;
  readonly facts: MeasureFacts;
}

function namesOf({ item }: ScaledLine, book: NameBook): Named {
  if (item.kind === "COMPONENT") {
    const title = book.component(item.component);
    return { one: title, many: title, facts: book.componentOf(item.component) ?? noFacts };
  }
  const food: Food | undefined = book.foodOf(item.food);
  if (food === undefined) return { one: item.food, many: item.food, facts: noFacts };
  return { ...foodWords(food, book.reader.locale), facts: food };
}

/** "3 onions", not "3 onions onion": the word for the whole piece is the food's own name already. */
function counted({ text, value, upTo, unit }: ShownAmount, one: string, many: string, facts: MeasureFacts): string {
  if (unit.code !== "piece") return `${text} ${one}`;
  const named = facts.measures.some(({ name }) => name === "piece");
  return named ? text : `${text} ${(upTo ?? value) > 1 ? many : one}`;
}

const partOf = ({ item }: ScaledLine): string | null => (item.kind === "FOOD" ? item.part : null);

/** The food a swap took the place of. */
function swappedFrom({ item, line }: ScaledLine, { food, words }: NameBook): string | null {
  if (item.kind !== "FOOD" || line.item.kind !== "FOOD" || item.food === line.item.food) return null;
  return words.inPlaceOf(food(line.item.food));
}
