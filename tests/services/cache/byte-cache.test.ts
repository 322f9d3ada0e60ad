import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ByteCache } from "../../../src/services/cache/byte-cache.js";

describe("a cache of so many bytes", () => {
  it("lets those give way that were not asked for longest", () => {
    const cache = new ByteCache(15_000);
    for (const key of ["a", "b", "c"]) cache.set(key, key, 1_100);
    cache.get("a");
    for (let at = 0; at < 10; at += 1) cache.set(`more ${String(at)}`, at, 1_100);
    expect([cache.get("a"), cache.get("b"), cache.get("c")]).toEqual(["a", undefined, undefined]);
    expect(cache.figures.evicted).toBe(2);
  });

  it("does not keep what would push out a tenth of the rest", () => {
    const cache = new ByteCache(10_000);
    cache.set("large", "large", 2_000);
    expect(cache.get("large")).toBeUndefined();
    expect(cache.figures.bytes).toBe(0);
  });

  it("never holds more than its bytes, and counts them right", () => {
    const step = fc.record({
      key: fc.integer({ min: 0, max: 30 }),
      bytes: fc.integer({ min: 0, max: 3_000 }),
      drop: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(step, { maxLength: 200 }), (steps) => {
        const cache = new ByteCache(20_000);
        for (const { key, bytes, drop } of steps) {
          if (drop) cache.delete(String(key));
          else cache.set(String(key), key, bytes);
          expect(cache.figures.bytes).toBeLessThanOrEqual(20_000);
        }
        for (let key = 0; key <= 30; key += 1) cache.delete(String(key));
        expect(cache.figures).toMatchObject({ bytes: 0, entries: 0 });
      }),
    );
  });
});
