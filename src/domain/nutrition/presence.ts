import type { AllergenPresence, Food } from "../model/food.js";
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

type Statements = AllergenFood["allergens"];

/** By the list itself, which nobody changes: a food is asked the same for every dish that it goes into. */
const byCode = new WeakMap<Statements, ReadonlyMap<string, AllergenPresence>>();

function statementsOf({ allergens }: AllergenFood): ReadonlyMap<string, AllergenPresence> {
  const known = byCode.get(allergens);
  if (known !== undefined) return known;
  const said = new Map<string, AllergenPresence>();
  for (const { code, presence } of allergens) said.set(code, gravest([presence, said.get(code) ?? presence], presence));
  byCode.set(allergens, said);
  return said;
}

/** What the food's own data says of a code, or null where it says nothing. Of two statements the graver counts. */
const listed = (food: AllergenFood, code: string): AllergenPresence | null => statementsOf(food).get(code) ?? null;

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
  const answers = ofAny.get(food.allergens) ?? new WeakMap<readonly string[], AllergenPresence>();
  ofAny.set(food.allergens, answers);
  const answer = answers.get(codes) ?? findPresenceOfAny(food, codes);
  answers.set(codes, answer);
  return answer;
}

const ofAny = new WeakMap<Statements, WeakMap<readonly string[], AllergenPresence>>();

function findPresenceOfAny(food: AllergenFood, codes: readonly string[]): AllergenPresence {
  const each = codes.map((code) => ({ code, presence: presenceOf(food, code) }));
  const worst = gravest(
    each.map(({ presence }) => presence),
    "UNKNOWN",
  );
  if (worst !== "UNKNOWN") return worst;
  const open = each.filter(({ presence }) => presence === "UNKNOWN").map(({ code }) => code);
  const settled = open.every((code) => {
    if (listed(food, code) !== null) return false;
    const group = groupOf(code);
    if (group !== null) return codes.includes(group) && listed(food, group) === "DOES_NOT_CONTAIN";
    const members = each.filter((other) => groupOf(other.code) === code);
    return members.length > 0 && members.every(({ presence }) => presence === "DOES_NOT_CONTAIN");
  });
  return settled ? "DOES_NOT_CONTAIN" : "UNKNOWN";
}
