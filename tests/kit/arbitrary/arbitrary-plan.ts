import fc from "fast-check";
import type { Measured } from "../../../src/domain/model/amount.js";
import type { Component } from "../../../src/domain/model/component.js";
import type { Food } from "../../../src/domain/model/food.js";
import type { Household, OnHand } from "../../../src/domain/model/household.js";
import type { Line, ScalingRule } from "../../../src/domain/model/line.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import { bundleOf } from "../../../src/domain/plan/compile/plan-bundle.js";
import {
  component,
  density,
  edible,
  food,
  household,
  line,
  made,
  meal,
  of,
  own,
  pack,
  part,
  plan,
  route,
} from "../builders.js";
import { diceFrom, type Dice } from "./dice.js";

/** What a made-up plan may hold. */
export interface Leanings {
  readonly rules: readonly ScalingRule[];
  /** Batches of any size only, all lines proportional: what the law of homogeneity speaks of. */
  readonly anySize: boolean;
}

export const everything: Leanings = {
  rules: ["PROPORTIONAL", "PROPORTIONAL", "PROPORTIONAL", "PER_BATCH", "POWER", "TO_TASTE"],
  anySize: false,
};
export const straightLines: Leanings = { rules: ["PROPORTIONAL", "PROPORTIONAL", "TO_TASTE"], anySize: true };

const standard = {
  MASS: ["g", "kg", "lb", "oz"],
  VOLUME: ["ml", "l", "us-cup", "us-tbsp", "us-tsp"],
  COUNT: ["piece", "dozen"],
} as const;
const dimensions = ["MASS", "VOLUME", "COUNT"] as const;
const amounts = ["1", "2", "3", "5", "12", "40", "250", "1/2", "1/3", "2/3", "3/4", "7/8", "5/2", "0"];

const amount = (dice: Dice, units: readonly string[]): Measured => {
  const low = dice.pick(amounts);
  const unit = dice.pick(units);
  if (dice.chance(0.8) || low.includes("/")) return { low, high: low, unit };
  return { low, high: String(Number(low) + 1 + dice.roll(3)), unit };
};

/** Parts of a food come from pieces; densities, measures and trimmings are there or missing. */
export function madeUpFood(slug: string, dice: Dice): Food {
  const shoppedBy = dice.pick(dimensions);
  const parts = dice.chance(0.25)
    ? [part("juice", dice.pick(["48 g", "3 us-tbsp", "40-50 ml"])), part("zest", dice.pick(["6 g", "1 us-tbsp"]))]
    : [];
  const packUnit = parts.length > 0 ? "piece" : { MASS: "g", VOLUME: "ml", COUNT: "piece" }[shoppedBy];
  const size = packUnit === "piece" ? 1 : 50;
  const packs = Array.from({ length: dice.roll(5) }, (_, at) =>
    pack(
      `${size * (1 + dice.roll(20))} ${packUnit}`,
      dice.chance(0.1) ? null : `${dice.roll(6)}.${10 + dice.roll(90)}`,
      { id: `p${at}`, name: `pack ${at}`, region: dice.chance(0.2) ? "XB" : null },
    ),
  );
  return food(slug, {
    aisle: dice.pick(["vegetables", "shelf", "fridge"]),
    shoppedBy,
    densities: [
      ...(dice.chance(0.6) ? [density(dice.pick([0.5, 0.91, 1.03, 1.4]))] : []),
      ...(dice.chance(0.4) ? [density(0.6, "chopped")] : []),
    ],
    measures: [
      ...(dice.chance(0.4) ? [own("piece", { grams: dice.pick([50, 60, 150]) })] : []),
      ...(dice.chance(0.3) ? [own("clove", { grams: 5, pieces: 0.125 })] : []),
      ...(dice.chance(0.3) ? [own("tin", { millilitres: 400 })] : []),
      ...(dice.chance(0.2) ? [own("bunch", { grams: dice.pick([80, 100]) })] : []),
    ],
    parts,
    edible: [
      ...(dice.chance(0.5) ? [edible(dice.pick([0.5, 0.75, 0.9]))] : []),
      ...(dice.chance(0.3) ? [edible(0.6, "chopped")] : []),
    ],
    packs,
    alwaysThere: dice.chance(0.05),
  });
}

const unitsOf = ({ measures }: Food): readonly string[] => [
  ...dimensions.flatMap((dimension) => standard[dimension]),
  ...measures.flatMap(({ name }) => (name === "piece" ? [] : [`own:${name}`])),
];

