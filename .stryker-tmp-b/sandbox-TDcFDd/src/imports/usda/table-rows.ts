// @ts-nocheck
import { parse } from "csv-parse/sync";
import type { Problem } from "../../domain/problem.js";

/** A problem in a table. `column` is the number of the field, from 1. */
export interface TableProblem {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly problem: Problem;
}

/** One row: its line and its fields by the names of the header. */
export interface TableRow {
  readonly line: () => number;
  readonly field: (name: string) => string;
}

export interface Table {
  readonly rows: readonly TableRow[];
  readonly columns: ReadonlyMap<string, number>;
  readonly problems: readonly TableProblem[];
}

/** Reads a comma-separated table whose header has at least `needed`. Rows of another length are problems. */
export function readTable(bytes: Uint8Array, file: string, needed: readonly string[]): Table {
  const bad = (line: number, column: number, expected: string, got: string): TableProblem => ({
    file,
    line,
    column,
    problem: { code: "BAD_SHAPE", path: [], expected, got },
  });
  let parsed: readonly (readonly string[])[];
  try {
    parsed = parse(bytes, { bom: true, relax_column_count: true });
  } catch (fault) {
    if (!(fault instanceof Error)) throw fault;
    const line = "lines" in fault && typeof fault.lines === "number" ? fault.lines : 1;
    return { rows: [], columns: new Map(), problems: [bad(line, 1, "comma-separated values", fault.message)] };
  }
  const [header = [], ...body] = parsed;
  const columns = new Map(header.map((name, index) => [name, index]));
  const missing = needed.filter((name) => !columns.has(name));
  if (missing.length > 0)
    return {
      rows: [],
      columns,
      problems: [bad(1, 1, `the columns ${needed.join(", ")}`, `none called ${missing.join(", ")}`)],
    };
  const rows: TableRow[] = [];
  const problems: TableProblem[] = [];
  for (const [index, record] of body.entries()) {
    const line = (): number => lineOf(parsed, index + 1);
    if (record.length === header.length) rows.push({ line, field: (name) => record[columns.get(name) ?? -1] ?? "" });
    else problems.push(bad(line(), record.length, `${header.length} fields`, `${record.length}`));
  }
  return { rows, columns, problems };
}

/** The line a record begins on: a quoted field may hold line breaks. Counted only when a problem asks for it. */
const lineOf = (records: readonly (readonly string[])[], index: number): number =>
  records.slice(0, index).reduce((line, record) => line + 1 + record.join("").split("\n").length - 1, 1);
