import type { Problem } from "../../domain/problem.js";

/** The most plans one list may hold. */
export const mostPortions = 50;

/** How many plans a list may hold: at least one, so that an empty list is noticed as a mistake. */
export function checkPortionCount(count: number): readonly Problem[] {
  if (count === 0) return [{ code: "BAD_SHAPE", path: ["plans"], expected: "at least one plan", got: "none" }];
  if (count <= mostPortions) return [];
  return [{ code: "TOO_LARGE", path: ["plans"], what: "plans", size: count, limit: mostPortions }];
}
