import type { AllergenPresence, FoodClaims } from "../model/food.js";
import type { Source } from "../model/source.js";
import { groupOf, groupMembers, joinedLater, noneMeansNoMember } from "./allergen-codes.js";
import type { DietRule } from "./allergen-rules.js";
import { claimsOf, type AllergenFood } from "./allergen-claims.js";
import { derivedAbsence } from "./derived-allergens.js";
import { statedIngredient } from "./allergen-statements.js";

type IngredientPresence = Exclude<AllergenPresence, "MAY_CONTAIN">;

/** STATED of this allergen; DERIVED from what is stated of a diet or a group; BY_NATURE of a single ingredient. */
type IngredientBasis = "STATED" | "DERIVED" | "BY_NATURE";

/** Whether something is an ingredient. Says nothing of traces. */
export interface AsIngredient {
  readonly presence: IngredientPresence;
  /** null where it is not known. */
  readonly basis: IngredientBasis | null;
  readonly source: Source | null;
}

const unknown: AsIngredient = { presence: "UNKNOWN", basis: null, source: null };
const absent = (basis: IngredientBasis, source: Source): AsIngredient => ({
  presence: "DOES_NOT_CONTAIN",
  basis,
  source,
});

const order = ["CONTAINS", "UNKNOWN", "DOES_NOT_CONTAIN"] as const satisfies IngredientPresence[];

/** The one that must be said first, of several. */
export const gravestIngredient = (answers: readonly AsIngredient[]): AsIngredient =>
  order.flatMap((wanted) => answers.filter(({ presence }) => presence === wanted))[0] ?? unknown;

/** Whether a food has an allergen as an ingredient. Of several that speak of it the least safe answer stands. */
export function asIngredient(food: AllergenFood, code: string, diets: readonly DietRule[]): AsIngredient {
  const claims = claimsOf(food);
  const [own] = claims;
  if (claims.length === 1 && own !== undefined) return ingredientInClaims(own, code, diets);
  return gravestIngredient(claims.map((each) => ingredientInClaims(each, code, diets)));
}

/** The same for anything that falls under several codes, such as one entry of a law's list. */
export function asIngredientOfAny(
  food: AllergenFood,
  codes: readonly string[],
  diets: readonly DietRule[],
): AsIngredient {
  return gravestIngredient(claimsOf(food).map((claims) => anyIngredientInClaims(claims, codes, diets)));
}

/** By what one of them says. */
export function ingredientInClaims(claims: FoodClaims, code: string, diets: readonly DietRule[]): AsIngredient {
  const stated = statedIngredient(claims, code);
  if (stated?.presence === "CONTAINS") return { presence: "CONTAINS", basis: "STATED", source: stated.source };
  if (stated !== null) return stated.presence === "UNKNOWN" ? unknown : absent("STATED", stated.source);
  const group = groupOf(code);
  const ofGroup = group === null ? null : statedIngredient(claims, group);
  if (ofGroup?.presence === "DOES_NOT_CONTAIN" && noneMeansNoMember(group)) return absent("DERIVED", ofGroup.source);
  if (ofGroup?.presence === "UNKNOWN") return unknown;
  // A group that is contained may be any of its members, unless it is said which.
  if (ofGroup?.presence === "CONTAINS" && !isSaidWhich(claims, group)) return unknown;
  const derived = derivedAbsence(claims, code, diets);
  if (derived !== null) return absent("DERIVED", derived);
  return absentByNature(claims, code) ?? unknown;
}

const isSaidWhich = (claims: FoodClaims, group: string | null): boolean =>
  groupMembers(group ?? "").some(
    (each) =>
      statedIngredient(claims, each)?.presence === "CONTAINS" || claims.singleIngredient?.is.includes(each) === true,
  );

/** A carrot is no milk. What the ingredient is itself, and codes that nobody knew of when it was said, stay open. */
function absentByNature({ singleIngredient }: FoodClaims, code: string): AsIngredient | null {
  if (!singleIngredient || joinedLater.has(code)) return null;
  const { is, source } = singleIngredient;
  const group = groupOf(code);
  const isGroup = group !== null && is.includes(group) && !is.some((each) => groupOf(each) === group);
  if (is.includes(code) || isGroup || is.some((each) => groupOf(each) === code)) return null;
  return absent("BY_NATURE", source);
}

/** By what one of them says. */
export function anyIngredientInClaims(
  claims: FoodClaims,
  codes: readonly string[],
  diets: readonly DietRule[],
): AsIngredient {
  const answers = codes.map((code) => ({ code, answer: ingredientInClaims(claims, code, diets) }));
  const contains = answers.find(({ answer }) => answer.presence === "CONTAINS");
  if (contains !== undefined) return contains.answer;
  const open = answers.filter(
    ({ code, answer }) => answer.presence === "UNKNOWN" && !isSettled(claims, code, codes, diets),
  );
  if (open.length > 0) return unknown;
  return weakest(answers.map(({ answer }) => answer));
}

/** A group is settled by its members where all are asked for, and its own "none" settles those nothing else is said of. */
function isSettled(claims: FoodClaims, code: string, codes: readonly string[], diets: readonly DietRule[]): boolean {
  if (statedIngredient(claims, code) !== null) return false;
  const group = groupOf(code);
  if (group !== null) return codes.includes(group) && statedIngredient(claims, group)?.presence === "DOES_NOT_CONTAIN";
  const members = codes.filter((other) => groupOf(other) === code);
  return (
    members.length > 0 &&
    members.every((each) => ingredientInClaims(claims, each, diets).presence === "DOES_NOT_CONTAIN")
  );
}

const strength = ["BY_NATURE", "DERIVED", "STATED"] as const satisfies IngredientBasis[];

/** What an absence of all of them rests on: the one that is least directly said. */
export const weakest = (answers: readonly AsIngredient[]): AsIngredient =>
  strength.flatMap((wanted) => answers.filter(({ basis }) => basis === wanted))[0] ?? unknown;
