import fc from "fast-check";
import type { BatchRule, Component } from "../../../src/domain/model/component.js";
import type { Food } from "../../../src/domain/model/food.js";
import type { OnHand } from "../../../src/domain/model/household.js";
import type { Line, LineItem } from "../../../src/domain/model/line.js";
import type { Meal, PlanBundle } from "../../../src/domain/model/plan.js";
import { bundleOf } from "../../../src/domain/plan/compile/plan-bundle.js";
import * as build from "../builders.js";

/** Foods that between them show every kind of fact, and every kind of gap. All numbers are made up. */
export const larder: readonly Food[] = [
  build.food("beans", {
    aisle: "dry goods",
    densities: [build.density(0.8)],
    packs: [build.pack("500 g", "1.10"), build.pack("1 kg", "1.95"), build.pack("2 lb", "1.80")],
  }),
  build.food("flour", { aisle: "dry goods", densities: [build.density(0.528)], packs: [build.pack("1 kg", "0.90")] }),
  build.food("salt", { aisle: "dry goods" }),
  build.food("oil", { shoppedBy: "VOLUME", densities: [build.density(0.92)], packs: [build.pack("750 ml", "6.40")] }),
  build.food("stock", { shoppedBy: "VOLUME" }),
  build.food("carrot", {
    aisle: "greengrocer",
    edible: [build.edible(0.8), build.edible(0.75, "grated")],
    densities: [build.density(0.45, "grated")],
    measures: [build.own("piece", { grams: 60, pieces: 1 })],
    packs: [build.pack("1 kg", "1.20")],
  }),
  build.food("lemon", {
    aisle: "greengrocer",
    shoppedBy: "COUNT",
    measures: [build.own("piece", { grams: 84, pieces: 1 })],
    densities: [build.density(1.03, "juice")],
    parts: [
      build.part("zest", "3-6 ml"),
      build.part("juice", "48 g", ["zest"], { keeping: [build.keeps(3), build.keeps(2.5)] }),
    ],
    packs: [build.pack("1 piece", "0.40"), build.pack("4 piece", "1.35")],
  }),
  build.food("egg", {
    shoppedBy: "COUNT",
    measures: [build.own("piece", { grams: 50, pieces: 1 })],
    parts: [
      build.part("white", "1 piece", [], { keeping: [build.keeps(4), build.keeps(90, "FREEZER")] }),
      build.part("yolk", "1 piece", [], { keeping: [build.keeps(1), build.keeps(0, "ROOM")] }),
    ],
    packs: [build.pack("6 piece", "2.10"), build.pack("10 piece", null)],
  }),
  build.food("garlic", {
    aisle: "greengrocer",
    shoppedBy: "COUNT",
    measures: [build.own("clove", { grams: 5, pieces: 0.1 })],
    packs: [build.pack("1 piece", "0.55")],
  }),
  build.food("thyme", { shoppedBy: "COUNT", aisle: "greengrocer" }),
  build.food("water", { shoppedBy: "VOLUME", alwaysThere: true }),
];

