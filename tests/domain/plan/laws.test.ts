import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { noHousehold, type Household } from "../../../src/domain/model/household.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import { toDimension } from "../../../src/domain/quantity/convert.js";
import { scalePlan } from "../../../src/domain/plan/scale-plan.js";
import type { ScaledPlan, ShoppingLine, ShoppingList } from "../../../src/domain/plan/scaled.js";
import { shop } from "../../../src/domain/plan/shop.js";
import { arbitraryBundle, arbitraryStock } from "../../kit/arbitrary/arbitrary-bundle.js";
import { daysKept } from "../../oracle/exact-pieces.js";

const rough = { components: 14, meals: 4, linesEach: 5, smooth: false };
const smooth = { ...rough, smooth: true };
const servings = fc.integer({ min: 1, max: 60 });

const scaledBy = (bundle: PlanBundle, count: number, household: Household = noHousehold): ScaledPlan => {
  const result = scalePlan(bundle, count, household);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

const close = (a: number, b: number, size = Math.max(Math.abs(a), Math.abs(b))): boolean =>
  Math.abs(a - b) <= 1e-9 * size;
const notMore = (a: number, b: number): boolean => a <= b * (1 + 1e-9) + 1e-12;

const keyOf = ({ food, need }: ShoppingLine): string => `${food.slug} ${need?.dimension ?? "-"}`;
const byKey = (list: ShoppingList): Map<string, ShoppingLine> => new Map(list.lines.map((line) => [keyOf(line), line]));

/** Everything in an answer that is a number, wherever it stands, apart from the documents it was computed from. */
function numbersIn(value: unknown, skip: ReadonlySet<unknown>): number[] {
  if (typeof value === "number") return [value];
  if (typeof value !== "object" || value === null || skip.has(value)) return [];
  return Object.values(value).flatMap((each) => numbersIn(each, skip));
}

const documentsOf = (bundle: PlanBundle): ReadonlySet<unknown> =>
  new Set<unknown>([
    bundle,
    ...bundle.foods,
    ...bundle.components,
    ...bundle.plan.meals,
    ...[...bundle.plan.meals, ...bundle.components].flatMap(({ lines }) => lines),
    ...bundle.foods.flatMap(({ packs }) => packs),
  ]);

describe("the laws of the computation", () => {
  it("twice the servings take twice of everything, where lines are proportional and batches may have any size", () => {
    fc.assert(
      fc.property(arbitraryBundle(smooth), servings, (bundle, count) => {
        const [once, twice] = [scaledBy(bundle, count), scaledBy(bundle, 2 * count)];
        once.components.forEach(({ batches, made, used, lines }, at) => {
          const other = twice.components[at]!;
          expect(close(2 * batches, other.batches)).toBe(true);
          expect(close(2 * made.high, other.made.high)).toBe(true);
          expect(close(2 * used.low, other.used.low)).toBe(true);
          lines.forEach(({ amount }, n) => {
            if (amount !== null) expect(close(2 * amount.high, other.lines[n]!.amount!.high)).toBe(true);
          });
        });
        const after = byKey(shop([twice], noHousehold));
        for (const line of shop([once], noHousehold).lines) {
          const need = after.get(keyOf(line))!.need;
          if (line.need === null) expect(need).toBeNull();
          else {
            expect(close(2 * line.need.low, need!.low)).toBe(true);
            expect(close(2 * line.need.high, need!.high)).toBe(true);
          }
        }
      }),
    );
  });

  it("more servings never need less of anything, whatever the rules", () => {
    fc.assert(
      fc.property(arbitraryBundle(rough), servings, servings, arbitraryStock, (bundle, count, more, stock) => {
        const household = { ...noHousehold, onHand: stock };
        const [few, many] = [scaledBy(bundle, count, household), scaledBy(bundle, count + more, household)];
        few.components.forEach(({ batches, used }, at) => {
          expect(notMore(batches, many.components[at]!.batches)).toBe(true);
          expect(notMore(used.high, many.components[at]!.used.high)).toBe(true);
        });
        const after = byKey(shop([many], household));
        for (const line of shop([few], household).lines) {
          const other = after.get(keyOf(line))!;
          if (line.need === null) continue;
          expect(notMore(line.need.low, other.need!.low)).toBe(true);
          expect(notMore(line.need.high, other.need!.high)).toBe(true);
          expect(notMore(line.toBuy!.high, other.toBuy!.high)).toBe(true);
        }
      }),
    );
  });

  it("made - used = left over, and none of them is negative", () => {
    fc.assert(
      fc.property(arbitraryBundle(rough), servings, (bundle, count) => {
        for (const { made, used, leftOver, batches, loads, onHand } of scaledBy(bundle, count).components) {
          expect(close(made.low - used.high, leftOver.low, made.high)).toBe(true);
          expect(close(made.high - used.low, leftOver.high, made.high)).toBe(true);
          expect(leftOver.low).toBeGreaterThanOrEqual(0);
          expect(leftOver.high).toBeGreaterThanOrEqual(leftOver.low);
          expect(used.low).toBeGreaterThanOrEqual(0);
          expect(onHand).toEqual({ dimension: made.dimension, low: 0, high: 0 });
          expect(batches > 0).toBe(used.high > 0);
          expect(Number.isInteger(loads) && loads > 0).toBe(batches > 0);
        }
      }),
    );
  });

  it("uses account for the need: the whole ones, and of each part's the largest sum as far as parts keep", () => {
    fc.assert(
      fc.property(arbitraryBundle(rough), servings, (bundle, count) => {
        for (const { need, uses, food } of shop([scaledBy(bundle, count)], noHousehold).lines) {
          if (need === null) {
            expect(uses.every(({ amount }) => amount === null)).toBe(true);
            continue;
          }
          for (const end of ["low", "high"] as const) {
            const sum = (part: string | null): number =>
              uses.reduce((total, use) => (use.part === part ? total + (use.amount?.[end] ?? 0) : total), 0);
            const parts = [...new Set(uses.flatMap(({ part }) => (part === null ? [] : [part])))];
            const days = uses.flatMap(({ part, meal }) => (part === null ? [] : [meal?.day ?? 0]));
            const wait = Math.max(0, ...days) - Math.min(...days);
            const keep = food.parts
              .filter(({ name }) => parts.includes(name))
              .map((part) => daysKept(part) ?? Infinity);
            const [shared, apart] = [
              Math.max(0, ...parts.map(sum)),
              parts.reduce((total, part) => total + sum(part), 0),
            ];
            expect(notMore(sum(null) + shared, need[end])).toBe(true);
            expect(notMore(need[end], sum(null) + apart)).toBe(true);
            if (keep.every((each) => each >= wait)) expect(close(sum(null) + shared, need[end])).toBe(true);
          }
          for (const { amount, meal, component } of uses) {
            if (amount !== null) expect(amount.dimension).toBe(need.dimension);
            expect((meal === null) !== (component === null)).toBe(true);
          }
        }
      }),
    );
  });

  it("what is bought covers the need less what is on hand", () => {
    fc.assert(
      fc.property(arbitraryBundle(rough), servings, arbitraryStock, (bundle, count, stock) => {
        const household = { ...noHousehold, onHand: stock };
        for (const { food, need, onHand, toBuy, buy } of shop([scaledBy(bundle, count, household)], household).lines) {
          if (need === null || onHand === null || toBuy === null) {
            expect(buy).toEqual([]);
            continue;
          }
          expect(onHand.high).toBeLessThanOrEqual(need.high);
          expect(close(need.high - onHand.high, toBuy.high, need.high)).toBe(true);
          if (food.packs.length === 0) continue;
          const bought = buy.reduce((sum, { pack, count: packs }) => {
            const content = toDimension(pack.content, need.dimension, food, null);
            return content.ok ? sum + packs * content.amount.low : sum;
          }, 0);
          expect(notMore(toBuy.high, bought)).toBe(true);
          for (const { count: packs } of buy) expect(Number.isInteger(packs) && packs > 0).toBe(true);
        }
      }),
    );
  });

  it("merging is commutative and associative", () => {
    const portions = fc.array(fc.tuple(arbitraryBundle({ ...rough, components: 5, meals: 2 }), servings), {
      minLength: 2,
      maxLength: 5,
    });
    fc.assert(
      fc.property(portions, fc.infiniteStream(fc.nat()), arbitraryStock, (plans, order, stock) => {
        const household = { ...noHousehold, onHand: stock };
        const scaled = plans.map(([bundle, count]) => scaledBy(bundle, count, household));
        const keys = scaled.map(() => order.next().value);
        const shuffled = scaled
          .map((each, at) => ({ each, key: keys[at]! }))
          .toSorted((a, b) => a.key - b.key)
          .map(({ each }) => each);
        const [one, other] = [shop(scaled, household), shop(shuffled, household)];
        expect(other.lines.map(keyOf)).toEqual(one.lines.map(keyOf));
        expect(other.cost).toEqual(one.cost);
        one.lines.forEach((line, at) => {
          const same = other.lines[at]!;
          if (line.need === null) return;
          expect(close(line.need.low, same.need!.low)).toBe(true);
          expect(close(line.need.high, same.need!.high)).toBe(true);
          expect(close(line.toBuy!.high, same.toBuy!.high, line.need.high)).toBe(true);
          expect(same.buy.map(({ pack, count }) => [pack.id, count])).toEqual(
            line.buy.map(({ pack, count }) => [pack.id, count]),
          );
        });
        // Foods without parts: the need over all is the sum of the needs of each.
        const alone = scaled.map((each) => byKey(shop([each], noHousehold)));
        for (const line of one.lines.filter(({ food, need }) => need !== null && food.parts.length === 0)) {
          const sum = alone.reduce((total, list) => total + (list.get(keyOf(line))?.need?.high ?? 0), 0);
          expect(close(sum, line.need!.high)).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });

  it("no number it gives is negative, infinite or no number", () => {
    fc.assert(
      fc.property(
        arbitraryBundle(rough),
        fc.oneof(servings, fc.constantFrom(1, 1_000_000)),
        arbitraryStock,
        (bundle, count, stock) => {
          const household = { ...noHousehold, onHand: stock };
          const { compiled, ...scaled } = scaledBy(bundle, count, household);
          const list = shop([{ compiled, ...scaled }], household);
          const bad = numbersIn([scaled, list], documentsOf(bundle)).filter((n) => !(n >= 0 && Number.isFinite(n)));
          expect(bad).toEqual([]);
        },
      ),
    );
  });

  it("a list stands in the order of aisles and foods, whatever the order of the plans", () => {
    fc.assert(
      fc.property(arbitraryBundle(rough), servings, (bundle, count) => {
        const places = shop([scaledBy(bundle, count)], noHousehold).lines.map(({ food }) => [food.aisle, food.slug]);
        expect(places).toEqual(places.toSorted(([a, b], [c, d]) => (a! < c! ? -1 : a! > c! ? 1 : b! < d! ? -1 : 1)));
      }),
      { numRuns: 40 },
    );
  });

  it("the same question has the same answer, and a plan is not changed by asking", () => {
    fc.assert(
      fc.property(arbitraryBundle(rough), servings, (bundle, count) => {
        const before = JSON.stringify(bundle);
        const first = scaledBy(bundle, count);
        scaledBy(bundle, count + 1);
        expect(scaledBy(bundle, count)).toEqual(first);
        expect(shop([first], noHousehold)).toEqual(shop([first], noHousehold));
        expect(JSON.stringify(bundle)).toBe(before);
      }),
      { numRuns: 30 },
    );
  });
});
