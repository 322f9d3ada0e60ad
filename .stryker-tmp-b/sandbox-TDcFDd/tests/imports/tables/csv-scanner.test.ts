// @ts-nocheck
import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { csvScanner, longestRecord, type CsvRecord } from "../../../src/imports/tables/csv-scanner.js";

function scan(text: string, delimiter = ",", sizes: readonly number[] = [text.length]): readonly CsvRecord[] {
  const scanner = csvScanner(delimiter);
  const records: CsvRecord[] = [];
  let at = 0;
  for (let turn = 0; at < text.length; turn += 1) {
    const size = Math.max(1, sizes[turn % sizes.length] ?? 1);
    records.push(...scanner.push(text.slice(at, at + size)));
    at += size;
  }
  return [...records, ...scanner.end()];
}

const quoted = (field: string): string => (/[",\r\n]/.test(field) ? `"${field.replaceAll('"', '""')}"` : field);

const field = fc.string({ unit: fc.constantFrom("a", "ß", "1", ",", ";", '"', "\n", " ", "\r\n"), maxLength: 6 });

describe("comma-separated values", () => {
  it("are taken apart as the csv-parse library does, whatever the pieces they come in", () => {
    const rows = fc.array(fc.array(field, { minLength: 1, maxLength: 4 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(
        rows,
        fc.constantFrom("\n", "\r\n"),
        fc.array(fc.nat({ max: 7 }), { minLength: 1 }),
        (given, end, sizes) => {
          const text = given.map((row) => row.map(quoted).join(",")).join(end) + end;
          const expected = parse(text, { relax_column_count: true, skip_empty_lines: true });
          const read = scan(text, ",", sizes);
          expect(read.map(({ fault }) => fault)).toEqual(read.map(() => null));
          expect(read.map(({ fields }) => fields)).toEqual(expected);
        },
      ),
    );
  });

  it("name the line each record begins on", () => {
    const records = scan('a,b\r\n"one\ntwo",2\r\n\r\n3,4');
    expect(records.map(({ line, fields }) => [line, fields])).toEqual([
      [1, ["a", "b"]],
      [2, ["one\ntwo", "2"]],
      [5, ["3", "4"]],
    ]);
  });

  it("lose one line, and no other, to a quotation mark too many", () => {
    const good = Array.from({ length: 50 }, (_, at) => `food-${at},${at}`);
    for (const bad of ['x,"never closed', '"12" tin,3', 'x,"a"b']) {
      const records = scan([...good.slice(0, 20), bad, ...good.slice(20)].join("\n"));
      expect(records.filter(({ fault }) => fault !== null).map(({ line, raw }) => [line, raw])).toEqual([[21, bad]]);
      expect(records.filter(({ fault }) => fault === null).map(({ raw }) => raw)).toEqual(good);
    }
  });

  it("never lose or invent a line: whatever the text, what is read and what is refused cover it", () => {
    fc.assert(
      fc.property(
        fc.array(field, { maxLength: 30 }),
        fc.array(fc.nat({ max: 5 }), { minLength: 1 }),
        (parts, sizes) => {
          const text = parts.join("");
          const whole = scan(text);
          expect(scan(text, ",", sizes)).toEqual(whole);
          const lines = whole.map(({ line }) => line);
          expect(lines).toEqual(lines.toSorted((a, b) => a - b));
          const raw = whole.map((record) => record.raw).join("\n");
          expect(raw.replace(/[\r\n]/g, "")).toBe(text.replace(/[\r\n]/g, ""));
        },
      ),
    );
  });

  it("pass over a line without an end in memory that does not grow", () => {
    const scanner = csvScanner(",");
    const piece = "x".repeat(100_000);
    let found = 0;
    for (let turn = 0; turn < 200; turn += 1) found += scanner.push(piece).length;
    expect(found).toBe(1);
    expect(piece.length * 200).toBeGreaterThan(longestRecord);
    expect(scanner.push("\na,b\n").map(({ line, fields }) => [line, fields])).toEqual([[2, ["a", "b"]]]);
  });
});
