import type { FoodClaims, TracesPresence } from "../model/food.js";
import { groupOf, noneMeansNoMember } from "./allergen-codes.js";
import { claimsOf, type AllergenFood } from "./allergen-claims.js";
import { gravest, statedTraces } from "./allergen-statements.js";

/**
 * Whether a food may hold traces of anything that falls under several codes. Only a statement about traces settles it: what is
 * no ingredient of a food can still have touched it.
 */
export const tracesOfAny = (food: AllergenFood, codes: readonly string[]): TracesPresence =>
  gravest(
    claimsOf(food).map((claims) => tracesInClaims(claims, codes)),
    "UNKNOWN",
  );

function inClaims(claims: FoodClaims, code: string): TracesPresence {
  const own = statedTraces(claims, code);
  const group = groupOf(code);
  const ofGroup = group === null ? null : statedTraces(claims, group);
  if (own === null || own === "UNKNOWN") {
    if (ofGroup === "MAY_CONTAIN") return "MAY_CONTAIN";
    if (own === null && ofGroup === "DOES_NOT_CONTAIN" && noneMeansNoMember(group)) return "DOES_NOT_CONTAIN";
    return "UNKNOWN";
  }
  return own;
}

/** By what one of them says. */
export function tracesInClaims(claims: FoodClaims, codes: readonly string[]): TracesPresence {
  const answers = codes.map((code) => ({ code, traces: inClaims(claims, code) }));
  if (answers.some(({ traces }) => traces === "MAY_CONTAIN")) return "MAY_CONTAIN";
  const open = answers.filter(({ traces }) => traces === "UNKNOWN");
  return open.every(({ code }) => isSettled(claims, code, codes)) ? "DOES_NOT_CONTAIN" : "UNKNOWN";
}

function isSettled(claims: FoodClaims, code: string, codes: readonly string[]): boolean {
  if (statedTraces(claims, code) !== null) return false;
  const group = groupOf(code);
  if (group !== null) return codes.includes(group) && statedTraces(claims, group) === "DOES_NOT_CONTAIN";
  const members = codes.filter((other) => groupOf(other) === code);
  return members.length > 0 && members.every((each) => inClaims(claims, each) === "DOES_NOT_CONTAIN");
}
