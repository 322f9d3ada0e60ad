import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { openRateLimitStore } from "../../../src/services/access/rate-limit-store.js";
import { consume, windowSeconds, type RateLimitWindow } from "../../../src/services/access/rate-limit-window.js";

const length = windowSeconds * 1000;

/** Requests of one caller: how long after the one before, in milliseconds, and what each costs. */
const requests = fc.array(
  fc.record({ after: fc.integer({ min: 0, max: 90_000 }), cost: fc.integer({ min: 0, max: 40 }) }),
  { maxLength: 60 },
);
const quota = fc.integer({ min: 1, max: 60 });

interface Taken {
  readonly at: number;
  readonly points: number;
}

/** What was taken, one entry for each request that was let through. */
function run(points: number, asked: readonly { readonly after: number; readonly cost: number }[]): readonly Taken[] {
  let window: RateLimitWindow | undefined;
  let now = 1_000_000;
  return asked.flatMap(({ after, cost }) => {
    now += after;
    const consumption = consume({ name: "address", points }, window, cost, now);
    window = consumption.window;
    return consumption.ok ? [{ at: now, points: Math.min(cost, points) }] : [];
  });
}

describe("a budget of points", () => {
  it("never gives more than twice its points within any one minute, and never more than its share of a longer time", () => {
    fc.assert(
      fc.property(quota, requests, (points, asked) => {
        const taken = run(points, asked);
        for (const { at } of taken) {
          const within = (span: number): number =>
            taken.filter((each) => each.at >= at && each.at < at + span).reduce((sum, each) => sum + each.points, 0);
          expect(within(length)).toBeLessThanOrEqual(2 * points);
          expect(within(5 * length)).toBeLessThanOrEqual(6 * points);
        }
      }),
    );
  });

  it("says truly how much is left and when all of it is there again", () => {
    fc.assert(
      fc.property(quota, requests, fc.integer({ min: 0, max: 200 }), (points, asked, cost) => {
        const quota = { name: "address", points };
        let window: RateLimitWindow | undefined;
        let now = 1_000_000;
        for (const each of asked) {
          now += each.after;
          const consumption = consume(quota, window, each.cost, now);
          window = consumption.window;
          expect(consumption.left).toBeGreaterThanOrEqual(0);
          expect(consumption.left).toBeLessThanOrEqual(points);
          expect(consumption.renewsIn).toBeGreaterThanOrEqual(1);
          expect(consumption.renewsIn).toBeLessThanOrEqual(windowSeconds);
          // What is left is let through now; one point more is not; whatever it costs, it is after the wait.
          expect(consume(quota, window, consumption.left, now).ok).toBe(true);
          if (consumption.left < points) expect(consume(quota, window, consumption.left + 1, now).ok).toBe(false);
          expect(consume(quota, window, cost, now + consumption.renewsIn * 1000)).toMatchObject({ ok: true });
        }
      }),
    );
  });

  it("takes nothing for what it refuses, so asking too early does not lengthen the wait", () => {
    const quota = { name: "address", points: 10 };
    const { window } = consume(quota, undefined, 8, 0);
    const refused = consume(quota, window, 3, 20_000);
    expect(refused).toEqual({ ok: false, points: 10, window, left: 2, renewsIn: 40 });
  });

  it("lets through, once a minute, what costs more than all of it", () => {
    const quota = { name: "address", points: 10 };
    expect(consume(quota, undefined, 500, 0)).toMatchObject({ ok: true, left: 0 });
    expect(consume(quota, { since: 0, spent: 1 }, 500, 1).ok).toBe(false);
  });

  it("makes nobody wait for a clock that was set back", () => {
    const spent = { since: 10 * length, spent: 10 };
    expect(consume({ name: "address", points: 10 }, spent, 1, 0)).toMatchObject({ ok: true, renewsIn: 60 });
  });
});

describe("the book of budgets", () => {
  const now = new Date(1_000_000);

  it("answers as if each caller had a budget of its own, as long as it has room", () => {
    const call = fc.record({
      caller: fc.constantFrom("a", "b", "c"),
      after: fc.integer({ min: 0, max: 30_000 }),
      cost: fc.integer({ min: 0, max: 8 }),
    });
    fc.assert(
      fc.property(fc.array(call, { maxLength: 80 }), (calls) => {
        const quota = { name: "address", points: 12 };
        const store = openRateLimitStore(quota, 6);
        const alone = new Map<string, RateLimitWindow>();
        let time = 1_000_000;
        for (const { caller, after, cost } of calls) {
          time += after;
          const expected = consume(quota, alone.get(caller), cost, time);
          alone.set(caller, expected.window);
          expect(store.consume(caller, cost, new Date(time))).toMatchObject({ ok: expected.ok, left: expected.left });
        }
      }),
    );
  });

  it("never holds more callers than it was told, and nobody is forgotten who asks again before half of them have", () => {
    const store = openRateLimitStore({ name: "address", points: 5 }, 100);
    store.consume("regular", 5, now);
    for (let n = 0; n < 10_000; n += 1) {
      store.consume(`passer-by ${n}`, 1, now);
      expect(store.size).toBeLessThanOrEqual(100);
      if (n % 40 === 0) expect(store.consume("regular", 1, now).ok).toBe(false);
    }
    expect(store.consume("passer-by 0", 0, now).left).toBe(5);
  });

  it("remembers nobody who only looked", () => {
    const store = openRateLimitStore({ name: "address", points: 5 });
    expect(store.consume("a", 0, now)).toMatchObject({ ok: true, left: 5 });
    expect(store.size).toBe(0);
  });
});
