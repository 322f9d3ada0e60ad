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

/** A group and whether "none of the group" says the same of each member (gluten-free wheat starch is still wheat). */
const allergenGroups: Readonly<Record<string, { readonly noneMeansNoMember: boolean }>> = {
  gluten: { noneMeansNoMember: false },
  "tree-nut": { noneMeansNoMember: true },
};

const cereals = ["wheat", "barley", "rye", "oats", "triticale"];
const nuts = allergenCodes.slice(allergenCodes.indexOf("almond")) as readonly string[];

/** Whether "none of the group" says the same of each member. Of a code that is no group it does. */
export const noneMeansNoMember = (code: string | null): boolean =>
  code === null || (allergenGroups[code]?.noneMeansNoMember ?? true);

/** Codes that joined the list after foods were first said to be a single ingredient: nobody thought of them then. */
export const joinedLater: ReadonlySet<string> = new Set();

/** Codes of a group's members; none for a code that is no group. */
export const groupMembers = (code: string): readonly string[] =>
  code === "gluten" ? cereals : code === "tree-nut" ? nuts : noMembers;
const noMembers: readonly string[] = [];

/** A code and, of a group, its members. */
export const codesUnder = (code: string): readonly string[] => [code, ...groupMembers(code)];

/** The group a code belongs to, or null. */
export const groupOf = (code: string): "gluten" | "tree-nut" | null => groups.get(code) ?? null;

const groups = new Map([
  ...cereals.map((code) => [code, "gluten"] as const),
  ...nuts.map((code) => [code, "tree-nut"] as const),
]);

export const isAllergenCode = (code: string): boolean => (allergenCodes as readonly string[]).includes(code);
