import { Fraction } from "fraction.js";
import type { Dimension, Measured } from "../model/amount.js";
import type { Food, Loose, Pack } from "../model/food.js";
import { nearestFraction } from "../quantity/rational.js";
import { toDimension, type Conversion } from "../quantity/convert.js";
import { standardUnit } from "../quantity/unit.js";
import { roundedTo } from "./money.js";

/** How much of something loose a shop weighs out, and what a step of it costs. */
export interface LooseOption {
  /** Base units of the smallest step. */
  readonly step: number;
  /** The step as a share of what the price is for. */
  readonly share: Fraction;
  readonly scale: ShopScale;
  /** Parts of the smallest coin, to which a till rounds what was weighed. */
  readonly coin: number;
}

/** `coarse` of the smallest steps at a time beyond `fineUpTo` of them. */
interface ShopScale {
  readonly unit: string;
  readonly smallest: string;
  readonly fineUpTo: number;
  readonly coarse: number;
  /** The unit that larger amounts are said in, and how many of the smallest step make one. */
  readonly larger: { readonly unit: string; readonly steps: number } | null;
}

const metric = (unit: string): ShopScale => ({ unit, smallest: "10", fineUpTo: 50, coarse: 5, larger: null });
const imperial = (unit: string, larger: string, steps: number): ShopScale => ({
  ...{ unit, smallest: "1", fineUpTo: steps, coarse: 4 },
  larger: { unit: larger, steps },
});

/**
 * What one asks for over the counter: 10 g up to 500 g, then 50 g; an ounce up to a pound, then a quarter of it; of what is
 * poured likewise (common practice, no source).
 */
const scales = {
  metricMass: metric("g"),
  metricVolume: metric("ml"),
  ounces: imperial("oz", "lb", 16),
  usOunces: imperial("us-floz", "us-pint", 16),
  imperialOunces: imperial("imp-floz", "imp-pint", 20),
} as const;

const scaleOf = (unit: string): ShopScale => {
  if (unit === "lb" || unit === "oz" || unit === "stone") return scales.ounces;
  if (standardUnit(unit)?.dimension !== "VOLUME") return scales.metricMass;
  if (unit.startsWith("us-")) return scales.usOunces;
  return unit.startsWith("imp-") ? scales.imperialOunces : scales.metricVolume;
};

/** Steps of one size at most: beyond them a step written finer than any shop weighs would count for nothing but work. */
const mostSteps = 1_000;

/** A step that somebody wrote. */
const writtenScale = ({ low, unit }: Measured): ShopScale => ({
  ...{ unit, smallest: low, fineUpTo: mostSteps, coarse: 10, larger: null },
});

/** Whole pieces stay whole, also where they are priced by weight. */
const pieces: ShopScale = { unit: "piece", smallest: "1", fineUpTo: mostSteps, coarse: 1, larger: null };

const stepOf = ({ smallest, unit }: ShopScale): Measured => ({ low: smallest, high: smallest, unit });

const scaleFor = (pack: Pack, { step }: Loose, dimension: Dimension): ShopScale => {
  if (dimension === "COUNT") return pieces;
  return step === null ? scaleOf(pack.content.unit) : writtenScale(step);
};

const inBase = ({ low, unit }: Measured): Fraction | null => {
  const known = standardUnit(unit);
  return known === null ? null : new Fraction(low).mul(new Fraction(known.exact));
};

/** Exact where both are standard units of one dimension; else what the food's own facts say, which are measured. */
const shareOf = (step: Measured, content: Measured, doubles: number): Fraction => {
  const sameDimension = standardUnit(step.unit)?.dimension === standardUnit(content.unit)?.dimension;
  const [one, all] = [inBase(step), inBase(content)];
  if (sameDimension && one !== null && all !== null) return one.div(all);
  const near = nearestFraction(doubles, 1_000_000, 1e-12);
  return near === null ? new Fraction(doubles) : new Fraction(near.n, near.d);
};

/** What can be weighed out of a food that is sold loose, in the dimension needed; else the fact that is missing. */
export function looseOption(
  pack: Pack & { readonly loose: Loose },
  content: number,
  dimension: Dimension,
  food: Food,
  coin: number,
): LooseOption | Extract<Conversion, { ok: false }> {
  const scale = scaleFor(pack, pack.loose, dimension);
  const written = stepOf(scale);
  const step = toDimension(written, dimension, food, null);
  if (!step.ok) return step;
  const { low } = step.amount;
  return { step: low, share: shareOf(written, pack.content, low / content), scale, coin };
}

/** Of the smallest steps, how many a shop weighs out at a time for a need of this size. */
export function stepsAtATime({ step, scale }: LooseOption, need: number): number {
  const { fineUpTo, coarse } = scale;
  const steps = need / step;
  // Doubles that make up a whole number of steps may be off in the last digits.
  if (coarse === 1 || steps <= fineUpTo * (1 + 1e-9)) return 1;
  let times = coarse;
  while (steps > times * mostSteps * (1 + 1e-9)) times *= 10;
  return times;
}

/** What so many of the smallest steps cost, exactly, in parts that need not be whole. */
export const exactPrice = ({ share }: LooseOption, price: number, steps: number): Fraction =>
  share.mul(new Fraction(price)).mul(new Fraction(steps));

/** The same to the nearest coin, half upwards: what the till asks for. */
export const tillPrice = (option: LooseOption, price: number, steps: number): number =>
  roundedTo(option.coin, exactPrice(option, price, steps).valueOf());

/** So many of the smallest steps, as a shop says them: 850 g, 12 oz, 5/4 lb. */
export function weighedOut({ scale }: LooseOption, steps: number): Measured {
  const { unit, smallest, larger } = scale;
  const said =
    larger !== null && steps >= larger.steps
      ? { amount: new Fraction(steps, larger.steps), unit: larger.unit }
      : { amount: new Fraction(smallest).mul(new Fraction(steps)), unit };
  const amount = said.amount.toFraction();
  return { low: amount, high: amount, unit: said.unit };
}
