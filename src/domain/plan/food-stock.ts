import { foodYield } from "../component/food-yield.js";
import { missingText, toDimension, toDimensionOf } from "../quantity/convert.js";
import { toNumber } from "../quantity/rational.js";
import { restOf } from "../engine-limits.js";
import type { Food } from "../model/food.js";
import type { Household, OnHand } from "../model/household.js";
import type { Path, Warning } from "../problem.js";
import { takeFromStock, type Stock } from "../shopping/on-hand.js";
import { shoppedAs } from "../shopping/shopped-as.js";
import { needOf, type MergedNeed } from "../shopping/merge.js";
import type { Source } from "./contributions.js";
import { daysUntil } from "./session/session-date.js";

interface Entry {
  readonly onHand: OnHand;
  readonly path: Path;
  readonly food: Food | null;
  readonly slug: string;
  readonly lastDay: number | null;
}

interface EntryStock extends Stock {
  readonly entry: Entry;
}

interface StockUse {
  /** Base units covered, by line. */
  readonly covered: readonly number[];
  readonly warnings: readonly Warning[];
}

/** In the dimension of a line, or the fact that is missing. */
function inLine({ onHand: { amount, unit } }: Entry, { food, dimension }: MergedNeed<unknown>): number | string {
  // To taste: there is some, and nothing to take it off.
  if (dimension === null) return 0;
  const converted = toDimension({ low: amount, high: amount, unit }, dimension, food, null);
  return converted.ok ? converted.amount.low : missingText(converted.missing);
}

interface OtherForm {
  /** What the entry gives, in the line's dimension. */
  readonly gives: number;
  /** The same in grams. */
  readonly grams: number;
  /** Grams of what is on hand that the whole need would take. */
  readonly wouldTake: number;
}

/** What an entry gives of another food that it turns into. */
const asOtherForm = (entry: Entry, line: MergedNeed<unknown>): OtherForm | null => {
  if (entry.food === null || line.dimension === null) return null;
  const perGram = foodYield(entry.food, line.food.slug);
  if (perGram === null) return null;
  const grams = toDimensionOf(toNumber(entry.onHand.amount), entry.onHand.unit, "MASS", entry.food)?.low;
  if (grams === undefined) return null;
  const ofOneGram = toDimensionOf(1, "g", line.dimension, line.food)?.low;
  if (ofOneGram === undefined) return null;
  const cooked = grams * perGram;
  return { gives: cooked * ofOneGram, grams: cooked, wouldTake: line.high / ofOneGram / perGram };
};

const needUntil =
  (line: MergedNeed<unknown>) =>
  (day: number): number =>
    needOf(line.contributions.filter((each) => each.day <= day)).high;

/**
 * Takes what is on hand off the lines of a list, in any unit the food's facts can compare, before packs are chosen; never
 * below nothing. What cannot be compared, is too old, is not needed, or would only do in another form is said.
 *
 * @param find the food an entry names, or null if nobody knows it
 * @param date ISO date of today, for a household without a session
 */
export function useFoodStock(
  lines: readonly MergedNeed<Source>[],
  household: Household,
  canonical: (slug: string) => string,
  find: (slug: string) => Food | null,
  date: string | null,
): StockUse {
  const warnings: Warning[] = [];
  const entries = household.onHand.flatMap((onHand, at): Entry[] => {
    if (onHand.item.kind !== "FOOD") return [];
    const path: Path = ["household", "onHand", onHand.place ?? at];
    const lastDay = daysUntil(onHand.useBy, household, date);
    const slug = canonical(onHand.item.food);
    if (lastDay !== null && lastDay < 0) {
      warnings.push({ code: "ON_HAND_TOO_OLD", path, item: slug, useBy: onHand.useBy ?? "" });
      return [];
    }
    return [{ onHand, path, food: find(onHand.item.food), slug, lastDay }];
  });
  const isOf = (food: Food, slug: string): boolean => food.slug === slug || shoppedAs(food, canonical) === slug;
  const stocks: EntryStock[][] = lines.map(() => []);
  for (const entry of entries) {
    const own = lines.flatMap((line, at) => (isOf(line.food, entry.slug) ? [at] : []));
    const amounts = own.map((at) => ({ at, amount: inLine(entry, lines[at]!) }));
    const comparable = amounts.find(({ amount }) => typeof amount === "number");
    if (typeof comparable?.amount === "number") {
      stocks[comparable.at]!.push({ amount: comparable.amount, lastDay: entry.lastDay, entry });
      continue;
    }
    const [incomparable] = amounts;
    if (typeof incomparable?.amount === "string") {
      const missing = incomparable.amount;
      warnings.push({ code: "ON_HAND_NOT_COMPARABLE", path: entry.path, item: entry.slug, missing });
      continue;
    }
    const at = lines.findIndex((line) => asOtherForm(entry, line) !== null);
    const other = at < 0 ? null : asOtherForm(entry, lines[at]!);
    if (other === null) warnings.push({ code: "ON_HAND_NOT_NEEDED", path: entry.path, item: entry.slug });
    else if (entry.onHand.asOtherForm) stocks[at]!.push({ amount: other.gives, lastDay: entry.lastDay, entry });
    else warnings.push(offered(entry, lines[at]!, other));
  }
  const covered = lines.map((line, at) => {
    const taken = takeFromStock(line.high, stocks[at]!, needUntil(line));
    const sum = taken.reduce((all, each) => all + each, 0);
    if (restOf(line.high, sum) > 0) warnings.push(...notInTime(line, stocks[at]!, taken));
    return sum;
  });
  return { covered, warnings };
}

/** What was left lying of a food that is still needed: only its date can be why. */
function notInTime(
  { contributions }: MergedNeed<Source>,
  stocks: readonly EntryStock[],
  taken: readonly number[],
): readonly Warning[] {
  return stocks.flatMap(({ amount, entry: { onHand, path, slug, lastDay } }, at): Warning[] => {
    if (lastDay === null || restOf(amount, taken[at]!) === 0) return [];
    const late = contributions.filter(({ day }) => day > lastDay);
    const meals = [...new Set(late.flatMap(({ source: { meal } }) => meal?.slug ?? []))];
    return [{ code: "ON_HAND_NOT_IN_TIME", path, item: slug, useBy: onHand.useBy ?? "", meals }];
  });
}

const offered = (entry: Entry, line: MergedNeed<unknown>, { grams, wouldTake }: OtherForm): Warning => ({
  code: "ON_HAND_IN_OTHER_FORM",
  path: entry.path,
  item: line.food.slug,
  from: entry.slug,
  gives: grams,
  wouldTake,
});