const ways: readonly { readonly item: LineItem; readonly unit: string; readonly facts: Partial<Line> }[] = [
  { item: build.of("beans"), unit: "g", facts: {} },
  { item: build.of("beans"), unit: "us-cup", facts: {} },
  { item: build.of("beans"), unit: "lb", facts: { measured: "READY" } },
  { item: build.of("flour"), unit: "us-cup", facts: {} },
  { item: build.of("flour"), unit: "oz", facts: {} },
  { item: build.of("flour"), unit: "us-cup", facts: { form: "sifted" } },
  { item: build.of("salt"), unit: "us-tsp", facts: {} },
  { item: build.of("salt"), unit: "g", facts: {} },
  { item: build.of("oil"), unit: "au-tbsp", facts: { extra: true } },
  { item: build.of("oil"), unit: "g", facts: {} },
  { item: build.of("stock"), unit: "l", facts: {} },
  { item: build.of("carrot"), unit: "piece", facts: {} },
  { item: build.of("carrot"), unit: "lb", facts: { measured: "READY" } },
  { item: build.of("carrot"), unit: "us-cup", facts: { measured: "READY", form: "grated" } },
  { item: build.of("lemon"), unit: "piece", facts: {} },
  { item: build.of("lemon"), unit: "g", facts: {} },
  { item: build.of("lemon", "juice"), unit: "us-tbsp", facts: {} },
  { item: build.of("lemon", "juice"), unit: "piece", facts: {} },
  { item: build.of("lemon", "zest"), unit: "us-tsp", facts: {} },
  { item: build.of("lemon", "zest"), unit: "g", facts: {} },
  { item: build.of("egg"), unit: "piece", facts: {} },
  { item: build.of("egg", "white"), unit: "piece", facts: {} },
  { item: build.of("egg", "white"), unit: "g", facts: {} },
  { item: build.of("egg", "yolk"), unit: "dozen", facts: {} },
  { item: build.of("garlic"), unit: "own:clove", facts: {} },
  { item: build.of("garlic"), unit: "g", facts: {} },
  { item: build.of("thyme"), unit: "piece", facts: {} },
  { item: build.of("water"), unit: "l", facts: {} },
];

const eighths = (low: number, high: number, unit: string): string => {
  const text = (n: number): string => (n % 8 === 0 ? String(n / 8) : `${n}/8`);
  return low === high ? `${text(low)} ${unit}` : `${text(low)}-${text(high)} ${unit}`;
};

const range = fc
  .tuple(
    fc.integer({ min: 1, max: 80 }),
    fc.oneof({ weight: 4, arbitrary: fc.constant(0) }, fc.integer({ max: 20, min: 1 })),
  )
  .map(([low, more]): readonly [number, number] => [low, low + more]);

const growing: fc.Arbitrary<Partial<Line>> = fc.oneof(
  { weight: 6, arbitrary: fc.constant({}) },
  { weight: 1, arbitrary: fc.constant({ rule: "PER_BATCH" as const }) },
  { weight: 1, arbitrary: fc.constantFrom(0.5, 0.75, 1).map((exponent) => ({ rule: "POWER" as const, exponent })) },
);

const proportional: fc.Arbitrary<Partial<Line>> = fc.constant({});

const foodLine = (rule: fc.Arbitrary<Partial<Line>>): fc.Arbitrary<Line> =>
  fc
    .tuple(fc.constantFrom(...ways), range, rule)
    .map(([{ item, unit, facts }, [low, high], grows]) =>
      build.line(eighths(low, high, unit), item, { ...facts, ...grows }),
    );

const tasted: fc.Arbitrary<Line> = fc.constantFrom("salt", "oil", "beans").map((slug) => build.line(null, slug));

/** A line on the n-th component before this one; what a batch takes of another stays below a batch, so that depth does not explode. */
interface Taking {
  readonly back: number;
  readonly unit: string;
  readonly range: readonly [number, number];
  readonly grows: Partial<Line>;
}

const taking = (rule: fc.Arbitrary<Partial<Line>>): fc.Arbitrary<Taking> =>
  fc.record({
    back: fc.nat(59),
    unit: fc.constantFrom("g", "ml", "us-tbsp", "batch", "piece"),
    range,
    grows: rule,
  });

const takingLine = (
  { back, unit, range: [low, high], grows }: Taking,
  before: readonly string[],
  from: "meal" | "component",
): Line => {
  const slug = before[back % before.length]!;
  // Of a component that yields 400 g: a tenth of a batch or so; a meal takes more.
  const small: Readonly<Record<string, number>> = { batch: 0.01, piece: 0.1, "us-tbsp": 0.1 };
  const by = (small[unit] ?? 1) * (from === "meal" ? 4 : 0.5);
  const shrunk = (n: number): number => Math.max(1, Math.round(n * by));
  return build.line(eighths(shrunk(low), shrunk(high), unit), build.made(slug), grows);
};

