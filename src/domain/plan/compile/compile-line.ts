import type { PurchasedNeed } from "../purchased-need.js";
import type { LineContext } from "./line-context.js";
import { needDimension, purchaseNeed } from "../../component/purchase-need.js";
import type { BaseAmount, Measured } from "../../model/amount.js";
import type { Component } from "../../model/component.js";
import type { Food, FoodPart } from "../../model/food.js";
import type { Line, LineItem, Swap } from "../../model/line.js";
import { failed, ok, type Path, type Problem, type Result, type Warning } from "../../problem.js";
import { inDimension, missingText, toBase, toDimension, type MissingFact } from "../../quantity/convert.js";
import { multiplyRationals, toNumber } from "../../quantity/rational.js";
import { nearestUnits, standardUnit } from "../../quantity/unit.js";
import type { CompiledLine } from "./compiled-plan.js";
import { applySwap } from "../apply-swap.js";

interface CompiledWithWarnings {
  readonly line: CompiledLine;
  readonly warnings: readonly Warning[];
}

const unresolved = (missing: MissingFact, measured: Measured, item: string, to: string, path: Path): Problem => {
  if (missing.code === "UNIT") {
    return { code: "UNKNOWN_UNIT", path, unit: missing.unit, nearest: nearestUnits(missing.unit) };
  }
  return { code: "NOT_CONVERTIBLE", path, item, from: measured.unit, to, missing: missingText(missing) };
};

const numbers = (measured: Measured): NonNullable<CompiledLine["written"]> => ({
  low: toNumber(measured.low),
  high: toNumber(measured.high),
  unit: measured.unit,
});

const toTaste = (
  line: Line,
  item: LineItem,
  path: Path,
  component: number,
  need: PurchasedNeed | null,
): CompiledLine => ({
  line,
  item,
  path,
  component,
  dimension: null,
  low: 0,
  high: 0,
  written: null,
  need,
});

/** A line on a component, in the dimension of the component's yield. */
function onComponent(line: Line, slug: string, path: Path, context: LineContext): Result<CompiledWithWarnings> {
  const found = context.components.get(slug);
  if (found === undefined) return failed([{ code: "UNKNOWN_COMPONENT", path, component: slug }]);
  const { component, index } = found;
  if (line.amount === null) return ok({ line: toTaste(line, line.item, path, index, null), warnings: [] });
  const yields = toBase(component.yield.amount, component, null);
  // The yield itself is checked where it stands; a second report here would send the writer to the wrong line.
  if (!yields.ok) return ok({ line: toTaste(line, line.item, path, index, null), warnings: [] });
  const { dimension, low: lowYield } = yields.amount;
  const written = numbers(line.amount);
  const amount =
    line.amount.unit === "batch"
      ? ok({ dimension, low: written.low * lowYield, high: written.high * lowYield })
      : demanded(line.amount, dimension, component, line, path);
  if (!amount.ok) return amount;
  const { low, high } = amount.value;
  return ok({
    line: { line, item: line.item, path, component: index, dimension, low, high, written, need: null },
    warnings: [],
  });
}

function demanded(
  measured: Measured,
  dimension: BaseAmount["dimension"],
  component: Component,
  line: Line,
  path: Path,
): Result<BaseAmount> {
  const converted = toDimension(measured, dimension, component, line.form);
  if (converted.ok) return ok(converted.amount);
  return failed([unresolved(converted.missing, measured, component.slug, component.yield.amount.unit, path)]);
}

/** Count times the weight of one, exactly; null where nobody says what one weighs. */
function inAll({ amount, each, written }: Line, path: Path): Result<Measured | null> {
  if (amount === null || each === undefined) return ok(null);
  const low = multiplyRationals(amount.low, each.low);
  const high = multiplyRationals(amount.high, each.high);
  if (low !== null && high !== null) return ok({ low, high, unit: each.unit });
  return failed([{ code: "BAD_AMOUNT", path, written, why: "RATIO_TOO_FINE" }]);
}

/** The amount of another food that stands in for a line's: in the same standard unit, else by mass. */
function swapped(
  line: Line,
  swap: Swap,
  from: Food,
  path: Path,
): Result<{ measured: Measured | null; grams: BaseAmount | null }> {
  const weighed = inAll(line, path);
  if (!weighed.ok) return weighed;
  const amount = weighed.value ?? line.amount;
  if (amount === null) return ok({ measured: null, grams: null });
  // One of another food weighs something else: what stands in for so many by their weight stands in by weight.
  if (standardUnit(amount.unit) !== null) {
    const low = multiplyRationals(amount.low, swap.ratio);
    const high = multiplyRationals(amount.high, swap.ratio);
    if (low !== null && high !== null) return ok({ measured: { low, high, unit: amount.unit }, grams: null });
    return failed([{ code: "BAD_AMOUNT", path, written: swap.ratio, why: "RATIO_TOO_FINE" }]);
  }
  // A part has a density of its own: of a squeeze of juice, not of the whole fruit.
  const form = line.item.kind === "FOOD" ? (line.item.part ?? line.form) : line.form;
  const base = toBase(amount, from, form);
  const mass = base.ok ? inDimension(base.amount, "MASS", from, form) : base;
  if (!mass.ok) return failed([unresolved(mass.missing, amount, swap.food, "g", path)]);
  const ratio = toNumber(swap.ratio);
  return ok({
    measured: null,
    grams: { dimension: "MASS", low: mass.amount.low * ratio, high: mass.amount.high * ratio },
  });
}

