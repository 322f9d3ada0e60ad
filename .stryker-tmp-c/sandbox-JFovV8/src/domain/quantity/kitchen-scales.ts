// @ts-nocheck
import type { Dimension, MeasureSystem, UnitRef } from "../model/amount.js";
import { shares, sharesWithRest, steps, type Grid } from "./round.js";
import { standardUnit } from "./unit.js";

/** A smaller unit shown beside the main one: so many of the rest's counts make one of it. */
export interface RestUnit {
  readonly unit: UnitRef;
  readonly counts: number;
}

/** One unit a cook measures with, and how fine. */
export interface Scale {
  readonly unit: UnitRef;
  /** Base units of one. */
  readonly size: number;
  /** From this many on, the next scale is used. */
  readonly until: number;
  readonly grids: readonly Grid[];
  /** Vulgar fractions, or decimals with at most so many places. */
  readonly style: "FRACTION" | { readonly places: number };
  /** Largest first. */
  readonly rest: readonly RestUnit[];
  readonly joiner: string;
}

const sizeOf = (id: UnitRef): number => standardUnit(id)?.factor ?? 1;

const scale = (
  unit: UnitRef,
  until: number,
  grids: readonly Grid[],
  rest: readonly RestUnit[] = [],
  joiner = " + ",
): Scale => ({ unit, size: sizeOf(unit), until, grids, style: "FRACTION", rest, joiner });

const decimal = (unit: UnitRef, until: number, places: number, grids: readonly Grid[]): Scale => ({
  ...scale(unit, until, grids),
  style: { places },
});

const halves = [0, 1 / 2];
const quarters = [0, 1 / 4, 1 / 2, 3 / 4];
const cupShares = [0, 1 / 4, 1 / 3, 1 / 2, 2 / 3, 3 / 4];
const parts = (of: number): readonly number[] => Array.from({ length: of }, (_, index) => index / of);

/** Whole, half, quarter; an eighth or a sixteenth only where those would be more than 5 % off. */
const spoonGrids: readonly Grid[] = [
  shares([0], 0.005),
  shares(halves, 0.015),
  shares(quarters, 0.025),
  shares(parts(8), 0.05),
  shares(parts(16), 0),
];

/** No cook measures a sixteenth of a teaspoon: below one, the nearest eighth. */
const pinchGrids: readonly Grid[] = [shares(quarters, 0.05), shares(parts(8), 0)];

const countTo = (last: number, by: number): readonly number[] =>
  Array.from({ length: Math.round(last / by) }, (_, index) => (index + 1) * by);

/** Spoons of a system, up to `cup` millilitres or to where jugs take over. */
const spoons = (tsp: UnitRef, tbsp: UnitRef, untilMl: number): readonly Scale[] => {
  const perTbsp = Math.round(sizeOf(tbsp) / sizeOf(tsp));
  const grids = [
    shares(halves, 0.01),
    sharesWithRest(halves, perTbsp, countTo(perTbsp - 1, 1), 0.03),
    sharesWithRest(halves, perTbsp, countTo(perTbsp - 0.5, 0.5), 0.04),
    sharesWithRest(halves, perTbsp, countTo(perTbsp - 0.25, 0.25), 0),
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
      shares([0, 1 / 2], 0.01),
      shares(cupShares, 0.02),
      sharesWithRest(cupShares, perCup, tablespoons, 0.03),
      sharesWithRest(cupShares, perCup, [...tablespoons, ...teaspoons], 0.04),
      sharesWithRest(cupShares, perCup, [...tablespoons, ...teaspoons, ...halfTablespoons], 0),
    ],
    [
      { unit: tbsp, counts: perTbsp },
      { unit: tsp, counts: 1 },
    ],
  );
};

const litres = decimal("l", Infinity, 2, [steps(0.5, 0.002), steps(0.1, 0.005), steps(0.01, 0)]);

const millilitres: readonly Scale[] = [
  decimal("ml", 100, 0, [steps(5, 0.01), steps(1, 0)]),
  decimal("ml", 250, 0, [steps(50, 0.005), steps(5, 0)]),
  decimal("ml", 1000, 0, [steps(50, 0.005), steps(10, 0)]),
  litres,
];

const grams = (until: number): readonly Scale[] => [
  decimal("mg", 100, 0, [steps(1, 0)]),
  decimal("g", 1, 2, [steps(0.05, 0.01), steps(0.01, 0)]),
  decimal("g", 10, 1, [steps(0.5, 0.02), steps(0.1, 0)]),
  decimal("g", Math.min(until, 100), 0, [steps(1, 0)]),
];

