// @ts-nocheck
import type { Problem } from "../domain/problem.js";
import { isStorable } from "./storable.js";

export const longestSearch = 200;

/** Problems of the texts somebody looks for: too long, or with characters that no database text can hold. */
export function readSearch(texts: Readonly<Record<string, string | null>>): readonly Problem[] {
  return Object.entries(texts).flatMap(([name, text]): readonly Problem[] => {
    if (text === null) return [];
    const path = ["filter", name];
    if (text.length > longestSearch) {
      return [{ code: "TOO_LARGE", path, what: "characters", size: text.length, limit: longestSearch }];
    }
    return isStorable(text) ? [] : [{ code: "BAD_SHAPE", path, expected: "text", got: "a NUL or half a character" }];
  });
}
