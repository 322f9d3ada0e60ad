import type { Food } from "../../domain/model/food.js";
import { failed, ok, type Problem, type Result } from "../../domain/problem.js";
import { nutrientKeys } from "../documents/schemas/food-schema.js";
import { readDocumentValue } from "../documents/read-documents.js";
import { resolveDocuments } from "../documents/resolve-documents.js";
import type { WrittenCode } from "../documents/checks/written-codes.js";
import { badCell } from "../tables/bad-cell.js";
import { decimalCell } from "../tables/decimal-cell.js";
import { spreadsheetDate } from "../tables/spreadsheet-date.js";
import type { Cells, TableColumns } from "../tables/read-table.js";

interface FoodRowOptions {
  /** BCP 47 tag of the file: its names are in that language, its numbers have that decimal mark. */
  readonly locale: string;
  /** Who says so, where a row does not name its own source. */
  readonly source: string;
  /** Where a row has none. */
  readonly aisle: string;
  readonly shoppedBy: "mass" | "volume" | "count";
}

/** A food as a row says it, and the columns that hold something: of the others the row says nothing. */
export interface FoodRow {
  readonly food: Food;
  readonly given: ReadonlySet<string>;
  /** The codes it has written, each under the name of its column. */
  readonly codes: readonly WrittenCode[];
}

const nutrientColumns = Object.values(nutrientKeys);

/** Columns that hold a number: what a thousand of them would be is nobody's to guess. */
const numberColumns = ["grams-per-ml", "grams-per-piece", "edible-percent", ...nutrientColumns] as const;

const presenceColumns = {
  contains: "contains",
  "may-contain": "may contain",
  "free-from": "does not contain",
} as const;

export const foodColumns: Omit<TableColumns, "columnNames"> = {
  needed: ["slug", "name"],
  optional: [
    ...["plural", "also", "aisle", "shopped-by", "usda", "keeps-as", "source"],
    ...numberColumns,
    ...Object.keys(presenceColumns),
  ],
};

const columnNames = [...foodColumns.needed, ...foodColumns.optional];

/**
 * A reader for the rows of a table of foods. A row becomes a food document and goes through the checks that every document
 * goes through; what is wrong stands under the name of its column. Empty cells are left out: unknown, never zero or free from.
 */
export function foodRowReader(options: FoodRowOptions): (cells: Cells) => Result<FoodRow> {
  return (cells) => {
    const problems: Problem[] = [];
    const numbers = new Map<string, number>();
    for (const column of numberColumns) {
      const written = cells.get(column);
      if (written === "") continue;
      const date = spreadsheetDate(written, options.locale, false);
      const read = decimalCell(written, options.locale);
      if (date !== null) problems.push({ code: "CELL_IS_A_DATE", path: [column], cell: written, offers: date.offers });
      else if (read === null) {
        const expected = "a plain decimal number, without grouped digits";
        problems.push(badCell(column, expected, written));
      } else numbers.set(column, Number(read));
    }
    if (problems.length > 0) return failed(problems);
    const read = readDocumentValue(documentOf(cells, numbers, options), "row");
    const { foods, problems: found } = resolveDocuments(read.documents, { foods: [], components: [] });
    const faults = [...read.problems, ...found].map(({ problem }) => ({ ...problem, path: [columnOf(problem.path)] }));
    const [food] = foods;
    if (faults.length > 0 || food === undefined) return failed(faults);
    const codes = food.read.codes.map((code) => ({ ...code, path: [columnOf(code.path)] }));
    return ok({ food: food.value, given: new Set(columnNames.filter((column) => cells.get(column) !== "")), codes });
  };
}

const listOf = (cell: string): readonly string[] =>
  cell
    .split("|")
    .map((each) => each.trim())
    .filter((each) => each !== "");

function documentOf(cells: Cells, numbers: ReadonlyMap<string, number>, options: FoodRowOptions): unknown {
  const given = (column: string): string | undefined => cells.get(column) || undefined;
  const source = given("source") ?? options.source;
  const whole = { kind: "published", title: source };
  const per100g = nutrientColumns.flatMap((key) => (numbers.has(key) ? [[key, numbers.get(key)] as const] : []));
  const allergens = Object.entries(presenceColumns).flatMap(([column, presence]) =>
    listOf(cells.get(column)).map((code) => ({ code, presence, source: whole })),
  );
  const [density, piece, edible] = ["grams-per-ml", "grams-per-piece", "edible-percent"].map((name) =>
    numbers.get(name),
  );
  return {
    kind: "food",
    slug: cells.get("slug"),
    names: {
      [options.locale]: {
        one: cells.get("name"),
        many: given("plural") ?? cells.get("name"),
        also: listOf(cells.get("also")),
      },
    },
    aisle: given("aisle") ?? options.aisle,
    "shopped-by": given("shopped-by") ?? options.shoppedBy,
    usda: given("usda") ?? null,
    "keeps-as": given("keeps-as") ?? null,
    densities: density === undefined ? [] : [{ "grams-per-ml": density, source: whole }],
    measures: piece === undefined ? [] : [{ name: "piece", grams: piece, source: whole }],
    edible: edible === undefined ? [] : [{ share: edible / 100, source: whole }],
    nutrients: per100g.length === 0 ? null : { "per-100g": Object.fromEntries(per100g), source: whole },
    allergens,
  };
}

/** The column that filled this place of the document. */
function columnOf([root, second, third]: readonly (string | number)[]): string {
  if (root === "names") return third === "also" ? "also" : third === "many" ? "plural" : "name";
  if (root === "nutrients") return third === undefined ? "source" : String(third);
  if (root === "densities") return "grams-per-ml";
  if (root === "measures") return "grams-per-piece";
  if (root === "edible") return "edible-percent";
  if (root === "allergens") return "contains";
  return String(root ?? second ?? "slug");
}
