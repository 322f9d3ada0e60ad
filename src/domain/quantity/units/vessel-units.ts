import type { UnitRow } from "./unit-row.js";

/** Trade cans, as a can-size list quotes them from an equipment chart: nominal millilitres, not exact. */
const cans: readonly UnitRow[] = [
  ["can-no10", "VOLUME", "3076"],
  ["can-no300", "VOLUME", "414"],
  ["can-no303", "VOLUME", "473"],
  ["can-no2", "VOLUME", "591"],
  ["can-no2half", "VOLUME", "828"],
  ["can-no5", "VOLUME", "1735"],
];

/** A disher's number is its level scoops to the US quart (Basics at a Glance, Institute of Child Nutrition). */
const scoops: readonly UnitRow[] = [6, 8, 10, 12, 16, 20, 24, 30, 40, 50, 60, 70, 100].map((number) => [
  `scoop-${number}`,
  "VOLUME",
  `946352946/${number}000000`,
]);

/** A ladle's "oz" means US fluid ounces (same poster). 295735295625e-10 ml each. */
const ladles: readonly UnitRow[] = [1, 2, 3, 4, 6, 8, 12].map((ounces) => [
  `ladle-${ounces}`,
  "VOLUME",
  `${295735295625 * ounces}/10000000000`,
]);

/** Litres by depth in mm, as a supplier lists them after EN 631, which fixes the outer size only: capacity varies by maker. */
const GASTRONORM: readonly (readonly [size: string, depths: readonly (readonly [number, number])[]])[] = [
  ["1-1", [[20, 1.9], [40, 4.5], [65, 7.4], [100, 12.6], [150, 18], [200, 25]]], // prettier-ignore
  [
    "2-3",
    [
      [40, 3],
      [65, 5.25],
      [100, 8],
      [150, 11.5],
    ],
  ],
  ["1-2", [[40, 1.75], [65, 3.5], [100, 5.5], [150, 8.5], [200, 11]]], // prettier-ignore
  ["1-3", [[40, 1.5], [65, 2.25], [100, 3.5], [150, 5.5], [200, 7.25]]], // prettier-ignore
  [
    "1-4",
    [
      [65, 1.5],
      [100, 2.5],
      [150, 3.75],
      [200, 5.25],
    ],
  ],
  [
    "1-6",
    [
      [65, 1],
      [100, 1.5],
      [150, 2.25],
    ],
  ],
];

const gastronorm: readonly UnitRow[] = GASTRONORM.flatMap(([size, depths]) =>
  depths.map(([depth, litres]): UnitRow => [`gn-${size}-${depth}`, "VOLUME", String(litres * 1000)]),
);

/** Vessels that are themselves a unit of amount. Nominal capacities; see docs/amounts.md. */
export const vesselUnits: readonly UnitRow[] = [...cans, ...scoops, ...ladles, ...gastronorm];
