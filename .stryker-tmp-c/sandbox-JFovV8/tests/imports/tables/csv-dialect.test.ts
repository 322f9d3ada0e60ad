// @ts-nocheck
import { describe, expect, it } from "vitest";
import { csvDialect } from "../../../src/imports/tables/csv-dialect.js";

const known = ["name", "qty", "unit", "notes"];

describe("how a table is written", () => {
  // Case O-37.
  it("O-37: comma, semicolon with decimal commas, tab, and a sep= line", () => {
    const delimiter = (head: string) => {
      const found = csvDialect(head, known, null);
      return found.ok ? [found.value.delimiter, found.value.before] : found.problems;
    };
    expect(delimiter('name,qty,unit,notes\r\n"Beans, dried",1,lb,"soak"\r\n')).toEqual([",", 0]);
    expect(delimiter("name;qty;unit\r\nMehl;1,5;kg\r\n")).toEqual([";", 0]);
    expect(delimiter("name\tqty\nMehl, weiß\t1,5")).toEqual(["\t", 0]);
    expect(delimiter("sep=;\r\nname;qty\r\n")).toEqual([";", 1]);
    expect(delimiter('"name, of the food";qty;unit')).toEqual([";", 0]);
    expect(delimiter("name\nBeans")).toEqual([",", 0]);
  });

  it("O-37: is refused with the first line where it is not clear", () => {
    expect(csvDialect("eins;zwei,drei\n", known, null)).toEqual({
      ok: false,
      problems: [{ code: "DELIMITER_UNCLEAR", path: [], firstLine: "eins;zwei,drei" }],
    });
    expect(csvDialect("nothing here\n", known, null).ok).toBe(false);
    expect(csvDialect("eins;zwei,drei\n", known, ";")).toMatchObject({ ok: true, value: { delimiter: ";" } });
  });

  it("ends lines as the file does, also as old machines did", () => {
    expect(csvDialect("name,qty\rBeans,1\r", known, null)).toMatchObject({ value: { newline: "\r" } });
  });
});
