import { crc32 } from "node:zlib";
import { expect, it } from "vitest";
import { recentBytes } from "../../../src/graphql/server/recent-bytes.js";

const limits = { max: 10, maxSize: 1_000, maxEntrySize: 100 };

/** Two of the same length and checksum: among some hundred thousand there are always some. */
function twoOfOneChecksum(): readonly [Buffer, Buffer] {
  const seen = new Map<number, Buffer>();
  for (let n = 0; ; n += 1) {
    const bytes = Buffer.from(`${Math.imul(n, 2654435761) >>> 0}`.padStart(10, "0") + String(n).padStart(8, "0"));
    const checksum = crc32(bytes);
    const other = seen.get(checksum);
    if (other !== undefined) return [other, bytes];
    seen.set(checksum, bytes);
  }
}

it("finds what belongs to the same bytes", () => {
  const recent = recentBytes<string>("test", limits);
  recent.keep(Buffer.from("carrots"), "roots");
  expect(recent.get(Buffer.from("carrots"))).toBe("roots");
  expect(recent.get(Buffer.from("carrot "))).toBeUndefined();
});

it("does not take other bytes with the same checksum for them", () => {
  const [one, other] = twoOfOneChecksum();
  expect(one.equals(other)).toBe(false);
  const recent = recentBytes<string>("test", limits);
  recent.keep(one, "one");
  expect(recent.get(other)).toBeUndefined();
  recent.keep(other, "other");
  expect(recent.get(one)).toBe("one");
  expect(recent.get(other)).toBeUndefined();
});

it("keeps the bytes as they were", () => {
  const recent = recentBytes<string>("test", limits);
  const bytes = Buffer.from("carrots");
  recent.keep(bytes, "roots");
  bytes.fill("x");
  expect(recent.get(Buffer.from("carrots"))).toBe("roots");
  expect(recent.get(bytes)).toBeUndefined();
});
