import type { PlanAnswer } from "../../domain/plan/plan-answer.js";
import { runToEnd, type InSlices } from "../../domain/counted-work.js";
import type { ShoppingLine } from "../../domain/plan/scaled.js";
import { componentText } from "../words/component-text.js";
import { costText } from "../words/cost-text.js";
import { keepingLines } from "../sentences/keeping-text.js";
import { legibleText } from "../words/legible-text.js";
import { lineText } from "../words/line-text.js";
import { nameBook } from "../words/name-book.js";
import { byAisle, coveredLines, shoppingText } from "./shopping-text.js";
import { warningLines } from "../sentences/warning-lines.js";
import type { Credit, WritersTexts } from "../../domain/model/writers-words.js";
import type { Words } from "../words/words.js";
import { writtenText } from "./written-text.js";
import { wordsFor } from "../words/words-for.js";
import { codeName } from "../words/rule-words.js";

/** What is written out, and for whom. */
type PlainTextInput = Pick<PlanAnswer, "scaled" | "list" | "storage" | "reader">;

/** A plan computed, as text for a terminal: components, meals, list by aisle, keeping, warnings. Lines end in \n. */
export const plainText = (input: PlainTextInput): string => runToEnd(plainTextInSlices(input));

/** The same, turn by turn. */
export function* plainTextInSlices({ scaled, list, storage, reader }: PlainTextInput): InSlices<string> {
  const book = nameBook(scaled.bundle, reader);
  const { words } = book;
  const { plan } = scaled.bundle;
  const made: string[] = [];
  for (const each of scaled.components) {
    yield;
    made.push(`  ${each.component.title}: ${componentText(each, book)}`);
    made.push(...textLines(each.component.introduction, "    "));
    made.push(...each.lines.map((line) => `    ${lineText(line, book)}`));
    made.push(...notesLines(each.component, book.words, "    "));
  }
  yield;
  const bought: string[] = [];
  for (const [aisle, lines] of byAisle(list.lines)) {
    bought.push(`  ${codeName("aisles", aisle, words)}`);
    yield* linesInSlices(lines, reader, bought);
  }
  const covered: string[] = [];
  yield* linesInSlices(coveredLines(list.lines), reader, covered);
  const told = [...scaled.warnings, ...list.warnings, ...storage.warnings];
  const warnings = warningLines(
    told.filter(({ code }) => code !== "PRICE_UNKNOWN"),
    book,
    words,
  );
  return [
    words.plain.title({ plan: plan.title, count: scaled.servings }),
    ...section("", textLines(plan.introduction, "")),
    ...section(words.makeAhead, made),
    ...section(
      words.plain.eat,
      scaled.meals
        .toSorted((a, b) => a.meal.day - b.meal.day)
        .flatMap(({ meal }) => [
          `  ${words.plain.day({ day: meal.day })}  ${meal.title}`,
          ...textLines(meal.introduction, "    "),
          ...notesLines(meal, words, "    "),
        ]),
    ),
    ...section(words.plain.buy, bought),
    ...section(words.inTheHouse, covered),
    ...section("", [`  ${costText(list.cost, scaled.servings, book.reader, book.food)}`]),
    ...section(
      words.plain.keep,
      keepingLines(storage, book).map((line) => `  ${line}`),
    ),
    ...section(
      words.plain.mind,
      warnings.map((line) => `  ${line}`),
    ),
    ...section(book.words.fromTheWriter, [
      ...(plan.equipment === undefined ? [] : [`  ${book.words.alsoNeeded({ things: plan.equipment.join("; ") })}`]),
      ...notesLines(plan, book.words, "  "),
      ...(plan.credits ?? []).map((credit) => `  ${creditText(credit, book.words)}`),
      ...(plan.licence === undefined ? [] : [`  ${book.words.licensed({ licence: plan.licence })}`]),
    ]),
    "",
  ]
    .map(legibleText)
    .join("\n");
}

function* linesInSlices(
  lines: readonly ShoppingLine[],
  reader: PlainTextInput["reader"],
  into: string[],
): InSlices<void> {
  for (const line of lines) {
    yield;
    into.push(`    ${buyText(line, reader)}`);
  }
}

function buyText(line: ShoppingLine, reader: PlainTextInput["reader"]): string {
  const { food, need, onHand, take, price, optional } = shoppingText(line, reader);
  const bought = take === null || take === need ? "" : `  →  ${take}${price === null ? "" : ` = ${price}`}`;
  const said = [need, onHand, optional ? wordsFor(reader.locale).optional : null];
  return `${food}: ${said.filter((each) => each !== null).join(", ")}${bought}`;
}

/** A text of the writer's, indented. */
const textLines = (source: string | undefined, indent: string): readonly string[] =>
  source === undefined
    ? []
    : writtenText(source)
        .split("\n")
        .map((line) => (line === "" ? "" : indent + line));

const notesLines = ({ notes, tips }: WritersTexts, words: Words, indent: string): readonly string[] => [
  ...(notes === undefined ? [] : [`${indent}${words.notes}:`, ...textLines(notes, `${indent}  `)]),
  ...(tips === undefined ? [] : [`${indent}${words.tips}:`, ...textLines(tips, `${indent}  `)]),
];

const creditText = ({ name, url, licence, adapted }: Credit, words: Words): string =>
  [adapted === true ? words.adaptedFrom : null, name, url ?? null, licence === undefined ? null : `(${licence})`]
    .filter((each) => each !== null)
    .join(" ");

const section = (title: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : ["", ...(title === "" ? [] : [title]), ...lines];
