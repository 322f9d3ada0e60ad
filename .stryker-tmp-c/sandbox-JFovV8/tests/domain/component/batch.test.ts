// @ts-nocheck
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { batchesBegun, batchesFor, batchSizes, ceilForgiving } from "../../../src/domain/component/batch.js";
import type { BatchRule } from "../../../src/domain/model/component.js";

const rule = (min: string, increment: string | null = null, max: string | null = null): BatchRule => ({
  min,
  max,
  increment,
});
const made = (demand: number, of: BatchRule) => batchesFor(demand, batchSizes(of));

describe("rounding up", () => {
  it("takes a double's last digits for nothing, in the small and in the large", () => {
    expect(ceilForgiving(0)).toBe(0);
    expect(ceilForgiving(2)).toBe(2);
    expect(ceilForgiving(2.0000000000001)).toBe(2);
    expect(ceilForgiving(1.9999999999999)).toBe(2);
    expect(ceilForgiving(2.00001)).toBe(3);
    expect(ceilForgiving(1e8 + 0.01)).toBe(1e8);
    expect(ceilForgiving(1e8 + 0.2)).toBe(1e8 + 1);
  });

  it("never takes a little for nothing", () => {
    expect(ceilForgiving(1e-12)).toBe(1);
    expect(batchesBegun(1e-10)).toBe(1);
  });

  it("counts what is begun", () => {
    expect([0, 0.2, 1, 1.5, 3].map(batchesBegun)).toEqual([0, 1, 1, 2, 3]);
  });
});

describe("batches for a demand", () => {
  it("makes nothing for nothing, and any size where the rule leaves it open", () => {
    expect(made(0, rule("1", "1"))).toEqual({ made: 0, loads: 0 });
    expect(made(0.37, rule("0"))).toEqual({ made: 0.37, loads: 1 });
  });

  it("makes at least the smallest size", () => {
    expect(made(0.1, rule("1/2"))).toEqual({ made: 0.5, loads: 1 });
    expect(made(0.6, rule("1/2"))).toEqual({ made: 0.6, loads: 1 });
  });

  it("O-15 c: halves from one up cover 8.5 of 6 cups with 1.5 batches and 10 with two", () => {
    expect(made(8.5 / 6, rule("1", "1/2"))).toEqual({ made: 1.5, loads: 1 });
    expect(made(10 / 6, rule("1", "1/2"))).toEqual({ made: 2, loads: 1 });
  });

  it("counts increments from the smallest size, not from nothing", () => {
    expect(made(1.1, rule("3/4", "1/2"))).toEqual({ made: 1.25, loads: 1 });
    expect(made(0.75, rule("3/4", "1/2"))).toEqual({ made: 0.75, loads: 1 });
  });

  it("begins another load only when the fullest one is full, which lies on the increment", () => {
    expect(made(2, rule("1", "1", "2"))).toEqual({ made: 2, loads: 1 });
    expect(made(2.1, rule("1", "1", "2"))).toEqual({ made: 3, loads: 2 });
    expect(made(2.1, rule("1", "1", "5/2"))).toEqual({ made: 3, loads: 2 });
    expect(made(2.6, rule("3/2", null, "5/2"))).toEqual({ made: 3, loads: 2 });
    expect(made(1.1, rule("1/2", "1/4", "7/8"))).toEqual({ made: 1.25, loads: 2 });
    expect(made(1e6, rule("1", "1", "4"))).toEqual({ made: 1e6, loads: 250_000 });
  });

  it("does not make one more for the last digits of a double, also above a large smallest size", () => {
    expect(made(3 * (1 / 3) * 2.0000000000000004, rule("0", "1")).made).toBe(2);
    expect(made(1e6 + 1e-6, rule("1000000", "1/1000")).made).toBe(1e6);
    expect(made(0.1 + 0.2, rule("0", "1/10")).made).toBeCloseTo(0.3, 12);
  });

  it("makes one for a crumb of demand", () => {
    expect(made(1e-10, rule("0", "1"))).toEqual({ made: 1, loads: 1 });
    expect(made(1e-10, rule("1", "1"))).toEqual({ made: 1, loads: 1 });
  });

  const eighths = (most: number) => fc.integer({ min: 1, max: most }).map((n) => `${n}/8`);
  const rules = fc
    .record({
      min: fc.oneof(fc.constant("0"), eighths(16)),
      increment: fc.option(eighths(12)),
      room: fc.option(fc.integer({ min: 0, max: 40 })),
    })
    .filter(({ min, room }) => room === null || room > 0 || min !== "0")
    .map(({ min, increment, room }): BatchRule => {
      const eighth = min === "0" ? 0 : Number(min.split("/")[0]);
      return { min, increment, max: room === null ? null : `${eighth + room}/8` };
    })
    .filter((each) => batchSizes(each).max > 0);

  it("covers the demand in sizes that its rule allows, and a smaller allowed size in as few loads would not", () => {
    fc.assert(
      fc.property(rules, fc.double({ min: 1e-6, max: 500, noNaN: true }), (of, demand) => {
        const sizes = batchSizes(of);
        const { made: size, loads } = batchesFor(demand, sizes);
        expect(size).toBeGreaterThanOrEqual(demand * (1 - 1e-9));
        expect(size).toBeGreaterThanOrEqual(loads * sizes.min);
        expect(size).toBeLessThanOrEqual(loads * sizes.max * (1 + 1e-9));
        if (loads > 1) expect((loads - 1) * sizes.max).toBeLessThan(demand * (1 + 1e-9));
        if (sizes.increment === 0) expect(size).toBe(Math.max(demand, loads * sizes.min));
        else {
          const steps = (size - loads * sizes.min) / sizes.increment;
          expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-6);
          if (steps > 0.5) expect(size - sizes.increment).toBeLessThan(demand);
        }
      }),
    );
  });

  it("never makes less for more", () => {
    const demand = fc.double({ min: 0, max: 500, noNaN: true });
    fc.assert(
      fc.property(rules, demand, demand, (of, a, b) => {
        const [less, more] = [made(Math.min(a, b), of), made(Math.max(a, b), of)];
        expect(more.made).toBeGreaterThanOrEqual(less.made * (1 - 1e-9));
        expect(more.loads).toBeGreaterThanOrEqual(less.loads);
      }),
    );
  });
});
