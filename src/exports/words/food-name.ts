import type { Food } from "../../domain/model/food.js";
import { foodWords } from "./food-words.js";

/** The food's name for one, as `foodWords` has it; without a locale (BCP 47) its first. */
export const foodNameFor = (food: Pick<Food, "slug" | "names">, locale: string | null): string =>
  locale === null ? (food.names[0]?.one ?? food.slug) : foodWords(food, locale).one;