export const anyBatches: BatchRule = { min: "0", max: null, increment: null };

const batchRule: fc.Arbitrary<BatchRule> = fc.oneof(
  { weight: 2, arbitrary: fc.constant(anyBatches) },
  {
    weight: 5,
    arbitrary: fc.constantFrom<BatchRule>(
      { min: "1", max: null, increment: "1" },
      { min: "1/2", max: null, increment: "1/2" },
      { min: "1/3", max: null, increment: null },
      { min: "1/2", max: "2", increment: null },
      { min: "1", max: "5/2", increment: "1/3" },
      { min: "0", max: "3", increment: "1" },
      { min: "2/3", max: "2/3", increment: "1/3" },
    ),
  },
);

export interface BundleShape {
  readonly components: number;
  readonly meals: number;
  readonly linesEach: number;
  /** Only proportional lines and batches of any size. */
  readonly smooth: boolean;
}

interface Made {
  readonly own: readonly Line[];
  readonly takes: readonly Taking[];
}

const madeOf = (lines: number, takes: number, smooth: boolean): fc.Arbitrary<Made> => {
  const rule = smooth ? proportional : growing;
  return fc.record({
    own: fc.array(fc.oneof({ weight: 9, arbitrary: foodLine(rule) }, { weight: 1, arbitrary: tasted }), {
      maxLength: lines,
      minLength: 1,
    }),
    takes: fc.array(taking(rule), { maxLength: takes }),
  });
};

const linesOf = ({ own, takes }: Made, before: readonly string[], from: "meal" | "component"): readonly Line[] =>
  before.length === 0 ? own : [...own, ...takes.map((each) => takingLine(each, before, from))];

/** Plans in which everything is known that checks ask for, and a good deal is not that lists would like. */
export function arbitraryBundle({ components, meals, linesEach, smooth }: BundleShape): fc.Arbitrary<PlanBundle> {
  const componentParts = fc.record({
    made: madeOf(linesEach, 3, smooth),
    yields: fc.constantFrom("400 g", "1 lb", "350-420 ml", "2 us-cup", "12 piece"),
    batch: smooth ? fc.constant(anyBatches) : batchRule,
  });
  const mealParts = fc.record({
    made: madeOf(linesEach, 5, smooth),
    serves: fc.integer({ min: 1, max: 8 }),
    day: fc.nat(6),
  });
  return fc
    .record({
      components: fc.array(componentParts, { maxLength: components }),
      meals: fc.array(mealParts, { minLength: 1, maxLength: meals }),
      slug: fc.constantFrom("spring", "summer", "autumn", "winter"),
    })
    .map((parts) => {
      const slugs = parts.components.map((_, index) => `made-${index}`);
      const made = parts.components.map((each, index): Component =>
        build.component(slugs[index]!, each.yields, linesOf(each.made, slugs.slice(0, index), "component"), {
          batch: each.batch,
          densities: [build.density(1.05)],
          measures: [build.own("piece", { grams: 45, pieces: 1 })],
        }),
      );
      const eaten = parts.meals.map(({ made: lines, serves, day }, index): Meal =>
        build.meal(`meal-${index}`, linesOf(lines, slugs, "meal"), { serves, day }),
      );
      return bundleOf(build.plan(eaten, { slug: parts.slug, serves: 4 }), made, larder);
    });
}

export const arbitraryStock: fc.Arbitrary<readonly OnHand[]> = fc.array(
  fc
    .tuple(
      fc.constantFrom(...ways.filter(({ item }) => item.kind === "FOOD" && item.part === null)),
      fc.integer({ min: 0, max: 400 }),
    )
    .map(([{ item, unit }, amount]) =>
      build.onHand(item.kind === "FOOD" ? item.food : "", eighths(amount, amount, unit)),
    ),
  { maxLength: 4 },
);
