import type { Problem } from "../../domain/problem.js";
import type { StoragePlace } from "../../domain/model/keeping.js";
import { readTable, type TableProblem } from "../usda/table-rows.js";

/** A line of the table of storage times that is a figure. */
export interface StorageRow {
  readonly id: number;
  /** The food as it is called there. */
  readonly name: string;
  readonly place: StoragePlace;
  readonly from: "PURCHASE" | "OPENING" | null;
  /** The shorter end of a range. */
  readonly days: number;
  /** As printed: "1 to 2 weeks". */
  readonly printed: string;
}

export interface StorageTable {
  /** Every id there is, also where no line of it is a figure. */
  readonly ids: ReadonlySet<number>;
  readonly rows: readonly StorageRow[];
  readonly problems: readonly TableProblem[];
}

const places: Readonly<Record<string, StoragePlace>> = { pantry: "ROOM", refrigerator: "FRIDGE", freezer: "FREEZER" };

const bases: Readonly<Record<string, StorageRow["from"]>> = {
  "": null,
  "from date of purchase": "PURCHASE",
  "after opening": "OPENING",
};

/** Months are of 30 days and years of twelve such months, as in the published rules: the shorter length counts. */
const lengths: Readonly<Record<string, number>> = { day: 1, week: 7, month: 30, year: 360 };

/** What stands in the column of units instead of one, and is no figure; also hours, which are those of a table, not of a shelf. */
const noFigure: ReadonlySet<string> = new Set([
  ...["", "When Ripe", "Package use-by date", "Not Recommended", "Indefinitely", "Hours"],
]);

const columns = ["id", "name", "subtitle", "place", "basis", "min", "max", "unit"];

/** The storage times of USDA FSIS, line by line. What is said of food that was thawed is left out: nothing is sold so here. */
export function readStorageTable(bytes: Uint8Array, file: string): StorageTable {
  const table = readTable(bytes, file, columns);
  const problems: TableProblem[] = [...table.problems];
  const ids = new Set<number>();
  const rows: StorageRow[] = [];
  for (const { field, line } of table.rows) {
    const bad = (column: string, expected: string): void => {
      const problem: Problem = { code: "BAD_SHAPE", path: [column], expected, got: field(column) };
      problems.push({ file, line, column: (table.columns.get(column) ?? 0) + 1, problem });
    };
    const id = Number(field("id"));
    if (!/^\d+$/.test(field("id"))) bad("id", "a number");
    ids.add(id);
    const [unit, basis] = [field("unit"), field("basis")];
    if (noFigure.has(unit) || basis === "after thawing") continue;
    const length = lengths[unit.toLowerCase().replace(/s$/, "")];
    const place = places[field("place")];
    const from = bases[basis];
    // Some lines give one end only, and that is then the time.
    const [min, max] = [Number(field("min") || field("max")), Number(field("max") || field("min"))];
    if (length === undefined) bad("unit", "Days, Weeks, Months or Years");
    else if (place === undefined) bad("place", Object.keys(places).join(" | "));
    else if (from === undefined) bad("basis", Object.keys(bases).join(" | "));
    else if (!(min > 0 && max >= min)) bad("min", "a length above 0, at most the longest");
    else {
      const word = unit.toLowerCase().replace(/s$/, "");
      const range = min === max ? String(min) : `${String(min)} to ${String(max)}`;
      const printed = `${range} ${word}${max === 1 ? "" : "s"}`;
      const name = [field("name"), field("subtitle")].filter((part) => part !== "").join(", ");
      rows.push({ id, name, place, from, days: min * length, printed });
    }
  }
  return { ids, rows, problems };
}
