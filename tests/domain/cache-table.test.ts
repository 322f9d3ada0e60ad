import { setTimeout as wait } from "node:timers/promises";
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { expect, it } from "vitest";
import { cacheTable } from "../../src/domain/cache-table.js";
import { memoizeLatest } from "../../src/domain/memoize.js";
import { BoundedCache } from "../../src/domain/bounded-cache.js";

const named = (name: string) => cacheTable().find((caches) => caches.name === name);

it("the table of caches counts what all caches of a name hold, and what gave way", () => {
  const caches = [1, 2].map(() => new BoundedCache<number>("of two", { max: 3, maxSize: 100 }));
  for (const cache of caches) for (const at of [1, 2, 3, 4]) cache.set(String(at), at, { size: 10 });
  caches[0]?.delete("4");
  caches[1]?.set("4", 44, { size: 15 });
  expect(named("of two")).toEqual({ name: "of two", caches: 2, entries: 5, weight: 55, evicted: 2 });
});

it("the table of caches counts what functions remember", () => {
  const square = memoizeLatest("squares", 3, String, (number: number) => number * number);
  for (const at of [1, 2, 3, 4, 5, 5, 5]) expect(square(at)).toBe(at * at);
  expect(named("squares")).toEqual({ name: "squares", caches: 1, entries: 3, weight: 3, evicted: 2 });
});

it("the table of caches forgets a cache that is gone, and never what gave way in it", async () => {
  setFlagsFromString("--expose-gc");
  const collect = runInNewContext("gc") as () => void;
  const fill = (): void => {
    for (let at = 0; at < 50; at++) {
      const cache = new BoundedCache<number>("short-lived", { max: 1 });
      cache.set("a", 1);
      cache.set("b", 1);
    }
  };
  fill();
  expect(named("short-lived")).toMatchObject({ caches: 50, entries: 50, evicted: 50 });
  // The engine tells of what it collected between two tasks, when it likes to.
  for (let round = 0; round < 100 && (named("short-lived")?.caches ?? 0) > 1; round++) {
    await wait(1);
    collect();
  }
  expect(named("short-lived")?.caches).toBeLessThanOrEqual(1);
  expect(named("short-lived")).toMatchObject({ evicted: 50 });
});
