import type { Problem } from "../../domain/problem.js";
import { csvScanner } from "../tables/csv-scanner.js";

/** A problem in a table. `column` is the number of the field, from 1. */
export interface TableProblem {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly problem: Problem;
}

/** One row: its line and its fields by the names of the header. */
export interface TableRow {
  readonly line: number;
  readonly field: (name: string) => string;
}

export interface Table {
  readonly rows: readonly TableRow[];
  readonly columns: ReadonlyMap<string, number>;
  readonly problems: readonly TableProblem[];
}

/**
 * Reads a comma-separated table whose header has at least `needed`. Rows of another length, and those that cannot be taken apart,
 * are problems.
 */
export function readTable(bytes: Uint8Array, file: string, needed: readonly string[]): Table {
  const bad = (line: number, column: number, expected: string, got: string): TableProblem => ({
    file,
    line,
    column,
    problem: { code: "BAD_SHAPE", path: [], expected, got },
  });
  const scanner = csvScanner(",");
  const [header, ...body] = [...scanner.push(new TextDecoder().decode(bytes)), ...scanner.end()];
  const names = header?.fields ?? [];
  const columns = new Map(names.map((name, index) => [name, index]));
  const missing = needed.filter((name) => !columns.has(name));
  if (missing.length > 0)
    return {
      rows: [],
      columns,
      problems: [bad(1, 1, `the columns ${needed.join(", ")}`, `none called ${missing.join(", ")}`)],
    };
  const rows: TableRow[] = [];
  const problems: TableProblem[] = [];
  for (const { line, raw, fields, fault } of body) {
    if (fault !== null) problems.push(bad(line, 1, "comma-separated values", raw));
    else if (fields.length !== names.length)
      problems.push(bad(line, fields.length, `${names.length} fields`, `${fields.length}`));
    else rows.push({ line, field: (name) => fields[columns.get(name) ?? -1] ?? "" });
  }
  return { rows, columns, problems };
}