const rulesOf = (dice: Dice, leanings: Leanings): Pick<Line, "rule" | "exponent"> => {
  const rule = dice.pick(leanings.rules);
  return { rule, exponent: rule === "POWER" ? dice.pick([0.5, 0.75, 0.9, 1]) : null };
};

function foodLine(from: Food, foods: readonly Food[], dice: Dice, leanings: Leanings): Line {
  const chosen = rulesOf(dice, leanings);
  const taken = from.parts.length > 0 && dice.chance(0.7) ? dice.pick(from.parts).name : null;
  const measured = amount(dice, unitsOf(from));
  const swaps = measured.unit.startsWith("own:")
    ? []
    : dice
        .some(foods, 0.1)
        .map(({ slug }) => ({ food: slug, ratio: dice.pick(["1", "3/4", "2"]), diets: [], note: null }));
  return line(null, of(from.slug, taken), {
    amount: chosen.rule === "TO_TASTE" ? null : measured,
    written: `some ${from.slug}`,
    ...chosen,
    measured: dice.chance(0.3) ? "READY" : "AS_BOUGHT",
    form: dice.chance(0.25) ? "chopped" : null,
    extra: dice.chance(0.1),
    swaps,
  });
}

/** In batches, or in a unit of the yield's own dimension that keeps long chains from running away. */
function componentLine(from: Component, dice: Dice, leanings: Leanings): Line {
  const chosen = rulesOf(dice, leanings);
  const share = dice.pick(["1/8", "1/6", "1/4", "1/3", "1/2", "3/4"]);
  const { unit } = from.yield.amount;
  const measured = dice.chance(0.5) ? { low: share, high: share, unit: "batch" } : { low: share, high: "1", unit };
  return line(null, made(from.slug), { amount: chosen.rule === "TO_TASTE" ? null : measured, ...chosen });
}

function madeUpComponent(
  slug: string,
  earlier: readonly Component[],
  foods: readonly Food[],
  size: number,
  dice: Dice,
  leanings: Leanings,
): Component {
  const dimension = dice.pick(dimensions);
  const lines = (): Line[] => [
    ...Array.from({ length: 1 + dice.roll(Math.max(1, size)) }, () =>
      foodLine(dice.pick(foods), foods, dice, leanings),
    ),
    ...(earlier.length === 0
      ? []
      : Array.from({ length: dice.roll(3) }, () => componentLine(dice.pick(earlier), dice, leanings))),
  ];
  const whole = dice.chance(0.3) ? { min: "1", max: dice.pick([null, "4"]), increment: "1" } : null;
  const halves = dice.chance(0.4) ? { min: "1/2", max: dice.pick([null, "5/2"]), increment: "1/2" } : null;
  const odd = dice.chance(0.3) ? { min: "1/3", max: dice.pick([null, "3"]), increment: null } : null;
  return component(slug, `${dice.pick(["1", "2", "6", "3/2", "4-5"])} ${dice.pick(standard[dimension])}`, lines(), {
    batch: leanings.anySize
      ? { min: "0", max: null, increment: null }
      : (whole ?? halves ?? odd ?? { min: "0", max: null, increment: null }),
    routes: dice.chance(0.2) ? [route("bought", lines())] : [],
  });
}

export interface PlanSize {
  readonly seed: number;
  readonly foods: number;
  readonly components: number;
  readonly meals: number;
  /** Most food lines of one component or meal. */
  readonly lines: number;
}

/** A valid plan: what it draws on is all there, all reached, and can be converted. */
export function madeUpPlan(
  { seed, components: count, meals, lines, foods: kinds }: PlanSize,
  leanings: Leanings,
  pool?: readonly Food[],
): PlanBundle {
  const dice = diceFrom(seed);
  const foods = pool ?? Array.from({ length: kinds }, (_, at) => madeUpFood(`food-${at}`, dice));
  const components: Component[] = [];
  for (let at = 0; at < count; at++) {
    components.push(madeUpComponent(`component-${at}`, components, foods, lines, dice, leanings));
  }
  const served = Array.from({ length: meals }, (_, at) =>
    meal(
      `meal-${at}`,
      [
        ...Array.from({ length: 1 + dice.roll(lines + 1) }, () => foodLine(dice.pick(foods), foods, dice, leanings)),
        ...dice.some(components, 8 / Math.max(8, count)).map((each) => componentLine(each, dice, leanings)),
      ],
      { day: dice.roll(6), serves: 1 + dice.roll(6) },
    ),
  );
  return bundleOf(plan(served, { slug: `plan-${seed}`, serves: 4 }), components, foods);
}

