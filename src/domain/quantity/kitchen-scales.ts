import type { Dimension, MeasureSystem, UnitRef } from "../model/amount.js";
import { shares, sharesWithRest, steps, type Grid } from "./round.js";
import { decimal, scale, sizeOf, type RestUnit, type Scale } from "./scale.js";

const halves = [0, 1 / 2];
const quarters = [0, 1 / 4, 1 / 2, 3 / 4];
const cupShares = [0, 1 / 4, 1 / 3, 1 / 2, 2 / 3, 3 / 4];

/** A spoon set ends at the quarter: from one teaspoon on nobody measures eighths. */
const spoonGrids: readonly Grid[] = [shares([0], 0.02), shares(halves, 0.06), shares(quarters, 0)];

/** Below one teaspoon: the four spoons of a set, and what two of them make. */
const pinchGrids: readonly Grid[] = [shares(quarters, 0.1), shares([0, 1 / 8, 1 / 4, 1 / 2, 3 / 4], 0)];

const countTo = (last: number, by: number): readonly number[] =>
  Array.from({ length: Math.round(last / by) }, (_, index) => (index + 1) * by);

/** Spoons of a system, up to `cup` millilitres or to where jugs take over. */
const spoons = (tsp: UnitRef, tbsp: UnitRef, untilMl: number): readonly Scale[] => {
  const perTbsp = Math.round(sizeOf(tbsp) / sizeOf(tsp));
  const grids = [
    shares(halves, 0.03),
    sharesWithRest(halves, perTbsp, countTo(perTbsp - 1, 1), 0.05),
    sharesWithRest(halves, perTbsp, countTo(perTbsp - 0.5, 0.5), 0),
  ];
  return [
    scale(tsp, 1, pinchGrids),
    scale(tsp, perTbsp, spoonGrids),
    scale(tbsp, untilMl / sizeOf(tbsp), grids, [{ unit: tsp, counts: 1 }]),
  ];
};

/** Quarter, third, half cups, then with tablespoons, with teaspoons, and with half tablespoons. */
const cups = (cup: UnitRef, tbsp: UnitRef, tsp: UnitRef, until: number): Scale => {
  const perTbsp = Math.round(sizeOf(tbsp) / sizeOf(tsp));
  const perCup = sizeOf(cup) / sizeOf(tsp);
  const tablespoons = countTo(3 * perTbsp, perTbsp);
  const halfTablespoons = countTo(3.5 * perTbsp, perTbsp / 2);
  const teaspoons = countTo(perTbsp - 1, 1);
  return scale(
    cup,
    until,
    [
      shares([0, 1 / 2], 0.02),
      shares(cupShares, 0.04),
      sharesWithRest(cupShares, perCup, tablespoons, 0.05),
      sharesWithRest(cupShares, perCup, [...tablespoons, ...teaspoons], 0.05),
      sharesWithRest(cupShares, perCup, [...tablespoons, ...teaspoons, ...halfTablespoons], 0),
    ],
    [
      { unit: tbsp, counts: perTbsp },
      { unit: tsp, counts: 1 },
    ],
  );
};

/** Kilograms and litres: halves and tenths, a twentieth where those are off, a hundredth below half a unit more. */
const thousands: readonly Grid[] = [steps(0.5, 0.002), steps(0.1, 0.01), steps(0.05, 0.01), steps(0.01, 0)];

const litres = decimal("l", Infinity, 2, thousands);

/** A jug shows fives and tens. */
const millilitres: readonly Scale[] = [
  decimal("ml", 100, 0, [steps(5, 0.02), steps(1, 0)]),
  decimal("ml", 250, 0, [steps(50, 0.005), steps(10, 0.01), steps(5, 0)]),
  decimal("ml", 1000, 0, [steps(50, 0.005), steps(10, 0)]),
  litres,
];

/** Down to what letter scales show; a scale of the kitchen shows whole grams from ten on, and fives are enough from a hundred. */
const grams: readonly Scale[] = [
  decimal("mg", 100, 0, [steps(1, 0)]),
  decimal("g", 1, 2, [steps(0.05, 0.01), steps(0.01, 0)]),
  decimal("g", 10, 1, [steps(1, 0.05), steps(0.5, 0.05), steps(0.1, 0)]),
  decimal("g", 100, 0, [steps(5, 0.02), steps(1, 0)]),
];

const metricMass: readonly Scale[] = [
  ...grams,
  decimal("g", 1000, 0, [steps(50, 0.002), steps(10, 0.01), steps(5, 0)]),
  decimal("kg", Infinity, 2, thousands),
];

const ouncesInPound: readonly RestUnit[] = [{ unit: "oz", counts: 1 }];

const quarterOunces: readonly Grid[] = [shares([0], 0.005), shares(halves, 0.015), shares(quarters, 0)];

