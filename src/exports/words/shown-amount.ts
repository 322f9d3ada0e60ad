import type {
  BaseAmount,
  Dimension,
  Measured,
  MeasureSystem,
  RationalText,
  UnitRef,
} from "../../domain/model/amount.js";
import type { Food } from "../../domain/model/food.js";
import type { Household } from "../../domain/model/household.js";
import type { Plan } from "../../domain/model/plan.js";
import type { Reader } from "../../domain/plan/plan-answer.js";
import type { ScaledLine } from "../../domain/plan/scaled.js";
import { toBase, type MeasureFacts } from "../../domain/quantity/convert.js";
import { presentAmount, presentInUnit, presentWritten, type PresentedAmount } from "../../domain/quantity/format.js";
import { toNumber } from "../../domain/quantity/rational.js";
import { temperatureUnit } from "../../domain/quantity/temperature.js";
import { standardUnit } from "../../domain/quantity/unit.js";

/** How amounts are shown to one reader. */
export type Show = Reader;

export interface ShownUnit {
  readonly code: string;
  readonly name: string;
  /** null for a measure of a food's own and for batches. */
  readonly dimension: Dimension | null;
}

/** An amount ready to show. Only `text` is rounded; `grams` and `millilitres` are those of `value`. */
export interface ShownAmount {
  readonly value: number;
  readonly upTo: number | null;
  readonly exact: RationalText | null;
  readonly unit: ShownUnit;
  readonly text: string;
  readonly grams: number | null;
  readonly millilitres: number | null;
}

/** As the writer wrote it. */
export const writersShow = (plan: Pick<Plan, "measures" | "locale">): Show => ({ ...plan, converts: false });

/** Packs and parts of a food that is shown to nobody in particular: in the units and the language they were written in. */
export const asWritten = ({ names }: Pick<Food, "names">): Show => ({
  measures: "METRIC",
  locale: names[0]?.language ?? "en",
  converts: false,
});

/** As this household wants it; what it leaves open is the writer's choice. */
export const showFor = (household: Household, plan: Pick<Plan, "measures" | "locale">): Show => ({
  measures: household.measures ?? plan.measures,
  locale: household.locale ?? plan.locale,
  converts: household.measures !== null && household.measures !== plan.measures,
  asked: household.measures !== null,
  degrees: temperatureUnit(household.region),
});

/** A computed amount, in the units the reader cooks with. */
export const showAmount = (amount: BaseAmount, facts: MeasureFacts, show: Show): ShownAmount =>
  shown(presentAmount(amount, facts, show));

/** A written amount, in the writer's own unit. */
export const showWritten = ({ low, high, unit }: Measured, facts: MeasureFacts, show: Show): ShownAmount =>
  shown(presentWritten(toNumber(low), toNumber(high), unit, facts, show));

/** A scaled line, in the writer's own unit unless the reader cooks with others; null for TO_TASTE. */
export function showScaledLine(line: ScaledLine, facts: MeasureFacts, show: Show): ShownAmount | null {
  const presented = presentScaledLine(line, facts, show);
  return presented === null ? null : shown(presented);
}

/** The same with what only words are made from. */
export function presentScaledLine(
  { amount, inUnit, item, line }: ScaledLine,
  facts: MeasureFacts,
  show: Show,
): PresentedAmount | null {
  if (amount === null) return null;
  // The form is that of the food written, not of one that took its place.
  const swapped = item.kind === "FOOD" && line.item.kind === "FOOD" && item.food !== line.item.food;
  const form = swapped ? null : line.form;
  if (inUnit === null) return presentAmount(amount, facts, show, form);
  const asWritten = presentInUnit(inUnit.low, inUnit.high, inUnit.unit, facts, show, form);
  // So many are the same in every kitchen, and weigh what their writer says.
  if (line.each !== undefined && !swapped) {
    const { grams, millilitres } = presentAmount(amount, facts, show, form);
    return { ...asWritten, grams, millilitres };
  }
  if (!show.converts && !(show.asked === true && isForeign(inUnit.unit, show.measures))) return asWritten;
  const converted = presentAmount(amount, facts, show, form);
  // Pieces, cloves and slices are the same in every kitchen.
  if (!isCounted(inUnit.unit)) return converted;
  const { text, saidIn, rounded } = asWritten;
  return { ...converted, text, saidIn, rounded };
}

/** What one of the pieces of a line weighs, as `presentScaledLine` shows a line; null where its writer does not say. */
export function eachText({ item, line }: ScaledLine, facts: MeasureFacts, show: Show): string | null {
  const { each } = line;
  if (each === undefined || item.kind !== "FOOD" || line.item.kind !== "FOOD" || item.food !== line.item.food)
    return null;
  const base = toBase(each, facts, null);
  const converts = show.converts || (show.asked === true && isForeign(each.unit, show.measures));
  if (converts && base.ok) return presentAmount(base.amount, facts, show).text;
  return showWritten(each, facts, show).text;
}

const metricUnits: ReadonlySet<UnitRef> = new Set(["mg", "g", "dag", "kg", "ml", "cl", "dl", "l"]);

/** Grams in a kitchen of pounds and ounces, pounds in one of grams. Spoons and cups are left to the measures of the plan. */
const isForeign = (unit: UnitRef, measures: MeasureSystem): boolean =>
  measures === "US_CUSTOMARY" || measures === "UK_IMPERIAL"
    ? metricUnits.has(unit)
    : ["oz", "lb", "stone"].includes(unit) || /^(us|imp)-/.test(unit);

const isCounted = (unit: UnitRef): boolean => (standardUnit(unit)?.dimension ?? "COUNT") === "COUNT";

function shown({ value, upTo, exact, unit, text, grams, millilitres }: PresentedAmount): ShownAmount {
  const dimension = standardUnit(unit.id)?.dimension ?? null;
  return {
    value,
    upTo,
    exact,
    text,
    grams,
    millilitres,
    unit: { code: unit.id, name: unit.name, dimension: dimension === "BATCH" ? null : dimension },
  };
}
