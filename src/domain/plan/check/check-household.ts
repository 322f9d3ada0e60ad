import { limits } from "../../engine-limits.js";
import type { Household, OnHand } from "../../model/household.js";
import type { Path, Problem } from "../../problem.js";
import { checkCount, checkNumber, checkRational, checkText } from "./check-text.js";
import { isTimeZone } from "../../time-zone.js";
import { isDate, isInstant } from "../session/session-date.js";

/** The most entries of each kind a reader may send. */
const mostEntries = 1_000;

const unfit = (path: Path, what: string, value: string): Problem => ({
  code: "BAD_HOUSEHOLD",
  path,
  what,
  value: value.slice(0, 60),
});

function checkEaters(servings: number | null, { eaters }: Household): Problem[] {
  if (eaters === null) return [];
  const path: Path = ["household", "eaters"];
  const problems = eaters.flatMap(({ count, portion }, index) => [
    ...checkNumber(count, [...path, index, "count"], { min: 1, max: limits.servings }),
    ...(Number.isFinite(count) && !Number.isInteger(count)
      ? [unfit([...path, index, "count"], "NOT_WHOLE_PEOPLE", String(count))]
      : []),
    ...checkRational(portion, [...path, index, "portion"], { min: 1e-3, max: 100 }),
  ]);
  if (problems.length > 0 || servings === null) return problems;
  const people = eaters.reduce((sum, { count }) => sum + count, 0);
  return people === servings ? [] : [unfit(path, "EATERS_ARE_NOT_THE_SERVINGS", String(people))];
}

function checkSession({ session }: Household): Problem[] {
  if (session === null) return [];
  const path: Path = ["household", "session"];
  return [
    ...(isInstant(session.start) ? [] : [unfit([...path, "start"], "NOT_AN_INSTANT", session.start)]),
    ...(isTimeZone(session.zone) ? [] : [unfit([...path, "zone"], "NOT_A_TIME_ZONE", session.zone)]),
  ];
}

function checkOnHand({ item, amount, unit, useBy }: OnHand, path: Path): Problem[] {
  return [
    ...checkRational(amount, [...path, "amount"], { min: 0, max: limits.amount }),
    ...checkText(item.kind === "FOOD" ? item.food : item.component, "a slug", path),
    ...checkText(unit, "a unit", [...path, "unit"]),
    ...(useBy === null || isDate(useBy) ? [] : [unfit([...path, "useBy"], "NOT_A_DATE", useBy)]),
  ];
}

function checkKitchen({ kitchen }: Household): Problem[] {
  if (kitchen === null) return [];
  const path: Path = ["household", "kitchen"];
  const whole = (count: number, least: number, most: number, at: Path): Problem[] =>
    Number.isInteger(count)
      ? checkNumber(count, at, { min: least, max: most })
      : [unfit(at, "NOT_WHOLE", String(count))];
  const counts = Object.entries(kitchen.appliances);
  return [
    ...(kitchen.cooks === null ? [] : whole(kitchen.cooks, 1, limits.cooks, [...path, "cooks"])),
    ...checkCount(counts.length, mostEntries, "appliances", [...path, "appliances"]),
    ...counts
      .slice(0, mostEntries)
      .flatMap(([code, count]) => whole(count, 0, limits.appliances, [...path, "appliances", code])),
  ];
}

/**
 * What a reader sent about the household, before anything is computed from it.
 *
 * @param servings null: they are not known, so nobody can say whether as many eat
 */
export function checkHousehold(servings: number | null, household: Household): readonly Problem[] {
  const path: Path = ["household"];
  return [
    ...checkCount(household.onHand.length, mostEntries, "things on hand", [...path, "onHand"]),
    ...checkCount(household.swaps.length, mostEntries, "swaps", [...path, "swaps"]),
    ...checkCount(household.diets.length, mostEntries, "diets", [...path, "diets"]),
    ...checkCount(household.avoidAllergens.length, mostEntries, "allergens", [...path, "avoidAllergens"]),
    ...checkCount(household.dislikes.length, mostEntries, "dislikes", [...path, "dislikes"]),
    ...checkCount(household.routes.byName.length, mostEntries, "routes", [...path, "routes"]),
    ...checkCount(household.eaters?.length ?? 0, mostEntries, "eaters", [...path, "eaters"]),
    ...household.onHand
      .slice(0, mostEntries)
      .flatMap((each, index) => checkOnHand(each, [...path, "onHand", each.place ?? index])),
    ...checkSession(household),
    ...checkKitchen(household),
    ...checkEaters(servings, household),
  ];
}
