import { readerLocale } from "../../domain/quantity/reader-locale.js";
import { legibleText } from "../words/legible-text.js";

interface CsvMarks {
  readonly separator: "," | ";";
  readonly decimal: "." | ",";
}

/** RFC 4180, with the marks most programs of the trade read. */
export const standardMarks: CsvMarks = { separator: ",", decimal: "." };

/** Those a spreadsheet in this locale expects: where the comma divides decimals, a semicolon divides fields. */
export const marksOf = (locale: string): CsvMarks =>
  readerLocale(locale).decimalMark === "," ? { separator: ";", decimal: "," } : standardMarks;

/** A cell: words, or a number. A decimal keeps its digits and changes its mark. null: nothing. */
export type CsvCell = string | { readonly decimal: string } | null;

/**
 * Spreadsheets run what begins like this as a formula (OWASP, CSV Injection), the same signs at full width and the minus of mathematics
 * among them; an apostrophe before it makes it words.
 */
const formula = /^[\s]*[=+\-@\t\r\n|%\u2212\uff1d\uff0b\uff0d\uff20\ufe62\ufe63\ufe66\ufe6b\uff5c\uff05]/;

/** Whatever a program takes for a separator: it may be told another than ours, and a part of a cell could begin as a formula. */
const needsQuotes = /[,;\t|"\r\n]|^\s|\s$/;

function cellText(cell: CsvCell, { decimal }: CsvMarks): string {
  if (cell === null) return "";
  const text = typeof cell === "string" ? wordsOf(cell) : cell.decimal.replace(".", decimal);
  return needsQuotes.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

function wordsOf(words: string): string {
  const text = legibleText(words);
  return formula.test(text) ? `'${text}` : text;
}

/** Rows as RFC 4180 has them: CRLF after each, quotes where they are needed. */
export const csvText = (rows: readonly (readonly CsvCell[])[], marks: CsvMarks): string =>
  rows.map((row) => `${row.map((cell) => cellText(cell, marks)).join(marks.separator)}\r\n`).join("");
