import type { AllergenPresence, Food } from "../model/food.js";
import { onceFor } from "../once-for.js";
import { allergenGroups, groupOf } from "./allergen-codes.js";

export type AllergenFood = Pick<Food, "slug" | "allergens">;

/** From the one that must be said first. */
export const presenceOrder = [
  "CONTAINS",
  "MAY_CONTAIN",
  "UNKNOWN",
  "DOES_NOT_CONTAIN",
] as const satisfies AllergenPresence[];

/** The presence that must be said, of several. `empty` for none. */
export const gravest = (presences: readonly AllergenPresence[], empty: AllergenPresence): AllergenPresence =>
  presenceOrder.find((presence) => presences.includes(presence)) ?? empty;

/** By the list itself: a food is asked the same for every dish that it goes into. */
const statementsOf = onceFor((allergens: AllergenFood["allergens"]): ReadonlyMap<string, AllergenPresence> => {
  const said = new Map<string, AllergenPresence>();
  for (const { code, presence } of allergens) {
    const before = said.get(code);
    said.set(code, before === undefined ? presence : gravest([presence, before], presence));
  }
  return said;
});

/** What the food's own data says of a code, or null where it says nothing. Of two statements the graver counts. */
const listed = (food: AllergenFood, code: string): AllergenPresence | null =>
  statementsOf(food.allergens).get(code) ?? null;

/**
 * Whether a food contains one allergen. What its data does not list is unknown: a group that is contained leaves its
 * members open, a group that may be contained may be any of them, and only an explicit statement makes anything absent.
 */
export function presenceOf(food: AllergenFood, code: string): AllergenPresence {
  const own = listed(food, code);
  const group = groupOf(code);
  const ofGroup = group === null ? null : listed(food, group);
  if (own !== null && own !== "UNKNOWN") return own;
  if (ofGroup === "MAY_CONTAIN") return "MAY_CONTAIN";
  if (own === "UNKNOWN" || ofGroup === "CONTAINS" || ofGroup === "UNKNOWN") return "UNKNOWN";
  if (group !== null && ofGroup === "DOES_NOT_CONTAIN" && allergenGroups[group]?.noneMeansNoMember) return ofGroup;
  return "UNKNOWN";
}

/**
 * Whether a food contains anything that falls under several codes. A group among them is settled by its members among
 * them, and its own "none" settles those nothing else is said of.
 */
export function presenceOfAny(food: AllergenFood, codes: readonly string[]): AllergenPresence {
  let mayContain = false;
  const open: string[] = [];
  for (const code of codes) {
    const presence = presenceOf(food, code);
    if (presence === "CONTAINS") return presence;
    if (presence === "MAY_CONTAIN") mayContain = true;
    else if (presence === "UNKNOWN") open.push(code);
  }
  if (mayContain) return "MAY_CONTAIN";
  return open.every((code) => isSettled(food, code, codes)) ? "DOES_NOT_CONTAIN" : "UNKNOWN";
}

function isSettled(food: AllergenFood, code: string, codes: readonly string[]): boolean {
  if (listed(food, code) !== null) return false;
  const group = groupOf(code);
  if (group !== null) return codes.includes(group) && listed(food, group) === "DOES_NOT_CONTAIN";
  const members = codes.filter((other) => groupOf(other) === code);
  return members.length > 0 && members.every((member) => presenceOf(food, member) === "DOES_NOT_CONTAIN");
}
