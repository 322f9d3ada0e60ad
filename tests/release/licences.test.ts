import { describe, expect, it } from "vitest";
import { isAllowed } from "../../scripts/release/licences.mjs";

/** Expressions of SPDX 2.3, annex D: OR is met by one side, AND by both, and AND binds more tightly. */
describe("a licence", () => {
  it.each([
    "MIT",
    "(MIT OR CC0-1.0)",
    "GPL-3.0-only OR MIT",
    "MIT AND ISC",
    "(GPL-3.0-only AND MIT) OR Apache-2.0",
    "GPL-3.0-only AND MIT OR ISC",
  ])("%s may go with the program", (expression) => expect(isAllowed(expression)).toBe(true));

  it.each([
    null,
    "",
    "UNLICENSED",
    "GPL-3.0-only",
    "SEE LICENSE IN x.txt",
    "MIT AND GPL-3.0-only",
    "MIT AND (GPL-3.0-only OR AGPL-3.0-only)",
    "(MIT",
    "MIT)",
    "MIT ISC",
    "MIT OR",
  ])("%s may not", (expression) => expect(isAllowed(expression)).toBe(false));
});
