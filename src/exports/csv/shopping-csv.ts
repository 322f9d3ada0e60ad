import { runToEnd, type InSlices } from "../../domain/counted-work.js";
import type { BaseAmount } from "../../domain/model/amount.js";
import type { Food } from "../../domain/model/food.js";
import type { Reader } from "../../domain/plan/plan-answer.js";
import type { ShoppingLine, ShoppingList } from "../../domain/plan/scaled.js";
import { presentAmount } from "../../domain/quantity/format.js";
import { csvText, marksOf, standardMarks, type CsvCell } from "./csv-text.js";
import { shoppingText, usesTexts } from "../document/shopping-text.js";
import { wordsFor } from "../words/words-for.js";
import type { CsvColumn } from "../words/words.js";
import { codeName } from "../words/rule-words.js";

const columns = [
  ...(["aisle", "food", "need", "unit", "onHand", "toBuy"] as const),
  ...(["packs", "price", "currency", "uses", "optional"] as const),
] as const satisfies readonly CsvColumn[];

/**
 * STANDARD: RFC 4180, for programs. SPREADSHEET: separator and decimal mark of the reader's locale, and a byte order mark,
 * without which some spreadsheets take UTF-8 for something else.
 */
type CsvDialect = "STANDARD" | "SPREADSHEET";

/**
 * The list as a table, a line each; `need`, `on hand` and `to buy` count the same unit, the upper end of a range, unrounded in
 * STANDARD and as a kitchen rounds in SPREADSHEET. `packs` is what to take from the shelf, which is enough. Cells that a
 * spreadsheet would run as a formula are made words.
 */
export const shoppingCsv = (...given: Parameters<typeof shoppingCsvInSlices>): string =>
  runToEnd(shoppingCsvInSlices(...given));

/** The same, a turn for each line. */
export function* shoppingCsvInSlices(
  list: ShoppingList,
  reader: Reader,
  severalPlans: boolean,
  dialect: CsvDialect,
): InSlices<string> {
  // Programs know the columns by their names, whatever language the reader speaks.
  const names = wordsFor(dialect === "STANDARD" ? "en" : reader.locale).csv;
  const marks = dialect === "STANDARD" ? standardMarks : marksOf(reader.locale);
  const rows = [csvText([columns.map((column) => names[column])], marks)];
  for (const line of list.lines) {
    yield;
    rows.push(csvText([rowOf(line, reader, severalPlans, dialect)], marks));
  }
  return `${dialect === "STANDARD" ? "" : "\ufeff"}${rows.join("")}`;
}

function rowOf(line: ShoppingLine, reader: Reader, severalPlans: boolean, dialect: CsvDialect): readonly CsvCell[] {
  const { food, need, onHand, toBuy, cost } = line;
  const said = shoppingText(line, reader);
  const unit = need === null ? null : presentAmount(need, food, reader);
  // Base units in one of the shown unit.
  const size = need === null || unit === null || unit.value === 0 ? 1 : need.low / unit.value;
  const count = (amount: BaseAmount | null): CsvCell =>
    amount === null
      ? null
      : { decimal: decimalText((dialect === "STANDARD" ? amount.high : forKitchen(amount, food, reader)) / size) };
  const price = line.buy.length === 0 ? null : cost.atTill;
  return [
    codeName("aisles", food.aisle, wordsFor(dialect === "STANDARD" ? "en" : reader.locale)),
    said.food,
    need === null ? said.need : count(need),
    unit?.unit.name ?? null,
    count(onHand),
    count(toBuy),
    said.take,
    price === null ? null : { decimal: price.amount },
    price?.currency ?? null,
    usesTexts(line, reader, severalPlans).join("; "),
    said.optional ? wordsFor(reader.locale).optional : "",
  ];
}

/** The upper end as a kitchen rounds it, in base units. */
function forKitchen({ dimension, high }: BaseAmount, food: Food, reader: Reader): number {
  const { rounded, value } = presentAmount({ dimension, low: high, high }, food, reader);
  return value === 0 ? 0 : (high * rounded) / value;
}

/** Six digits are finer than any scale, and leave out what doubles make up. Never an exponent. */
function decimalText(value: number): string {
  const rounded = Number(value.toPrecision(6));
  return rounded.toLocaleString("en", { useGrouping: false, maximumFractionDigits: 12, numberingSystem: "latn" });
}
