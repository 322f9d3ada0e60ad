import { limits } from "../limits.js";
import type { Household } from "../model/household.js";
import type { Path, Problem } from "../problem.js";
import { checkCount, checkNumber, checkRational } from "./check-text.js";

/** The most entries of each kind a reader may send. */
const mostEntries = 1_000;

function checkEaters(servings: number, { eaters }: Household): Problem[] {
  if (eaters === null) return [];
  const path: Path = ["household", "eaters"];
  const problems = eaters.flatMap(({ count, portion }, index) => [
    ...checkNumber(count, [...path, index, "count"], { min: 1, max: limits.servings }),
    ...checkRational(portion, [...path, index, "portion"], { min: 1e-3, max: 100 }),
  ]);
  if (problems.length > 0) return problems;
  const people = eaters.reduce((sum, { count }) => sum + count, 0);
  return people === servings
    ? []
    : [{ code: "BAD_HOUSEHOLD", path, what: "EATERS_ARE_NOT_THE_SERVINGS", value: String(people) }];
}

/** What a reader sent about the household, before anything is computed from it. */
export function checkHousehold(servings: number, household: Household): readonly Problem[] {
  const path: Path = ["household"];
  return [
    ...checkCount(household.onHand.length, mostEntries, "things on hand", [...path, "onHand"]),
    ...checkCount(household.swaps.length, mostEntries, "swaps", [...path, "swaps"]),
    ...checkCount(household.diets.length, mostEntries, "diets", [...path, "diets"]),
    ...checkCount(household.routes.byName.length, mostEntries, "routes", [...path, "routes"]),
    ...checkCount(household.eaters?.length ?? 0, mostEntries, "eaters", [...path, "eaters"]),
    ...household.onHand.flatMap(({ amount }, index) =>
      checkRational(amount, [...path, "onHand", index, "amount"], { min: 0, max: limits.amount }),
    ),
    ...checkEaters(servings, household),
  ];
}