const metricMass: readonly Scale[] = [
  ...grams(100),
  decimal("g", 1000, 0, [steps(50, 0.002), steps(5, 0)]),
  decimal("kg", Infinity, 2, [steps(0.5, 0.001), steps(0.1, 0.002), steps(0.01, 0)]),
];

const ouncesInPound: readonly RestUnit[] = [{ unit: "oz", counts: 1 }];

const poundMass: readonly Scale[] = [
  ...grams(sizeOf("oz")),
  scale("oz", 16, spoonGrids),
  scale("lb", 10, [shares(quarters, 0.0025), sharesWithRest([0], 16, countTo(15.75, 0.25), 0)], ouncesInPound, " "),
  scale("lb", Infinity, [shares(quarters, 0.0025), sharesWithRest([0], 16, countTo(15, 1), 0)], ouncesInPound, " "),
];

const wholeAndQuarters: readonly Grid[] = [shares([0], 0.01), shares(halves, 0.02), shares(quarters, 0)];

const usVolume: readonly Scale[] = [
  ...spoons("us-tsp", "us-tbsp", sizeOf("us-cup") / 4),
  cups("us-cup", "us-tbsp", "us-tsp", 16),
  scale("us-quart", 16, wholeAndQuarters),
  scale("us-gallon", Infinity, wholeAndQuarters),
];

const cupVolume = (tbsp: UnitRef): readonly Scale[] => [
  ...spoons("metric-tsp", tbsp, sizeOf("metric-cup") / 4),
  cups("metric-cup", tbsp, "metric-tsp", 4),
  litres,
];

const imperialVolume: readonly Scale[] = [
  ...spoons("metric-tsp", "metric-tbsp", 60),
  scale("imp-floz", 20, [shares([0], 0.01), shares(halves, 0.02), shares(quarters, 0.05), shares(parts(8), 0)]),
  scale(
    "imp-pint",
    Infinity,
    [shares(quarters, 0.01), sharesWithRest(quarters, 20, countTo(4, 1), 0)],
    [{ unit: "imp-floz", counts: 1 }],
  ),
];

/** Metric spoons below one tablespoon, since no jug shows less. */
const metricVolume: readonly Scale[] = [
  scale("metric-tsp", 1, pinchGrids),
  scale("metric-tsp", 3, spoonGrids),
  ...millilitres,
];

const counted: readonly Scale[] = [
  scale("piece", Infinity, [shares([0], 0.02), shares(cupShares, 0.05), shares(parts(8), 0)]),
];

const volumes: Readonly<Record<MeasureSystem, readonly Scale[]>> = {
  US_CUSTOMARY: usVolume,
  METRIC_CUP: cupVolume("metric-tbsp"),
  AUSTRALIAN: cupVolume("au-tbsp"),
  UK_IMPERIAL: imperialVolume,
  METRIC: metricVolume,
};

/** The units a cook of these measures uses for a dimension, smallest first; the last has no end. */
export const kitchenScales = (measures: MeasureSystem, dimension: Dimension): readonly Scale[] => {
  if (dimension === "COUNT") return counted;
  if (dimension === "VOLUME") return volumes[measures];
  return measures === "US_CUSTOMARY" || measures === "UK_IMPERIAL" ? poundMass : metricMass;
};

const fine: readonly Grid[] = [
  shares([0], 0.01),
  shares(cupShares, 0.02),
  shares(parts(8), 0.05),
  shares(parts(16), 0),
];

const whole: readonly Grid[] = [steps(1, 0.01), steps(0.5, 0.01), steps(0.1, 0)];
const hundredths: readonly Grid[] = [steps(0.1, 0.001), steps(0.01, 0)];

/** Decimal units stay decimals; anything else is shown in the fractions of cups and spoons. */
const decimals: Readonly<Record<string, readonly [places: number, grids: readonly Grid[]]>> = {
  mg: [1, whole],
  g: [1, whole],
  ml: [1, whole],
  dag: [2, hundredths],
  cl: [2, hundredths],
  dl: [2, hundredths],
  kg: [3, [steps(0.01, 0.001), steps(0.001, 0)]],
  l: [3, [steps(0.01, 0.001), steps(0.001, 0)]],
};

/** One unit at any size, for amounts kept in the writer's own and counted in it. */
export const scaleOfUnit = (unit: UnitRef): Scale => {
  const known = decimals[unit];
  return known === undefined
    ? { ...scale(unit, Infinity, fine), size: 1 }
    : { ...decimal(unit, Infinity, known[0], known[1]), size: 1 };
};