/** Quarter ounces, as the cards of the Armed Forces Recipe Service round; grams below half an ounce. */
const poundMass: readonly Scale[] = [
  ...grams.slice(0, 3),
  decimal("g", sizeOf("oz") / 2, 0, [steps(1, 0)]),
  scale("oz", 16, quarterOunces),
  scale("lb", 10, [shares(quarters, 0.0025), sharesWithRest([0], 16, countTo(15.75, 0.25), 0)], ouncesInPound, " "),
  scale("lb", Infinity, [shares(quarters, 0.0025), sharesWithRest([0], 16, countTo(15, 1), 0)], ouncesInPound, " "),
];

const wholeAndQuarters: readonly Grid[] = [shares([0], 0.01), shares(halves, 0.02), shares(quarters, 0)];

const usSpoons = spoons("us-tsp", "us-tbsp", sizeOf("us-cup") / 4);

const usVolume: readonly Scale[] = [
  ...usSpoons,
  cups("us-cup", "us-tbsp", "us-tsp", 16),
  scale("us-quart", 16, wholeAndQuarters),
  scale("us-gallon", Infinity, wholeAndQuarters),
];

const cupSpoons = (tbsp: UnitRef): readonly Scale[] => spoons("metric-tsp", tbsp, sizeOf("metric-cup") / 4);

const cupVolume = (tbsp: UnitRef): readonly Scale[] => [
  ...cupSpoons(tbsp),
  cups("metric-cup", tbsp, "metric-tsp", 4),
  litres,
];

const imperialVolume: readonly Scale[] = [
  ...spoons("metric-tsp", "metric-tbsp", 60),
  scale("imp-floz", 20, wholeAndQuarters),
  scale(
    "imp-pint",
    Infinity,
    [shares(quarters, 0.01), sharesWithRest(quarters, 20, countTo(4, 1), 0)],
    [{ unit: "imp-floz", counts: 1 }],
  ),
];

/** Spoons below one teaspoon, since no jug shows less. */
const metricVolume: readonly Scale[] = [
  scale("metric-tsp", 1, pinchGrids),
  decimal("ml", 15, 0, [steps(5, 0.02), steps(1, 0)]),
  ...millilitres,
];

/** For writers who measure by the spoon and by the litre. */
const spoonsAndLitres: readonly Scale[] = [...spoons("metric-tsp", "metric-tbsp", 60), ...millilitres];

const countedGrids: readonly Grid[] = [shares([0], 0.05), shares(halves, 0.05), shares(cupShares, 0)];

const counted: readonly Scale[] = [scale("piece", Infinity, countedGrids)];

/** Whose cups, spoons and scales: a reader's, or those that a writer's unit belongs to. */
export type Kitchen = MeasureSystem | "SPOONS_AND_LITRES";

const volumes: Readonly<Record<Kitchen, readonly Scale[]>> = {
  US_CUSTOMARY: usVolume,
  METRIC_CUP: cupVolume("metric-tbsp"),
  AUSTRALIAN: cupVolume("au-tbsp"),
  UK_IMPERIAL: imperialVolume,
  METRIC: metricVolume,
  SPOONS_AND_LITRES: spoonsAndLitres,
};

/** What is not poured has no litres and quarts: it stays in cups where its weight is not known. */
const unpouredVolumes: Readonly<Partial<Record<Kitchen, readonly Scale[]>>> = {
  US_CUSTOMARY: [...usSpoons, cups("us-cup", "us-tbsp", "us-tsp", Infinity)],
  METRIC_CUP: [...cupSpoons("metric-tbsp"), cups("metric-cup", "metric-tbsp", "metric-tsp", Infinity)],
  AUSTRALIAN: [...cupSpoons("au-tbsp"), cups("metric-cup", "au-tbsp", "metric-tsp", Infinity)],
};

/** From so many millilitres on, a kitchen weighs what is not poured, where its density is known. */
export const weighedFromMl: Readonly<Record<Kitchen, number>> = {
  US_CUSTOMARY: 16 * sizeOf("us-cup"),
  METRIC_CUP: 1000,
  AUSTRALIAN: 1000,
  UK_IMPERIAL: 60,
  METRIC: 15,
  SPOONS_AND_LITRES: 60,
};

/** The units a cook of these measures uses for a dimension, smallest first; the last has no end. */
export const kitchenScales = (kitchen: Kitchen, dimension: Dimension, poured = true): readonly Scale[] => {
  if (dimension === "COUNT") return counted;
  if (dimension === "VOLUME") return (poured ? undefined : unpouredVolumes[kitchen]) ?? volumes[kitchen];
  return kitchen === "US_CUSTOMARY" || kitchen === "UK_IMPERIAL" ? poundMass : metricMass;
};

/** One unit alone, in halves, thirds and quarters; as many as there are. */
export const countedIn = (unit: UnitRef): Scale => ({ ...scale(unit, Infinity, countedGrids), size: 1 });

/** One decimal unit alone: tenths, and halves where they are near. */
export const decimalsOf = (unit: UnitRef): Scale => ({
  ...decimal(unit, Infinity, 1, [steps(1, 0.02), steps(0.5, 0.03), steps(0.1, 0)]),
  size: 1,
});
