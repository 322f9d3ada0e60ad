import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { newTokenParts, readTokenText, tokenPattern, tokenText } from "../../../src/services/access/token-text.js";

describe("the text of a token", () => {
  it("is read back, has the published shape, and is never the same twice", () => {
    const made = Array.from({ length: 200 }, newTokenParts);
    for (const parts of made) {
      const text = tokenText(parts);
      expect(text).toMatch(tokenPattern);
      expect(readTokenText(text)).toEqual(parts);
    }
    expect(new Set(made.map(({ id }) => id)).size).toBe(200);
    expect(new Set(made.map(({ secret }) => secret)).size).toBe(200);
  });

  it("ends in the CRC-32 of the rest", () => {
    // The bitwise algorithm of ISO 3309, from memory.
    const parts = { id: "abcdEFGH", secret: "0123456789ABCDEFGHIJKLMNOPQRST" };
    const checked = `prepwright_${parts.id}${parts.secret}`;
    let crc = 0xffffffff;
    for (const byte of Buffer.from(checked)) {
      crc ^= byte;
      for (let bit = 0; bit < 8; bit += 1) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
    }
    const digits = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz";
    const value = [...tokenText(parts).slice(-6)].reduce((sum, digit) => sum * 62 + digits.indexOf(digit), 0);
    expect(value).toBe((crc ^ 0xffffffff) >>> 0);
  });

  it("is refused after any slip in one character", () => {
    const text = tokenText({ id: "abcdEFGH", secret: "0123456789ABCDEFGHIJKLMNOPQRST" });
    fc.assert(
      fc.property(fc.nat(text.length - 1), fc.string({ minLength: 1, maxLength: 1 }), (at, letter) => {
        fc.pre(text[at] !== letter);
        expect(readTokenText(text.slice(0, at) + letter + text.slice(at + 1))).toBeNull();
      }),
      { numRuns: 2000 },
    );
    for (const cut of [1, 6, 30]) expect(readTokenText(text.slice(0, -cut))).toBeNull();
    expect(readTokenText(`${text}\n`)).toBeNull();
  });
});
