import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readJson } from "../../src/http/json.js";
import { countJson } from "../../src/http/json-size.js";

const bytesOf = (value: unknown): Buffer => Buffer.from(JSON.stringify(value));

describe("the size of JSON", () => {
  it("is no reason to refuse what is as large as it may be", () => {
    const [values, levels] = [20_000, 100];
    expect(countJson(bytesOf(Array.from({ length: values - 1 }, () => 1)))).toBeNull();
    expect(countJson(bytesOf(Array.from({ length: values }, () => 1)))).toEqual({ what: "values", limit: values });
    expect(countJson(Buffer.from("[".repeat(levels) + "]".repeat(levels)))).toBeNull();
    expect(countJson(Buffer.from("[".repeat(levels + 1)))).toEqual({ what: "levels", limit: levels });
  });

  it("counts no sign that stands in a text", () => {
    const text = '[{,"\\\\\\",'.repeat(50_000);
    expect(countJson(bytesOf({ text, more: [text] }))).toBeNull();
    expect(readJson(bytesOf({ text }))).toEqual({ ok: true, value: { text } });
  });

  it("refuses nothing small, whatever it is", () => {
    fc.assert(
      fc.property(fc.json(), (text) => {
        const bytes = Buffer.from(text);
        expect(readJson(bytes)).toEqual({ ok: true, value: JSON.parse(text) });
      }),
    );
  });
});
