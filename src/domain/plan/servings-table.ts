import { limits } from "../engine-limits.js";
import type { Money } from "../model/amount.js";
import type { Household } from "../model/household.js";
import type { PlanBundle } from "../model/plan.js";
import { failed, ok, type Result } from "../problem.js";
import { runToEnd, unlimitedWork, type InSlices, type Work } from "../counted-work.js";
import { toDimension } from "../quantity/convert.js";
import { asFrozen, type FoodsToday } from "./review/foods-today.js";
import { scalePlanInSlices } from "./scale-plan.js";
import type { ScaledComponent, ScaledPlan, ShoppingLine, ShoppingList } from "./scaled.js";
import { shopInSlices } from "./shop.js";

/** The most rows one table may have. */
export const mostRows = 200;

export interface ServingsRow {
  readonly servings: number;
  /** What one serving eats, in money; null where no price is known. */
  readonly perServing: Money | null;
  /** What the till asks for. */
  readonly atTill: Money | null;
  /** Of each component, the share of what is made that nobody eats; on average over the components made. 0..1 */
  readonly leftOverShare: number;
  /** Of each food bought in packs, the share of what is bought that is not used; on average over those foods. 0..1 */
  readonly packWasteShare: number;
  /** Not a crumb of any component is left over. */
  readonly even: boolean;
}

const average = (shares: readonly number[]): number =>
  shares.length === 0 ? 0 : shares.reduce((sum, each) => sum + each, 0) / shares.length;

const leftOverShare = ({ leftOver, made }: ScaledComponent): number => leftOver.low / made.low;

/** null where nothing is bought of it, or a pack cannot be compared with the need. */
function wasteOf({ food, toBuy, buy }: ShoppingLine): number | null {
  if (toBuy === null || buy.length === 0) return null;
  let bought = 0;
  for (const { pack, count } of buy) {
    const content = toDimension(pack.content, toBuy.dimension, food, null);
    if (!content.ok) return null;
    bought += count * content.amount.low;
  }
  return Math.max(0, 1 - toBuy.high / bought);
}

function rowOf(scaled: ScaledPlan, list: ShoppingList): ServingsRow {
  const made = scaled.components.filter(({ batches }) => batches > 0);
  return {
    servings: scaled.servings,
    perServing: list.cost.perServing,
    atTill: list.cost.atTill,
    leftOverShare: average(made.map(leftOverShare)),
    packWasteShare: average(list.lines.map(wasteOf).filter((share) => share !== null)),
    even: made.every(({ leftOver }) => leftOver.low === 0),
  };
}

/**
 * What a plan costs and leaves at every number of servings from one to another, so that a writer can say for how many it comes out
 * even. Problems: SERVINGS_OUT_OF_RANGE, TOO_LARGE beyond `mostRows`, and those of `scalePlan`.
 */
export const servingsTable = (
  bundle: PlanBundle,
  from: number,
  to: number,
  household: Household,
  today: FoodsToday = asFrozen,
): Result<readonly ServingsRow[]> => runToEnd(servingsTableInSlices(bundle, from, to, household, today, unlimitedWork));

/** The same turn by turn. */
export function* servingsTableInSlices(
  bundle: PlanBundle,
  from: number,
  to: number,
  household: Household,
  today: FoodsToday,
  work: Work,
): InSlices<Result<readonly ServingsRow[]>> {
  for (const [name, value] of Object.entries({ from, to })) {
    if (Number.isInteger(value) && value >= 1 && value <= limits.servings) continue;
    return failed([{ code: "SERVINGS_OUT_OF_RANGE", path: [name], value, min: 1, max: limits.servings }]);
  }
  const size = to - from + 1;
  if (size > mostRows) return failed([{ code: "TOO_LARGE", path: ["to"], what: "rows", size, limit: mostRows }]);
  const rows: ServingsRow[] = [];
  for (let servings = from; servings <= to; servings++) {
    yield;
    const scaled = yield* scalePlanInSlices(bundle, servings, household, today, work);
    if (!scaled.ok) return scaled;
    rows.push(rowOf(scaled.value, yield* shopInSlices([scaled.value], household, today, work)));
  }
  return ok(rows);
}
