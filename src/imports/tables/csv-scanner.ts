/** Why a record could not be taken apart. */
type CsvFault = "QUOTE_NOT_CLOSED" | "TEXT_AFTER_QUOTE" | "TOO_LONG";

/** One record: the line it begins on, as it stands in the file, and its fields; with a fault there are none. */
export interface CsvRecord {
  readonly line: number;
  readonly raw: string;
  readonly fields: readonly string[];
  readonly fault: CsvFault | null;
}

export interface CsvScanner {
  /** Takes the next piece of the file and gives every record that is whole by now. */
  push(text: string): readonly CsvRecord[];
  /** The end of the file: what is left. */
  end(): readonly CsvRecord[];
}

/** The longest record, in characters. Of a longer one the beginning is shown and the rest is passed over. */
export const longestRecord = 1_000_000;
/** A quoted field of more lines than this was most likely never closed. */
const mostLinesOfARecord = 1_000;
/** The most fields of a record; of one with more, as many and one are told apart. */
export const mostFields = 500;
/** How much of a record with a fault is kept to show. */
const shownOfARecord = 2_000;

type Taken =
  | { readonly kind: "RECORD"; readonly fields: readonly string[]; readonly end: number }
  | { readonly kind: "FAULT"; readonly fault: CsvFault }
  | { readonly kind: "OPEN" };

/**
 * Takes comma-separated values (RFC 4180) apart, in memory that does not grow with the file. What a library for this does
 * not: a record with a fault costs its own line and no other, since reading goes on with the next line. So a quotation mark
 * too many does not swallow the rest of a night's prices.
 *
 * @param newline the mark that ends a line; a carriage return before a line feed belongs to it
 */
export function csvScanner(delimiter: string, newline: "\n" | "\r" = "\n"): CsvScanner {
  let rest = "";
  let line = 1;
  /** Inside a record that is too long: everything up to the end of its line is passed over. */
  let skipping = false;

  const lineEnd = (from: number): number => rest.indexOf(newline, from);

  const nextQuote = (from: number): number => {
    const found = rest.indexOf('"', from);
    return found < 0 ? Infinity : found;
  };

  const fieldsOf = (text: string): readonly string[] => text.split(delimiter, mostFields + 1);

  /** A record with quotation marks, from `start`. OPEN: a quoted field has not ended by the end of what is there. */
  function takeQuoted(start: number): Taken {
    const fields: string[] = [];
    const keep = (field: string): void => {
      if (fields.length <= mostFields) fields.push(field);
    };
    let at = start;
    for (;;) {
      if (rest[at] === '"') {
        let value = "";
        let from = at + 1;
        for (;;) {
          const close = rest.indexOf('"', from);
          if (close < 0 || close - start > longestRecord) return { kind: "OPEN" };
          value += rest.slice(from, close);
          if (rest[close + 1] !== '"') {
            at = close + 1;
            break;
          }
          value += '"';
          from = close + 2;
        }
        if (at >= rest.length) return { kind: "OPEN" };
        keep(value);
        if (rest.startsWith(delimiter, at)) {
          at += delimiter.length;
          continue;
        }
        if (rest[at] === "\r" && newline === "\n") at += 1;
        if (at >= rest.length) return { kind: "OPEN" };
        if (rest[at] === newline) return { kind: "RECORD", fields, end: at + 1 };
        return { kind: "FAULT", fault: "TEXT_AFTER_QUOTE" };
      }
      const ends = lineEnd(at);
      const next = rest.indexOf(delimiter, at);
      if (next >= 0 && (ends < 0 || next < ends)) {
        keep(rest.slice(at, next));
        at = next + delimiter.length;
        continue;
      }
      if (ends < 0) return { kind: "OPEN" };
      keep(withoutReturn(rest.slice(at, ends)));
      return { kind: "RECORD", fields, end: ends + 1 };
    }
  }

  /** An open record that can only be refused: looking at it again with each piece that comes would take ever longer. */
  const isTooLong = (start: number): boolean =>
    rest.length - start > longestRecord || countLines(rest, start, rest.length, newline) > mostLinesOfARecord;

  function take(isEnd: boolean): readonly CsvRecord[] {
    const records: CsvRecord[] = [];
    let start = 0;
    let quote = nextQuote(0);
    const faulty = (fault: CsvFault, ends: number): void => {
      records.push({ line, raw: kept(rest.slice(start, ends)), fields: [], fault });
      start = ends + 1;
      line += 1;
    };
    while (start < rest.length) {
      const ends = lineEnd(start);
      if (skipping) {
        if (ends < 0) {
          start = rest.length;
          break;
        }
        skipping = false;
        start = ends + 1;
        line += 1;
        continue;
      }
      if (ends < 0 || ends - start > longestRecord) {
        if (ends >= 0) {
          faulty("TOO_LONG", ends);
          continue;
        }
        if (rest.length - start <= longestRecord) break;
        records.push({ line, raw: kept(rest.slice(start, start + shownOfARecord)), fields: [], fault: "TOO_LONG" });
        skipping = true;
        start = rest.length;
        break;
      }
      // Looked for once, and again only behind the last one: a list without any would be searched whole for every line.
      if (quote < start) quote = nextQuote(start);
      if (quote >= ends) {
        const text = withoutReturn(rest.slice(start, ends));
        if (text !== "") records.push({ line, raw: text, fields: fieldsOf(text), fault: null });
        start = ends + 1;
        line += 1;
        continue;
      }
      const taken = takeQuoted(start);
      if (taken.kind === "RECORD") {
        const lines = countLines(rest, start, taken.end, newline);
        if (lines > mostLinesOfARecord) {
          faulty("QUOTE_NOT_CLOSED", ends);
          continue;
        }
        const raw = withoutReturn(rest.slice(start, taken.end - 1));
        records.push({ line, raw, fields: taken.fields, fault: null });
        line += lines;
        start = taken.end;
      } else if (taken.kind === "FAULT") faulty(taken.fault, ends);
      else if (isEnd || isTooLong(start)) faulty("QUOTE_NOT_CLOSED", ends);
      else break;
    }
    rest = rest.slice(start);
    return records;
  }

  return {
    push: (text) => {
      rest += text;
      return take(false);
    },
    end: () => {
      if (rest !== "" && !rest.endsWith(newline)) rest += newline;
      return take(true);
    },
  };
}

const withoutReturn = (text: string): string => (text.endsWith("\r") ? text.slice(0, -1) : text);

/** A copy: a slice would hold on to the whole piece of the file it was cut from. */
const kept = (text: string): string => Buffer.from(withoutReturn(text).slice(0, shownOfARecord)).toString("utf8");

function countLines(text: string, from: number, to: number, newline: string): number {
  let lines = 0;
  for (let at = text.indexOf(newline, from); at >= 0 && at < to; at = text.indexOf(newline, at + 1)) lines += 1;
  return lines;
}
