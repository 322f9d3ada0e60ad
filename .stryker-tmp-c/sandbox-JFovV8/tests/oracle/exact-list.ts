// @ts-nocheck
import type { Fraction } from "fraction.js";
import type { Dimension } from "../../src/domain/model/amount.js";
import type { Food } from "../../src/domain/model/food.js";
import type { Line } from "../../src/domain/model/line.js";
import type { PlanBundle } from "../../src/domain/model/plan.js";
import { asWritten, converted, exactly, zero, type Exact } from "./exact-amounts.js";
import { daysKept, exactPieces } from "./exact-pieces.js";
import type { ExactPlan, ExactUse } from "./exact-plan.js";

export interface ExactLine {
  readonly food: string;
  /** null: nobody gave an amount that counts. */
  readonly dimension: Dimension | null;
  readonly low: Fraction;
  readonly high: Fraction;
  readonly onHand: Fraction;
  readonly toBuy: Fraction;
  readonly uses: number;
}

/** Pieces where parts share them, else as the shop sells it. */
const listedIn = (food: Food): Dimension => (food.parts.length > 0 ? "COUNT" : food.shoppedBy);

const shareLeft = (food: Food, form: string | null): Fraction | null => {
  const rows = food.edible.filter((row) => row.form === form);
  const found = rows.find(({ source }) => source.kind === "WRITER") ?? rows[0];
  if (found !== undefined) return exactly(found.share);
  return form === null ? null : shareLeft(food, null);
};

const scaledBy = (amount: Exact, low: Fraction, high: Fraction): Exact => ({
  ...amount,
  low: amount.low.mul(low),
  high: amount.high.mul(high),
});

function piecesOfPart(line: Line, food: Food, growth: Fraction): Exact | null {
  const part = food.parts.find(({ name }) => line.item.kind === "FOOD" && name === line.item.part)!;
  const wanted = asWritten(line.amount!, food, null);
  const gives = asWritten(part.perPiece, food, null);
  if (wanted === null || gives === null) return null;
  if (wanted.dimension === "COUNT" && gives.dimension !== "COUNT") return scaledBy(wanted, growth, growth);
  if (wanted.dimension !== gives.dimension && gives.dimension === "COUNT") return null;
  const same = converted(wanted, gives.dimension, food, part.name);
  if (same === null) return null;
  const pieces: Exact = { dimension: "COUNT", low: same.low.div(gives.high), high: same.high.div(gives.low) };
  return scaledBy(pieces, growth, growth);
}

/** As purchased, in the dimension it is listed in where the facts allow, else the one it is shopped by, else its own. */
function asPurchased(line: Line, food: Food, growth: Fraction): Exact | null {
  if (line.amount === null) return null;
  if (line.item.kind === "FOOD" && line.item.part !== null) return piecesOfPart(line, food, growth);
  const base = asWritten(line.amount, food, null)!;
  const share = line.measured === "READY" && base.dimension !== "COUNT" ? shareLeft(food, line.form) : null;
  const bought = share === null ? base : scaledBy(base, share.inverse(), share.inverse());
  for (const dimension of [listedIn(food), food.shoppedBy]) {
    const direct = share === null ? asWritten(line.amount, food, dimension) : null;
    const found = converted(direct ?? bought, dimension, food, line.form);
    if (found !== null) return scaledBy(found, growth, growth);
  }
  return scaledBy(bought, growth, growth);
}

interface Need {
  readonly part: string | null;
  readonly day: number;
  readonly keeps: number | null;
  readonly amount: Exact | null;
}

/**
 * need = whole uses + the fewest pieces that give every part; then on hand; per food and dimension.
 *
 * @param onHand what there is of a food, as written; in the oracle nothing has a date
 */
export function exactList(
  plans: readonly { readonly bundle: PlanBundle; readonly plan: ExactPlan }[],
  onHand: readonly { readonly food: string; readonly amount: string; readonly unit: string }[],
): readonly ExactLine[] {
  const foods = new Map(plans.flatMap(({ bundle }) => bundle.foods.map((food) => [food.slug, food] as const)));
  const needs = new Map<string, Need[]>();
  const madeAtAll = (use: ExactUse, plan: ExactPlan): boolean =>
    use.component === null || plan.components.get(use.component.slug)!.batches.compare(0) > 0;
  for (const { plan } of plans) {
    for (const use of plan.uses.filter((each) => madeAtAll(each, plan))) {
      const { item } = use.line;
      if (item.kind !== "FOOD") continue;
      const food = foods.get(item.food)!;
      if (food.alwaysThere) continue;
      const amount = asPurchased(use.line, food, use.growth);
      const part = food.parts.find(({ name }) => name === item.part);
      const need = {
        part: item.part,
        day: use.meal?.day ?? 0,
        keeps: part === undefined ? null : daysKept(part),
        amount,
      };
      needs.set(food.slug, [...(needs.get(food.slug) ?? []), need]);
    }
  }
  return [...needs].flatMap(([slug, all]) => {
    const food = foods.get(slug)!;
    const dimensions = [...new Set(all.flatMap(({ amount }) => (amount === null ? [] : [amount.dimension])))].sort();
    const without = all.filter(({ amount }) => amount === null).length;
    if (dimensions.length === 0) {
      return [{ food: slug, dimension: null, low: zero, high: zero, onHand: zero, toBuy: zero, uses: without }];
    }
    const taken = new Set<number>();
    return dimensions.map((dimension, index): ExactLine => {
      const here = all.flatMap(({ amount, ...use }) => (amount?.dimension === dimension ? [{ ...use, amount }] : []));
      const sumOf = (end: "low" | "high"): Fraction => {
        const takings = here.flatMap(({ part, day, keeps, amount }) =>
          part === null ? [] : [{ part, day, keeps, pieces: amount[end] }],
        );
        return here
          .filter(({ part }) => part === null)
          .reduce((total, { amount }) => total.add(amount[end]), exactPieces(takings));
      };
      const have = onHand.reduce((total, entry, at) => {
        if (entry.food !== slug || taken.has(at)) return total;
        const written = { low: entry.amount, high: entry.amount, unit: entry.unit };
        const base = asWritten(written, food, dimension);
        const amount = base === null ? null : converted(base, dimension, food, null);
        if (amount === null) return total;
        taken.add(at);
        return total.add(amount.low);
      }, zero);
      const high = sumOf("high");
      const covered = have.compare(high) < 0 ? have : high;
      return {
        food: slug,
        dimension,
        low: sumOf("low"),
        high,
        onHand: covered,
        toBuy: high.sub(covered),
        uses: here.length + (index === 0 ? without : 0),
      };
    });
  });
}
