import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { BoundedCache } from "../../src/domain/bounded-cache.js";

describe("a bounded cache", () => {
  it("evicts what was not asked for longest", () => {
    const cache = new BoundedCache<string>("test", { max: 3 });
    for (const key of ["a", "b", "c"]) cache.set(key, key);
    cache.get("a");
    cache.set("d", "d");
    cache.set("e", "e");
    expect([...cache.keys()].toSorted()).toEqual(["a", "d", "e"]);
    expect(cache.evicted).toBe(2);
  });

  it("counts as evicted neither what was deleted nor what was replaced", () => {
    const cache = new BoundedCache<number>("test", { max: 3, maxSize: 10 });
    cache.set("a", 1, { size: 4 });
    cache.set("a", 2, { size: 5 });
    cache.delete("a");
    expect([cache.evicted, cache.size, cache.calculatedSize]).toEqual([0, 0, 0]);
  });

  it("does not keep what is larger than an entry may be, nor what it would have replaced", () => {
    const cache = new BoundedCache<string>("test", { maxSize: 10_000, maxEntrySize: 1_000 });
    cache.set("large", "small before", { size: 1_000 });
    cache.set("large", "large", { size: 1_001 });
    expect(cache.get("large")).toBeUndefined();
    expect(cache.calculatedSize).toBe(0);
  });

  /** The plainest thing that does the same: a list in the order of asking. */
  class Model {
    entries: { readonly key: string; readonly value: number; readonly size: number }[] = [];

    constructor(private readonly bounds: { readonly max: number; readonly maxSize: number }) {}

    take(key: string): number | undefined {
      const found = this.entries.find((each) => each.key === key);
      if (found === undefined) return undefined;
      this.entries = [...this.entries.filter((each) => each !== found), found];
      return found.value;
    }

    put(key: string, value: number, size: number): void {
      this.entries = this.entries.filter((each) => each.key !== key);
      if (size > this.bounds.maxSize) return;
      this.entries.push({ key, value, size });
      while (this.entries.length > this.bounds.max || this.weight > this.bounds.maxSize) this.entries.shift();
    }

    get weight(): number {
      return this.entries.reduce((sum, { size }) => sum + size, 0);
    }
  }

  it("holds what a list in the order of asking holds, and no more than its bounds", () => {
    const step = fc.record({
      key: fc.integer({ min: 0, max: 9 }).map(String),
      size: fc.integer({ min: 1, max: 40 }),
      does: fc.constantFrom("GET" as const, "SET" as const, "DELETE" as const),
    });
    const bounds = fc.record({ max: fc.integer({ min: 1, max: 6 }), maxSize: fc.integer({ min: 1, max: 90 }) });
    fc.assert(
      fc.property(bounds, fc.array(step, { maxLength: 100 }), (limits, steps) => {
        const cache = new BoundedCache<number>("test", limits);
        const model = new Model(limits);
        steps.forEach(({ key, size, does }, at) => {
          if (does === "GET") expect(cache.get(key)).toBe(model.take(key));
          else if (does === "DELETE") {
            cache.delete(key);
            model.entries = model.entries.filter((each) => each.key !== key);
          } else {
            cache.set(key, at, { size });
            model.put(key, at, size);
          }
          expect([cache.size, cache.calculatedSize]).toEqual([model.entries.length, model.weight]);
        });
        for (const { key, value } of [...model.entries]) expect(cache.get(key)).toBe(value);
      }),
    );
  });
});