const sizes = (most: { readonly components: number; readonly lines: number }): fc.Arbitrary<PlanSize> =>
  fc.record({
    seed: fc.integer({ min: 1, max: 0x7fffffff }),
    foods: fc.integer({ min: 1, max: 12 }),
    components: fc.nat({ max: most.components }),
    meals: fc.integer({ min: 1, max: 8 }),
    lines: fc.integer({ min: 1, max: most.lines }),
  });

/** Plans of up to 60 components and about 300 lines. Smaller numbers shrink to smaller plans. */
export const arbitraryPlan = (leanings: Leanings = everything): fc.Arbitrary<PlanBundle> =>
  fc
    .oneof(sizes({ components: 8, lines: 4 }), sizes({ components: 60, lines: 8 }))
    .map((size) => madeUpPlan(size, leanings));

/** Up to twelve plans that draw on the same foods. */
export const arbitraryPlans = (leanings: Leanings = everything): fc.Arbitrary<readonly PlanBundle[]> =>
  fc
    .tuple(
      fc.integer({ min: 1, max: 0x7fffffff }),
      fc.uniqueArray(sizes({ components: 6, lines: 3 }), { minLength: 2, maxLength: 12, selector: ({ seed }) => seed }),
    )
    .map(([seed, many]) => {
      const dice = diceFrom(seed);
      const pool = Array.from({ length: 8 }, (_, at) => madeUpFood(`food-${at}`, dice));
      return many.map((size) => madeUpPlan(size, leanings, pool));
    });

/** What somebody may have at home and wish for, given a plan. */
export function madeUpHousehold(bundle: PlanBundle, seed: number): Household {
  const dice = diceFrom(seed);
  const { foods, components } = bundle;
  const offered = [...bundle.plan.meals, ...components].flatMap(({ lines }) =>
    lines.flatMap(({ item, swaps }) =>
      item.kind === "FOOD" ? swaps.map((swap) => ({ from: item.food, to: swap.food })) : [],
    ),
  );
  const useBy = (): string | null => (dice.chance(0.4) ? `2026-04-0${1 + dice.roll(8)}` : null);
  return household({
    region: dice.pick([null, "XA"]),
    currency: dice.pick([null, "XTS"]),
    swaps: dice.some(offered, 0.3),
    routes: {
      mode: "AS_WRITTEN",
      byName: dice
        .some(
          components.filter(({ routes }) => routes.length > 0),
          0.5,
        )
        .map(({ slug }) => ({ component: slug, route: "bought" })),
    },
    onHand: [
      ...dice.some(foods, 0.4).map(({ slug }): OnHand => ({
        item: { kind: "FOOD", food: slug },
        amount: dice.pick(amounts),
        unit: dice.pick(["g", "kg", "ml", "piece", "us-cup"]),
        useBy: useBy(),
        asOtherForm: false,
      })),
      ...dice.some(components, 0.2).map(
        ({
          slug,
          yield: {
            amount: { unit },
          },
        }): OnHand => ({
          item: { kind: "COMPONENT", component: slug },
          amount: dice.pick(amounts),
          unit: dice.pick(["batch", unit]),
          useBy: null,
          asOtherForm: false,
        }),
      ),
    ],
    session: dice.chance(0.5) ? { start: "2026-04-03T08:00:00Z", zone: "Europe/Berlin" } : null,
  });
}

export const arbitraryHousehold = (bundle: PlanBundle): fc.Arbitrary<Household> =>
  fc.integer({ min: 1, max: 0x7fffffff }).map((seed) => madeUpHousehold(bundle, seed));

/** A plan, a household that suits it, and how many eat. */
export const arbitraryCase = (
  leanings: Leanings = everything,
): fc.Arbitrary<{ readonly bundle: PlanBundle; readonly at: Household; readonly servings: number }> =>
  arbitraryPlan(leanings).chain((bundle) =>
    fc.record({
      bundle: fc.constant(bundle),
      at: arbitraryHousehold(bundle),
      servings: fc.integer({ min: 1, max: 60 }),
    }),
  );

/** The same in every run, so that a red test is red again. */
export const everyRun = { seed: 20260401, endOnFailure: true } as const;
