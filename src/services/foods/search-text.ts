import type { Path, Problem } from "../../domain/problem.js";
import { isStorable } from "../storable-text.js";

const longestSearch = 200;

/**
 * Problems of the texts somebody looks for: too long, or with characters that no database text can hold.
 *
 * @param inside where in the input they stand
 */
export function readSearch(
  texts: Readonly<Record<string, string | null>>,
  inside: Path = ["filter"],
): readonly Problem[] {
  return Object.entries(texts).flatMap(([name, text]): readonly Problem[] => {
    if (text === null) return [];
    const path = [...inside, name];
    if (text.length > longestSearch) {
      return [{ code: "TOO_LARGE", path, what: "characters", size: text.length, limit: longestSearch }];
    }
    return isStorable(text) ? [] : [{ code: "BAD_SHAPE", path, expected: "text", got: "a NUL or half a character" }];
  });
}
