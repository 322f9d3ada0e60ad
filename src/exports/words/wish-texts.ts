import type { Household } from "../../domain/model/household.js";
import { codeName } from "./rule-words.js";
import type { Words } from "./words.js";

/** The diets that a household keeps to, and the allergens that it avoids: "gluten-free", "avoids: milk, egg". */
export const wishTexts = (
  { diets, avoidAllergens }: Pick<Household, "diets" | "avoidAllergens">,
  words: Words,
): readonly string[] => [
  ...diets.map((diet) => codeName("diets", diet, words)),
  ...(avoidAllergens.length === 0
    ? []
    : [words.page.avoids({ things: avoidAllergens.map((code) => codeName("allergens", code, words)).join(", ") })]),
];
