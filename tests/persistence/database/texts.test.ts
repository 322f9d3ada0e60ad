import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { canonicalJson, checksumOf } from "../../../src/persistence/sql/canonical-json.js";
import { foldText, foldWords } from "../../../src/persistence/sql/fold-words.js";
import { isStorable, storable } from "../../../src/persistence/sql/storable-text.js";

const jsonValue = fc.jsonValue({ noUnicodeString: false, maxDepth: 4 });

describe("canonical JSON", () => {
  it("is JSON that says the same", () => {
    fc.assert(
      fc.property(jsonValue, (value) => {
        expect(JSON.parse(canonicalJson(value))).toEqual(JSON.parse(JSON.stringify(value)));
      }),
    );
  });

  it("is one text however the keys were ordered", () => {
    const reversed = (value: unknown): unknown => {
      if (Array.isArray(value)) return value.map(reversed);
      if (typeof value !== "object" || value === null) return value;
      return Object.fromEntries(
        Object.entries(value)
          .toReversed()
          .map(([key, inner]) => [key, reversed(inner)]),
      );
    };
    fc.assert(
      fc.property(jsonValue, (value) => {
        expect(canonicalJson(reversed(value))).toBe(canonicalJson(value));
      }),
    );
    expect(canonicalJson({ b: 1, a: [{ d: null, c: "é" }], e: undefined })).toBe('{"a":[{"c":"é","d":null}],"b":1}');
  });

  it("tells different values apart", () => {
    expect(checksumOf({ a: 1 })).not.toBe(checksumOf({ a: "1" }));
    expect(checksumOf([1, 2])).not.toBe(checksumOf([2, 1]));
  });
});

describe("text that can be stored", () => {
  it("is any that UTF-8 can carry, but for NUL", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), fc.constantFrom("", "\0", "\ud800", "\udc00 "), (text, harm) => {
        const whole = `${text}${harm}`;
        const carried = Buffer.from(whole, "utf8").toString("utf8") === whole && !whole.includes("\0");
        expect(isStorable(whole)).toBe(carried);
      }),
    );
  });

  it("is looked for in keys, too", () => {
    expect(() => storable({ kitchen: { appliances: { "a\0": 1 } } })).toThrow("kitchen.appliances");
    expect(storable([{ a: null, b: 1, c: "😀" }])).toEqual([{ a: null, b: 1, c: "😀" }]);
  });
});

describe("folded text", () => {
  it("has no case and no accents, and letters that are not accents stay", () => {
    expect(foldText("  CRÈME Brûlée ")).toBe("creme brulee");
    expect(foldText("Straße")).toBe("straße");
    expect(foldText("हिन्दी")).toBe("हिन्दी");
  });

  it("folds the same twice", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        expect(foldText(foldText(text))).toBe(foldText(text));
      }),
    );
  });

  it("has every word once", () => {
    expect(foldWords("Roots & Barley, four ways: roots!")).toEqual(["roots", "barley", "four", "ways"]);
    expect(foldWords("…")).toEqual([]);
  });
});
