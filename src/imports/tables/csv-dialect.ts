import { failed, ok, type Result } from "../../domain/problem.js";

interface CsvDialect {
  readonly delimiter: string;
  readonly newline: "\n" | "\r";
  /** Lines before the header: a spreadsheet's `sep=` line. */
  readonly before: 0 | 1;
}

const delimiters = [",", ";", "\t", "|"] as const;

const withoutQuoted = (line: string): string => line.replace(/"(?:[^"]|"")*"/g, "");

const namesOf = (line: string, delimiter: string): readonly string[] =>
  line.split(delimiter).map((name) => name.trim().replace(/^"|"$/g, "").trim().toLowerCase());

/**
 * How a table is written, from its first lines. A `sep=` line is honoured; else the delimiter is the one that parts the
 * header into columns that are known; else the only candidate that stands in it. Where two would do, or none, the file is refused with its
 * first line: a wrong guess would move every value into another column.
 *
 * @param head the beginning of the file, without a byte order mark
 * @param known names a column may have, in small letters
 * @param told the delimiter the feed declares, or null
 */
export function csvDialect(head: string, known: readonly string[], told: string | null): Result<CsvDialect> {
  const newline = head.includes("\n") || !head.includes("\r") ? "\n" : "\r";
  const [first = "", second = ""] = head.split(newline).map((line) => line.replace(/\r$/, ""));
  const said = /^"?sep=(.)"?$/i.exec(first.trim())?.[1] ?? null;
  const before = said === null ? 0 : 1;
  const header = withoutQuoted(said === null ? first : second);
  const full = said === null ? first : second;
  const delimiter = said ?? told ?? chosen(header, full, known);
  if (delimiter !== null) return ok({ delimiter, newline, before });
  return failed([{ code: "DELIMITER_UNCLEAR", path: [], firstLine: first.slice(0, 200) }]);
}

function chosen(header: string, full: string, known: readonly string[]): string | null {
  const present = delimiters.filter((each) => header.includes(each));
  const hits = (each: string): number => namesOf(full, each).filter((name) => known.includes(name)).length;
  const best = Math.max(0, ...delimiters.map(hits));
  const knowing = best === 0 ? [] : delimiters.filter((each) => hits(each) === best);
  const [only] = knowing.length === 1 ? knowing : present.length === 1 ? present : [];
  if (only !== undefined) return only;
  // One column needs no delimiter, if it is one that is known.
  return present.length === 0 && known.includes(full.trim().toLowerCase()) ? "," : null;
}
