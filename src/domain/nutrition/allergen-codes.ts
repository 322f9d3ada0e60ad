import type { FoodAllergen } from "../model/food.js";
import type { Source } from "../model/source.js";

/** The closed list of codes for allergens of foods. Groups stand for any of their members where a label says no more. */
export const allergenCodes = [
  ...[
    "milk",
    "egg",
    "fish",
    "crustacean",
    "mollusc",
    "peanut",
    "soy",
    "sesame",
    "celery",
    "mustard",
    "lupin",
    "sulphites",
  ],
  ...["gluten", "wheat", "barley", "rye", "oats", "triticale"],
  ...["tree-nut", "almond", "brazil-nut", "cashew", "hazelnut", "macadamia", "pecan", "pine-nut", "pistachio"],
  ...["walnut", "black-walnut", "california-walnut", "heartnut", "beech-nut", "butternut", "chestnut", "chinquapin"],
  ...["coconut", "cola-nut", "ginkgo-nut", "hickory-nut", "palm-nut", "pili-nut", "shea-nut"],
] as const;

export type AllergenCode = (typeof allergenCodes)[number];

/** A group and whether "none of the group" says the same of each member (gluten-free wheat starch is still wheat). */
export const allergenGroups: Readonly<Record<string, { readonly noneMeansNoMember: boolean }>> = {
  gluten: { noneMeansNoMember: false },
  "tree-nut": { noneMeansNoMember: true },
};

const cereals = ["wheat", "barley", "rye", "oats", "triticale"];
const nuts = allergenCodes.slice(allergenCodes.indexOf("almond")) as readonly string[];

/** The group a code belongs to, or null. */
export const groupOf = (code: string): "gluten" | "tree-nut" | null => groups.get(code) ?? null;

const groups = new Map([
  ...cereals.map((code) => [code, "gluten"] as const),
  ...nuts.map((code) => [code, "tree-nut"] as const),
]);

export const isAllergenCode = (code: string): boolean => (allergenCodes as readonly string[]).includes(code);

/**
 * What a writer says who has listed everything a food contains (a single raw ingredient, a label read to its end): each
 * code that is not listed is absent, one by one. Codes that join the list later stay unknown.
 */
export function withNoneOfTheOthers(listed: readonly FoodAllergen[], source: Source): readonly FoodAllergen[] {
  const named = new Set(listed.flatMap(({ code }) => [code, groupOf(code) ?? code]));
  // A group that is contained says nothing about which of its members are.
  const open = new Set(listed.flatMap(({ code, presence }) => (presence === "DOES_NOT_CONTAIN" ? [] : [code])));
  const absent = allergenCodes.filter((code) => !named.has(code) && !open.has(groupOf(code) ?? ""));
  return [...listed, ...absent.map((code): FoodAllergen => ({ code, presence: "DOES_NOT_CONTAIN", source }))];
}
