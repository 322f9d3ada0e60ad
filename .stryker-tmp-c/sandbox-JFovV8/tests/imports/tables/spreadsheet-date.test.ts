// @ts-nocheck
import { describe, expect, it } from "vitest";
import { spreadsheetDate } from "../../../src/imports/tables/spreadsheet-date.js";

// Case O-38. The serial day number is arithmetic: 46024 days after 30 December 1899 is 2 January 2026.
describe("O-38: amounts that a spreadsheet program turned into dates", () => {
  it.each([
    ["2-Jan", ["1/2", "1-2"], "MONTH_FIRST"],
    ["02-Jan", ["1/2", "1-2"], "MONTH_FIRST"],
    ["01-Feb", ["1/2", "1-2"], "DAY_FIRST"],
    ["46024", ["1/2", "1-2"], "MONTH_FIRST"],
    ["4-Mar", ["3/4", "3-4"], "MONTH_FIRST"],
    ["Mar-04", ["3/4", "3-4"], "MONTH_FIRST"],
    ["2026-01-02", ["1/2", "1-2"], "MONTH_FIRST"],
    ["01.02.2026", ["1/2", "1-2"], "DAY_FIRST"],
  ])("%s", (cell, offers, order) => {
    expect(spreadsheetDate(cell, "en")).toEqual({ offers, order });
  });

  it("knows the months of the feed's language", () => {
    expect(spreadsheetDate("1. Mai", "de")?.offers).toEqual(["1/5", "1-5"]);
    expect(spreadsheetDate("02. Dez.", "de")?.offers).toEqual(["2/12", "2-12"]);
    expect(spreadsheetDate("1. Mai", "en")).toBeNull();
  });

  it.each(["1/2", "1-2", "500", "2.5", "1,5", "2 cups", "1 marrow", "99999", "12 oct-something", ""])(
    "%j is none",
    (cell) => {
      expect(spreadsheetDate(cell, "en")).toBeNull();
    },
  );

  it("takes no price for a day", () => {
    expect(spreadsheetDate("46024", "en", false)).toBeNull();
  });
});
