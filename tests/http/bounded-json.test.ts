import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { AnswerTooLarge, boundedBytes } from "../../src/http/answer-size.js";
import { boundedJson } from "../../src/http/bounded-json.js";

describe("JSON that is counted before it is written", () => {
  it("is what JSON.stringify writes, or is given up exactly where that is longer than it may be", () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.array(fc.jsonValue({ maxDepth: 4 })),
          fc.dictionary(fc.string(), fc.oneof(fc.anything({ withDate: true }), fc.jsonValue())),
        ),
        fc.integer({ min: -3, max: 3 }),
        (value, over) => {
          const text = JSON.stringify(value);
          const most = Math.max(0, text.length + over);
          if (text.length > most) expect(() => boundedJson(value, most)).toThrow(AnswerTooLarge);
          else expect(boundedJson(value, most)).toBe(text);
        },
      ),
      { numRuns: 500 },
    );
  });

  it("is not begun where the count is too high already, however large the rest is", () => {
    let written = 0;
    const asWritten = { toJSON: () => (written += 1) };
    const value = [asWritten, ...Array.from({ length: 1000 }, () => "ten letters"), asWritten];
    expect(() => boundedJson(value, 5_000)).toThrow(AnswerTooLarge);
    expect(written).toBe(0);
    boundedJson(value, 50_000);
    expect(written).toBe(2);
  });

  it("counts bytes and not letters in the end", () => {
    expect(boundedBytes("ä".repeat(50), 100)).toHaveLength(100);
    expect(() => boundedBytes("ä".repeat(51), 100)).toThrow(AnswerTooLarge);
  });
});
