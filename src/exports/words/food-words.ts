import type { Food, FoodName } from "../../domain/model/food.js";
import { anyLanguage, readersFoodName } from "../../domain/quantity/food-name.js";
import { otherLanguage } from "./languages-of.js";
import type { Words } from "./words.js";

type NamedFood = Pick<Food, "slug" | "names">;

/** What a reader calls a food: the name of the locale's region, else of its language, else English, else the food's first. */
export const foodWords = (food: NamedFood, locale: string): Pick<FoodName, "one" | "many" | "counted"> =>
  nameFor(food, locale) ?? { one: food.slug, many: food.slug };

/** BCP 47 tag of the language of that name, where the fixed words are in another; null: it is theirs, a slug, or the same in every language. */
export function otherFoodLanguage(food: NamedFood, locale: string, words: Pick<Words, "language">): string | null {
  const language = nameFor(food, locale)?.language ?? anyLanguage;
  return language === anyLanguage ? null : otherLanguage(language, words);
}

function nameFor(food: NamedFood, locale: string): FoodName | null {
  const [language = "", ...subtags] = locale.split("-");
  const region = subtags.find((subtag) => /^[A-Za-z]{2}$/.test(subtag))?.toUpperCase() ?? null;
  return readersFoodName(food, language.toLowerCase(), region);
}
