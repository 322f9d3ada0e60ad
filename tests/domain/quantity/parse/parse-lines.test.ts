import { describe, expect, it } from "vitest";
import { parseLine } from "../../../../src/domain/quantity/parse.js";
import { parseLines } from "../../../../src/domain/quantity/parse/parse-lines.js";
import { LINES_MAX, TEXT_MAX } from "../../../../src/domain/quantity/parse/limits.js";

const options = { locale: "en", measures: "US_CUSTOMARY" } as const;
const read = (text: string) => parseLines(text, options, ["text"]);
const lines = (...raw: string[]) => ({ ok: true, value: raw.map((each) => parseLine(each, options)) });

describe("lines of a text", () => {
  it("are parted by the line ends of every system", () => {
    const expected = lines("2 cups oats", "1 tsp salt", "3 eggs");
    expect(read("2 cups oats\n1 tsp salt\n3 eggs")).toEqual(expected);
    expect(read("2 cups oats\r\n1 tsp salt\r\n3 eggs\r\n")).toEqual(expected);
    expect(read("2 cups oats\r1 tsp salt\r3 eggs")).toEqual(expected);
    expect(read("\n2 cups oats\n\n \t\n1 tsp salt\n3 eggs\n\n")).toEqual(expected);
  });

  it("are none in an empty text", () => {
    expect(read("")).toEqual(lines());
    expect(read(" \r\n ")).toEqual(lines());
  });

  // Blank lines cost nothing to read, so the limits are tried in full.
  it("may be as many as the limit, blank ones counted and a last line end not", () => {
    expect(read("\n".repeat(LINES_MAX))).toEqual(lines());
    expect(read(`${"\n".repeat(LINES_MAX - 1)}1 egg`)).toEqual(lines("1 egg"));
    expect(read(`${"\n".repeat(LINES_MAX)}1 egg`)).toEqual({
      ok: false,
      problems: [{ code: "TOO_LARGE", path: ["text"], what: "lines", size: LINES_MAX + 1, limit: LINES_MAX }],
    });
  });

  it("may hold as many characters as the limit, blank ones counted", () => {
    expect(read(" ".repeat(TEXT_MAX))).toEqual(lines());
    expect(read(" ".repeat(TEXT_MAX + 1))).toEqual({
      ok: false,
      problems: [{ code: "TOO_LARGE", path: ["text"], what: "text", size: TEXT_MAX + 1, limit: TEXT_MAX }],
    });
  });
});
