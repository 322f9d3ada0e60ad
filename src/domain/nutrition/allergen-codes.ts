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

/**
 * A statement of its own: a food whose data says `any-other` DOES_NOT_CONTAIN has all its allergens listed (a single
 * raw ingredient, a label that names everything). Without it, what is not listed is not known.
 */
export const ANY_OTHER = "any-other";

/** A group and whether "none of the group" says the same of each member (gluten-free wheat starch is still wheat). */
export const allergenGroups: Readonly<Record<string, { readonly noneMeansNoMember: boolean }>> = {
  gluten: { noneMeansNoMember: false },
  "tree-nut": { noneMeansNoMember: true },
};

const cereals = ["wheat", "barley", "rye", "oats", "triticale"];
const nuts = allergenCodes.slice(allergenCodes.indexOf("almond")) as readonly string[];

/** The group a code belongs to, or null. */
export const groupOf = (code: string): "gluten" | "tree-nut" | null =>
  cereals.includes(code) ? "gluten" : nuts.includes(code) ? "tree-nut" : null;

export const isAllergenCode = (code: string): boolean =>
  code === ANY_OTHER || (allergenCodes as readonly string[]).includes(code);
