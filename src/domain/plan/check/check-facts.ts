import { factLimits, limits } from "../../engine-limits.js";
import type { Food, Pack } from "../../model/food.js";
import type { Measured } from "../../model/amount.js";
import type { Path, Problem } from "../../problem.js";
import { missingText, toBase, type MeasureFacts } from "../../quantity/convert.js";
import { nearestUnits, standardUnit } from "../../quantity/unit.js";
import { toNumber } from "../../quantity/rational.js";
import { moneyParts } from "../../shopping/money.js";
import { checkCount, checkMeasured, checkNumber, checkText, checkUnique } from "./check-text.js";

const { entries, factor } = factLimits;

/** A written amount that must be something, in a unit that somebody knows. */
export function checkConvertible(measured: Measured, item: string, facts: MeasureFacts, path: Path): Problem[] {
  const written = checkMeasured(measured, path, factor.min);
  if (written.length > 0) return written;
  const base = toBase(measured, facts, null);
  if (base.ok) return [];
  if (base.missing.code === "UNIT") {
    return [{ code: "UNKNOWN_UNIT", path, unit: measured.unit, nearest: nearestUnits(measured.unit) }];
  }
  const missing = missingText(base.missing);
  return [{ code: "NOT_CONVERTIBLE", path, item, from: measured.unit, to: "g, ml or pieces", missing }];
}

/** Densities and measures of a food or a component: numbers that one can multiply and divide by. */
export function checkMeasureFacts({ densities, measures }: MeasureFacts, path: Path): Problem[] {
  return [
    ...checkCount(densities.length, entries, "densities", [...path, "densities"]),
    ...checkCount(measures.length, entries, "measures", [...path, "measures"]),
    ...densities.flatMap(({ gramsPerMl }, at) => checkNumber(gramsPerMl, [...path, "densities", at], factor)),
    ...checkUnique(
      measures.map(({ name }) => name),
      (name) => [...path, "measures", name],
    ),
    ...measures.flatMap(({ name, grams, millilitres, pieces }) =>
      [grams, millilitres, pieces].flatMap((fact) =>
        fact === null ? [] : checkNumber(fact, [...path, "measures", name], { min: factor.min, max: limits.amount }),
      ),
    ),
  ];
}

function checkPack(pack: Pack, food: Food, path: Path): Problem[] {
  const at = [...path, "packs", pack.id];
  return [
    ...checkConvertible(pack.content, food.slug, food, at),
    ...(pack.price === null || moneyParts(pack.price.amount) !== null
      ? []
      : [{ code: "BAD_AMOUNT" as const, path: at, written: pack.price.amount, why: "NOT_A_PRICE" }]),
    ...checkLoose(pack, at),
  ];
}

/** What is loose is weighed or poured: its price and its step are for an amount of a standard unit. */
export function checkLoose({ content, loose }: Pick<Pack, "content" | "loose">, path: Path): Problem[] {
  if (loose === undefined) return [];
  const { step } = loose;
  const given = [content, ...(step === null ? [] : [step])];
  const wrong = given.filter(({ low, high, unit }) => low !== high || !weighable.has(standardUnit(unit)?.dimension));
  const bad = wrong.map((each) => notWeighable(each, path));
  if (bad.length > 0 || step === null) return bad;
  const [all, smallest] = given.map(({ low, unit }) => toNumber(low) * standardUnit(unit)!.factor);
  const sameDimension = standardUnit(content.unit)!.dimension === standardUnit(step.unit)!.dimension;
  const useful = sameDimension && smallest! >= leastStep && smallest! <= Math.max(all!, largestStep);
  return useful ? [] : [notWeighable(step, path)];
}

const weighable: ReadonlySet<string | undefined> = new Set(["MASS", "VOLUME"]);

/** Grams or millilitres: no shop weighs out a tenth of a gram, nor sells ten kilograms at a time as loose. */
const leastStep = 0.1;
const largestStep = 10_000;

const notWeighable = ({ low, high, unit }: Measured, path: Path): Problem => ({
  ...{ code: "BAD_AMOUNT", path, why: "NOT_WEIGHABLE" },
  written: `${low === high ? low : `${low} to ${high}`} ${unit}`,
});

function checkParts(food: Food, path: Path): Problem[] {
  const names = food.parts.map(({ name }) => name);
  return [
    ...checkUnique(names, (name) => [...path, "parts", name]),
    ...food.parts.flatMap(({ name, perPiece, after }) => {
      const at = [...path, "parts", name];
      const unknown = after.filter((each) => !names.includes(each));
      return [
        ...checkConvertible(perPiece, food.slug, food, at),
        ...unknown.map((part): Problem => ({
          code: "UNKNOWN_PART",
          path: [...at, "after"],
          food: food.slug,
          part,
          known: names,
        })),
      ];
    }),
  ];
}

/**
 * The facts of a food that amounts are computed from: each must be a number in bounds, so that nothing computed from them
 * can be infinite, in units that somebody knows.
 */
export function checkFood(food: Food): Problem[] {
  const path = ["foods", food.slug];
  const sizes = [
    ...checkCount(food.names.length, entries, "names", [...path, "names"]),
    ...checkCount(food.parts.length, entries, "parts", [...path, "parts"]),
    ...checkCount(food.edible.length, entries, "edible portions", [...path, "edible"]),
    ...checkCount(food.yields.length, entries, "yields", [...path, "yields"]),
    ...checkCount(food.packs.length, entries, "packs", [...path, "packs"]),
  ];
  if (sizes.length > 0) return sizes;
  return [
    ...checkText(food.slug, "a slug", path),
    ...checkText(food.aisle, "an aisle", [...path, "aisle"]),
    ...food.names.flatMap(({ one, many, counted }, at) =>
      [one, many, ...(counted === undefined ? [] : [counted])].flatMap((form) =>
        checkText(form, "a name", [...path, "names", at]),
      ),
    ),
    ...checkMeasureFacts(food, path),
    ...checkParts(food, path),
    ...food.edible.flatMap(({ share }, at) =>
      checkNumber(share, [...path, "edible", at], { min: factLimits.leastShare, max: 1 }),
    ),
    ...food.yields.flatMap(({ gramsPerGram }, at) => checkNumber(gramsPerGram, [...path, "yields", at], factor)),
    ...checkUnique(
      food.packs.map(({ id }) => id),
      (id) => [...path, "packs", id],
    ),
    ...food.packs.flatMap((pack) => checkPack(pack, food, path)),
  ];
}
