import { failed, gatherProblems, ok, type Result } from "../../domain/problem.js";
import type { Cells, TableColumns } from "../tables/read-table.js";
import { badCell } from "../tables/bad-cell.js";
import { catalogueNumber, numberOfFood } from "./catalogue-number.js";

/** A household measure of a food of the open table. Natural key: number and measure. */
export interface CatalogueWeightRow {
  readonly ndbNo: string;
  readonly measure: string;
  /** Of one of it, of edible material. */
  readonly grams: number;
}

export const catalogueWeightColumns: Omit<TableColumns, "columnNames"> = {
  needed: ["ndb_no", "amount", "measure", "grams"],
  optional: ["seq"],
};

/** The longest name of a measure, in characters. */
const longestMeasure = 200;

/** The most measures that one file gives a food: they are one row of the database. The original has at most 16. */
const mostMeasures = 100;

/** The most of it, in its own unit: a hundred kilograms. */
const most = 100_000;

/** A reader for the rows of one table of weights. Every fault of a row is listed, each under the name of its column. */
export function catalogueWeightReader(locale: string | null): (cells: Cells) => Result<CatalogueWeightRow> {
  const seen = new Map<string, Set<string>>();
  return (cells) => {
    const { problems, note } = gatherProblems();
    const ndbNo = note(numberOfFood(cells.get("ndb_no")));
    const measure = cells.get("measure");
    if (measure === "" || measure.length > longestMeasure)
      problems.push(badCell("measure", `a measure of at most ${String(longestMeasure)} characters`, measure));
    const amount = note(positive("amount", cells.get("amount"), locale));
    const grams = note(positive("grams", cells.get("grams"), locale));
    if (problems.length > 0 || ndbNo === null || amount === null || grams === null) return failed(problems);
    const measures = seen.get(ndbNo) ?? new Set();
    if (measures.size >= mostMeasures && !measures.has(measure))
      return failed([badCell("measure", `at most ${String(mostMeasures)} measures of one food`, measure)]);
    seen.set(ndbNo, measures.add(measure));
    return ok({ ndbNo, measure, grams: grams / amount });
  };
}

function positive(column: string, written: string, locale: string | null): Result<number> {
  const read = catalogueNumber(column, written, locale);
  if (!read.ok) return read;
  const value = Number(read.value ?? "0");
  return value > 0 && value <= most
    ? ok(value)
    : failed([badCell(column, `a number above 0, and at most ${String(most)}`, written)]);
}
