import { describe, expect, it } from "vitest";
import { isAllowed, mayShip } from "../../scripts/release/licences.mjs";

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

  it("of a library that is loaded beside the program may be the LGPL, of one that is part of it may not", () => {
    const name = "@img/sharp-libvips-linux-x64";
    const license = "LGPL-3.0-or-later";
    expect(mayShip({ name, license, how: "installed" })).toBe(true);
    expect(mayShip({ name, license, how: "bundled" })).toBe(false);
    expect(mayShip({ name: "other", license, how: "installed" })).toBe(false);
    expect(mayShip({ name, license: "AGPL-3.0-only", how: "installed" })).toBe(false);
  });
});