function needWarnings(
  need: ReturnType<typeof purchaseNeed>,
  line: Line,
  part: FoodPart | null,
  food: Food,
  path: Path,
): Warning[] {
  const warnings: Warning[] = [];
  if (need.notCombined !== null) {
    const missing = need.notCombined;
    warnings.push(
      part === null
        ? { code: "NOT_COMBINED", path, food: food.slug, missing }
        : { code: "PART_NOT_COUNTED", path, food: food.slug, part: part.name, missing },
    );
  }
  if (need.edibleUnknown) warnings.push({ code: "EDIBLE_PORTION_UNKNOWN", path, food: food.slug, form: line.form });
  return warnings;
}

function onFood(written: Line, swap: Swap | null, path: Path, context: LineContext): Result<CompiledWithWarnings> {
  const line = swap === null ? written : applySwap(written, swap);
  if (line.item.kind !== "FOOD") throw new TypeError("a component line is compiled by onComponent");
  const original = context.foods.get(line.item.food);
  if (original === undefined) return failed([{ code: "UNKNOWN_FOOD", path, food: line.item.food }]);
  const slug = swap?.food ?? line.item.food;
  const food = context.foods.get(slug);
  if (food === undefined) return failed([{ code: "UNKNOWN_FOOD", path, food: slug }]);
  const partName = swap === null ? line.item.part : null;
  const part = food.parts.find(({ name }) => name === partName) ?? null;
  if (partName !== null && part === null) {
    return failed([
      { code: "UNKNOWN_PART", path, food: food.slug, part: partName, known: food.parts.map(({ name }) => name) },
    ]);
  }
  const item: LineItem = { kind: "FOOD", food: food.slug, part: partName };
  const stands = swap === null ? ok({ measured: line.amount, grams: null }) : swapped(written, swap, original, path);
  if (!stands.ok) return stands;
  const { measured, grams } = stands.value;
  const noAmount = { food, part: partName, dimension: null, low: 0, high: 0 };
  if (measured === null && grams === null) return ok({ line: toTaste(line, item, path, -1, noAmount), warnings: [] });
  const weighed = inAll(line, path);
  if (!weighed.ok) return weighed;
  const inBase = weighed.value ?? measured;
  const base = inBase === null ? null : toBase(inBase, food, part === null ? line.form : part.name);
  if (base !== null && !base.ok && measured !== null) {
    return failed([unresolved(base.missing, measured, food.slug, food.shoppedBy, path)]);
  }
  const amount = base?.ok === true ? base.amount : grams;
  if (amount === null) throw new TypeError("a swapped line has grams where it has no unit");
  // What is bought by the piece stays so many; all else is what they weigh.
  const pieces = weighed.value === null || measured === null ? null : toDimension(measured, "COUNT", food, null);
  const counted = pieces?.ok === true && needDimension(food) === "COUNT" ? pieces.amount : null;
  const need = purchaseNeed(counted ?? amount, counted === null ? inBase : measured, line, part, food);
  const bought: PurchasedNeed =
    need.amount === null
      ? noAmount
      : { food, part: partName, dimension: need.amount.dimension, low: need.amount.low, high: need.amount.high };
  const { dimension, low, high } = amount;
  return ok({
    line: {
      line,
      item,
      path,
      component: -1,
      dimension,
      low,
      high,
      written: measured === null ? null : numbers(measured),
      need: bought,
    },
    warnings: needWarnings(need, line, part, food, path),
  });
}

/**
 * Resolves every name, unit and fact of one line, with the swap it is to take. The amounts must be rationals already
 * (check-bundle.ts). Problems: UNKNOWN_FOOD, UNKNOWN_COMPONENT, UNKNOWN_PART, UNKNOWN_UNIT, NOT_CONVERTIBLE, BAD_AMOUNT.
 */
export function compileLine(
  line: Line,
  swap: Swap | null,
  path: Path,
  context: LineContext,
): Result<CompiledWithWarnings> {
  return line.item.kind === "COMPONENT"
    ? onComponent(line, line.item.component, path, context)
    : onFood(line, swap, path, context);
}
