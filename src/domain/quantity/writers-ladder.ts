import type { BaseAmount, MeasureSystem, UnitRef } from "../model/amount.js";
import { toDimensionOf, type MeasureFacts } from "./convert.js";
import { onLadder, type OnLadder } from "./kitchen-amount.js";
import { countedIn, decimalsOf, weighedFromMl, type Kitchen } from "./kitchen-scales.js";
import type { Scale } from "./scale.js";
import { ownMeasureName, standardUnit } from "./unit.js";

/** Whose ladder a unit belongs to; `keeps`: the unit stays as long as it shows the amount in whole ones, halves or quarters. */
interface Rule {
  readonly kitchen: (measures: MeasureSystem) => Kitchen;
  readonly keeps: boolean;
}

const always = (kitchen: Kitchen, keeps = false): Rule => ({ kitchen: () => kitchen, keeps });

/** Metric spoons stand beside whichever cups and jugs the writer has. */
const metricSpoons: Rule = {
  kitchen: (measures) =>
    measures === "METRIC" ? "SPOONS_AND_LITRES" : measures === "US_CUSTOMARY" ? "METRIC_CUP" : measures,
  keeps: false,
};

const metricCups: Rule = {
  kitchen: (measures) => (measures === "AUSTRALIAN" ? "AUSTRALIAN" : "METRIC_CUP"),
  keeps: false,
};

const rules: ReadonlyMap<UnitRef, Rule> = new Map<UnitRef, Rule>([
  ...["mg", "g", "kg", "ml", "l"].map((unit): [string, Rule] => [unit, always("METRIC")]),
  ...["oz", "lb", "stone"].map((unit): [string, Rule] => [unit, always("US_CUSTOMARY")]),
  ...["us-tsp", "us-tbsp", "us-cup", "us-fluid-dram"].map((unit): [string, Rule] => [unit, always("US_CUSTOMARY")]),
  ...["us-floz", "us-gill", "us-pint", "us-quart", "us-gallon"].map((unit): [string, Rule] => [
    unit,
    always("US_CUSTOMARY", true),
  ]),
  ...["imp-floz", "imp-gill", "imp-pint", "imp-quart", "imp-gallon"].map((unit): [string, Rule] => [
    unit,
    always("UK_IMPERIAL", true),
  ]),
  ["metric-tsp", metricSpoons],
  ["metric-tbsp", metricSpoons],
  ["au-tbsp", always("AUSTRALIAN")],
  ["metric-cup", metricCups],
  ["piece", always("METRIC")],
  ["dozen", always("METRIC", true)],
]);

/** Larger than these, and the next of their family takes over. */
const smallDecimals: Readonly<Record<UnitRef, number>> = { dag: 100, cl: 100, dl: 10 };

/** Nobody counts further with a ladle or a scoop. */
const LADLES_MAX = 12;

/** From so many pieces' worth on, cloves are heads. */
const PIECES_FROM = 2;

const isQuarter = (value: number): boolean => {
  const near = Math.round(value * 4) / 4;
  return near > 0 && Math.abs(value - near) <= 0.01 * value;
};

const alone = (scale: Scale, low: number, high: number): OnLadder => ({ scales: [scale], low, high });

const fromCups = (kitchen: Kitchen): number => Math.max(1000, weighedFromMl[kitchen]);

/** A measure only this food or component has. */
function ownOnLadder(low: number, high: number, unit: UnitRef, facts: MeasureFacts, measures: MeasureSystem): OnLadder {
  const counted = alone(countedIn(unit), low, high);
  const measure = facts.measures.find(({ name }) => name === ownMeasureName(unit));
  if (measure === undefined) return counted;
  const base = (count: number, to: BaseAmount["dimension"]): BaseAmount | null => toDimensionOf(count, unit, to, facts);
  const between = (to: BaseAmount["dimension"]): OnLadder | null => {
    const [from, upTo] = [base(low, to), base(high, to)];
    if (from === null || upTo === null) return null;
    return onLadder({ dimension: to, low: from.low, high: upTo.high }, facts, null, measures);
  };
  const { pieces } = measure;
  if (measure.name !== "piece" && pieces !== null && pieces < 1 && low * pieces >= PIECES_FROM)
    return between("COUNT") ?? counted;
  // Only a food says what it is shopped by; a component's measure deals it out.
  if (facts.shoppedBy !== undefined || high <= LADLES_MAX) return counted;
  return (measure.millilitres === null ? null : between("VOLUME")) ?? between("MASS") ?? counted;
}

/**
 * An amount that counts a writer's unit, on the ladder that this unit belongs to: 1,050 g is 1.05 kg, 9 tsp are 3 tbsp. A unit
 * that is on none (a tin, a batch, a pan) is counted.
 */
export function writersLadder(
  low: number,
  high: number,
  unit: UnitRef,
  facts: MeasureFacts,
  form: string | null,
  measures: MeasureSystem,
): OnLadder {
  const standard = standardUnit(unit);
  if (standard === null) return ownOnLadder(low, high, unit, facts, measures);
  const small = smallDecimals[unit];
  if (small !== undefined && high < small) return alone(decimalsOf(unit), low, high);
  const rule = rules.get(unit) ?? (small === undefined ? null : always("METRIC"));
  const dealt = /^(?:ladle|scoop)-/.test(unit) && high > LADLES_MAX;
  if (standard.dimension === "BATCH" || (rule === null && !dealt)) return alone(countedIn(unit), low, high);
  if (rule?.keeps === true && isQuarter(low) && isQuarter(high)) return alone(countedIn(unit), low, high);
  const kitchen = rule?.kitchen(measures) ?? measures;
  const { dimension, factor } = standard;
  return onLadder({ dimension, low: low * factor, high: high * factor }, facts, form, kitchen, fromCups(kitchen));
}
