import type { UnitRef } from "../model/amount.js";
import { shares, steps, type Grid } from "./round.js";
import { decimal, scale, type Scale } from "./scale.js";

const cupShares = [0, 1 / 4, 1 / 3, 1 / 2, 2 / 3, 3 / 4];
const parts = (of: number): readonly number[] => Array.from({ length: of }, (_, index) => index / of);

const written: readonly Grid[] = [
  shares([0], 0.0005),
  shares(cupShares, 0.0005),
  shares(parts(8), 0.0005),
  shares(parts(16), 0),
];

/** A label says grams to the tenth, and kilograms to the gram. */
const labelGrids = (step: number): readonly Grid[] => [steps(step * 10, 0.0005), steps(step, 0)];

const labels: Readonly<Record<string, readonly Scale[]>> = {
  g: [decimal("g", 1000, 1, labelGrids(0.1)), decimal("kg", Infinity, 3, labelGrids(0.001))],
  ml: [decimal("ml", 1000, 1, labelGrids(0.1)), decimal("l", Infinity, 3, labelGrids(0.001))],
};

const decimalUnits: Readonly<Record<string, readonly [places: number, grids: readonly Grid[]]>> = {
  mg: [1, labelGrids(0.1)],
  dag: [2, labelGrids(0.01)],
  cl: [2, labelGrids(0.01)],
  dl: [2, labelGrids(0.01)],
  kg: [3, labelGrids(0.001)],
  l: [3, labelGrids(0.001)],
};

/** As somebody wrote or printed it: the unit stays, and nothing is rounded that a label can say. `size` counts the unit. */
export const writtenScales = (unit: UnitRef): readonly Scale[] => {
  const label = labels[unit];
  if (label !== undefined) return label;
  const known = decimalUnits[unit];
  return [
    known === undefined
      ? { ...scale(unit, Infinity, written), size: 1 }
      : { ...decimal(unit, Infinity, known[0], known[1]), size: 1 },
  ];
};
