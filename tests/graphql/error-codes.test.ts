import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { errorCodes } from "../../src/graphql/error-codes.js";

const page = readFileSync("docs/graphql.md", "utf8");
const rows = [...page.matchAll(/^\| `([A-Z_]+)` +\| (\d{3}) +\| (.+?) +\|$/gm)].map(([, code, status, text]) => ({
  code: code ?? "",
  status: Number(status),
  text: text ?? "",
}));

describe("the page on GraphQL", () => {
  it("explains every code that ends a request, with its status, and no other", () => {
    expect(rows.map(({ code }) => code).sort()).toEqual(Object.keys(errorCodes).sort());
    for (const { code, status, text } of rows) {
      expect(text.length).toBeGreaterThan(20);
      // A body is refused with its own status under a code that documents share.
      if (code !== "TOO_LARGE")
        expect([code, status]).toEqual([code, errorCodes[code as keyof typeof errorCodes].status]);
    }
  });
});
