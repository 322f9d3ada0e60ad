import type { Problem } from "../../domain/problem.js";

/** What is wrong with a cell of a table. */
export const badCell = (column: string, expected: string, got: string): Problem => ({
  code: "BAD_SHAPE",
  path: [column],
  expected,
  got: got === "" ? "nothing" : `"${got.slice(0, 60)}"`,
});
