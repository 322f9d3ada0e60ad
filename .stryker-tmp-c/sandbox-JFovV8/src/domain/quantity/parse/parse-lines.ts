// @ts-nocheck
import { failed, ok, type Path, type Result } from "../../problem.js";
import { LINES_MAX, TEXT_MAX } from "./limits.js";
import type { LineOptions } from "./line-context.js";
import { parseLine } from "./parse-line.js";
import type { ParsedLine } from "./parsed-line.js";

/** Every line of a text that is not blank. TOO_LARGE for over 1,000,000 characters or 10,000 lines, before any is read. */
export const parseLines = (text: string, options: LineOptions, path: Path): Result<readonly ParsedLine[]> => {
  if (text.length > TEXT_MAX) {
    return failed([{ code: "TOO_LARGE", path, what: "text", size: text.length, limit: TEXT_MAX }]);
  }
  const lines = text.replace(/\r?\n$/, "").split(/\r\n?|\n/, LINES_MAX + 1);
  if (lines.length > LINES_MAX) {
    return failed([{ code: "TOO_LARGE", path, what: "lines", size: lines.length, limit: LINES_MAX }]);
  }
  return ok(lines.filter((line) => line.trim() !== "").map((line) => parseLine(line, options)));
};
