import { describe, expect, it } from "vitest";
import { byteRange } from "../../src/http/byte-range.js";

describe("a range of bytes", () => {
  it("is read as in the examples of RFC 9110, 14.1.2, of 10,000 bytes", () => {
    expect(byteRange("bytes=0-499", 10_000)).toEqual({ from: 0, to: 499 });
    expect(byteRange("bytes=500-999", 10_000)).toEqual({ from: 500, to: 999 });
    expect(byteRange("bytes=-500", 10_000)).toEqual({ from: 9_500, to: 9_999 });
    expect(byteRange("bytes=9500-", 10_000)).toEqual({ from: 9_500, to: 9_999 });
    expect(byteRange("bytes=9500-20000", 10_000)).toEqual({ from: 9_500, to: 9_999 });
    expect(byteRange("bytes=-20000", 10_000)).toEqual({ from: 0, to: 9_999 });
  });

  it("is the whole where there is none, several, or one that cannot be read", () => {
    for (const header of [undefined, "", "bytes=", "bytes=-", "bytes=5-2", "bytes=0-0,-1", "lines=0-1", "bytes=a-b"]) {
      expect(byteRange(header, 10), header).toBeNull();
    }
  });

  it("beyond the end is nothing", () => {
    expect(byteRange("bytes=10-", 10)).toBe("OUTSIDE");
    expect(byteRange("bytes=-0", 10)).toBe("OUTSIDE");
  });
});
