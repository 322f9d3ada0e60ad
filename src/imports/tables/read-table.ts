import { failed, type Problem, type Result } from "../../domain/problem.js";
import { csvDialect } from "./csv-dialect.js";
import { csvScanner, mostFields, type CsvRecord, type CsvScanner } from "./csv-scanner.js";
import { tableText, unreadable } from "./table-text.js";

/** What a table's columns mean. */
export interface TableColumns {
  readonly needed: readonly string[];
  readonly optional: readonly string[];
  /** Names of this file's own: from the name in its header to ours, small letters. */
  readonly columnNames: ReadonlyMap<string, string>;
}

export interface TableOptions {
  readonly columns: TableColumns;
  /** null: found out from the header. */
  readonly delimiter: string | null;
}

/** The fields of one row by the name of their column; empty where the table has no such column. */
export interface Cells {
  readonly get: (column: string) => string;
}

/** One row: its value, or all that is wrong with it. `problems[].path` is the name of the column. */
export type TableRow<T> =
  | { readonly line: number; readonly ok: true; readonly value: T; readonly raw: string }
  | { readonly line: number; readonly ok: false; readonly problems: readonly Problem[]; readonly raw: string };

/** The most rows of a file, good and bad. */
const mostRows = 2_000_000;

/** A file is larger than any that is read. What was read of it before must not be kept. */
export class FileBeyondLimits extends Error {
  override readonly name = "FileBeyondLimits";

  constructor(readonly problem: Extract<Problem, { readonly code: "TOO_LARGE" }>) {
    super(`more than ${String(problem.limit)} ${problem.what}`);
  }
}

/** The most of a file that is looked at to find out how it is written, in characters. */
const headLength = 64_000;

/**
 * Reads a table row by row, in memory that does not grow with it. What is wrong with the file as a whole (an unclear
 * delimiter, a column missing) is one refused row of line 1; every other row stands for itself. @throws FileBeyondLimits
 */
export async function* readTable<T>(
  chunks: AsyncIterable<Uint8Array>,
  options: TableOptions,
  readRow: (cells: Cells) => Result<T>,
): AsyncGenerator<readonly TableRow<T>[]> {
  let head = "";
  let reader: ((records: readonly CsvRecord[]) => readonly TableRow<T>[]) | null = null;
  let scanner: CsvScanner | null = null;
  const open = (): readonly TableRow<T>[] => {
    const known = [...options.columns.needed, ...options.columns.optional, ...options.columns.columnNames.keys()];
    const dialect = csvDialect(head, known, options.delimiter);
    if (!dialect.ok) return [{ line: 1, ok: false, problems: dialect.problems, raw: head.slice(0, 200) }];
    const { delimiter, newline, before } = dialect.value;
    scanner = csvScanner(delimiter, newline);
    reader = tableReader(options.columns, before, readRow);
    return reader(scanner.push(head));
  };
  for await (const text of tableText(chunks)) {
    if (reader !== null && scanner !== null) {
      const rows = (reader as RowReader<T>)((scanner as CsvScanner).push(text));
      if (rows.length > 0) yield rows;
      continue;
    }
    head += text;
    if (head.length < headLength) continue;
    yield open();
    if (reader === null) return;
  }
  if (reader === null) {
    if (head.trim() === "") return;
    yield open();
    if (reader === null) return;
  }
  const last = (reader as RowReader<T>)((scanner as unknown as CsvScanner).end());
  if (last.length > 0) yield last;
}

type RowReader<T> = (records: readonly CsvRecord[]) => readonly TableRow<T>[];

/** Rows of records as they come: the first after `before` is the header. */
export function tableReader<T>(
  columns: TableColumns,
  before: number,
  readRow: (cells: Cells) => Result<T>,
): RowReader<T> {
  let toSkip = before;
  let places: ReadonlyMap<string, number> | null = null;
  let width = 0;
  let count = 0;
  let refused = false;
  return (records) => {
    const rows: TableRow<T>[] = [];
    for (const record of records) {
      if (refused) break;
      if (toSkip > 0) {
        toSkip -= 1;
        continue;
      }
      if (places === null) {
        const header = headerOf(record, columns);
        if (!header.ok) {
          refused = true;
          rows.push({ line: record.line, ok: false, problems: header.problems, raw: record.raw });
          break;
        }
        places = header.value;
        width = record.fields.length;
        continue;
      }
      count += 1;
      if (count > mostRows) {
        const size = { what: "rows", size: count, limit: mostRows };
        throw new FileBeyondLimits({ code: "TOO_LARGE", path: ["file"], ...size });
      }
      const result = rowOf(record, places, width, readRow);
      rows.push(
        result.ok
          ? { line: record.line, ok: true, value: result.value, raw: record.raw }
          : { line: record.line, ok: false, problems: result.problems, raw: record.raw },
      );
    }
    return rows;
  };
}

function headerOf(
  record: CsvRecord,
  { needed, optional, columnNames }: TableColumns,
): Result<ReadonlyMap<string, number>> {
  if (record.fault !== null) return failed([faultOf(record.fault)]);
  if (record.fields.length > mostFields) {
    const size = { what: "columns", size: record.fields.length, limit: mostFields };
    return failed([{ code: "TOO_LARGE", path: ["header"], ...size }]);
  }
  const names = record.fields.map((field) => field.trim().toLowerCase());
  const places = new Map<string, number>();
  const problems: Problem[] = [];
  for (const [at, written] of names.entries()) {
    const name = columnNames.get(written) ?? written;
    if (!needed.includes(name) && !optional.includes(name)) continue;
    if (places.has(name)) problems.push({ code: "DUPLICATE", path: [name], value: written });
    places.set(name, at);
  }
  const missing = needed.filter((name) => !places.has(name));
  if (missing.length > 0) {
    const expected = `the columns ${needed.join(", ")}`;
    problems.push({ code: "BAD_SHAPE", path: ["header"], expected, got: `none called ${missing.join(", ")}` });
  }
  return problems.length > 0 ? failed(problems) : { ok: true, value: places };
}

function rowOf<T>(
  record: CsvRecord,
  places: ReadonlyMap<string, number>,
  width: number,
  readRow: (cells: Cells) => Result<T>,
): Result<T> {
  if (record.fault !== null) return failed([faultOf(record.fault)]);
  if (record.fields.length !== width) {
    const got = record.fields.length > mostFields ? `more than ${String(mostFields)}` : String(record.fields.length);
    return failed([{ code: "BAD_SHAPE", path: [], expected: `${String(width)} fields, as the header has`, got }]);
  }
  if (record.raw.includes(unreadable)) return failed([{ code: "NOT_TEXT", path: [], encoding: "UTF-8" }]);
  if (record.raw.includes("\0")) {
    return failed([{ code: "BAD_SHAPE", path: [], expected: "text", got: "a character of value zero" }]);
  }
  return readRow({ get: (column) => (record.fields[places.get(column) ?? -1] ?? "").trim() });
}

const faultOf = (fault: NonNullable<CsvRecord["fault"]>): Problem => {
  switch (fault) {
    case "QUOTE_NOT_CLOSED":
      return { code: "BAD_SHAPE", path: [], expected: "a quotation mark that is closed", got: "one that is not" };
    case "TEXT_AFTER_QUOTE":
      return {
        code: "BAD_SHAPE",
        path: [],
        expected: 'a delimiter after a closing quotation mark (" inside is written "")',
        got: "text",
      };
    case "TOO_LONG":
      return { code: "BAD_SHAPE", path: [], expected: "a row of at most a million characters", got: "a longer one" };
  }
};
