import type { Food, FoodName } from "../../domain/model/food.js";
import { anyLanguage, readersFoodName } from "../../domain/quantity/food-name.js";

type NamedFood = Pick<Food, "slug" | "names">;

/** What a reader calls a food: the name of the locale's region, else of its language, else English, else the food's first. */
export const foodWords = (food: NamedFood, locale: string): Pick<FoodName, "one" | "many"> =>
  nameFor(food, locale) ?? { one: food.slug, many: food.slug };

/** BCP 47 tag of the language of that name; null: it is a slug, or the same in every language. */
export function foodWordsLanguage(food: NamedFood, locale: string): string | null {
  const language = nameFor(food, locale)?.language ?? anyLanguage;
  return language === anyLanguage ? null : language;
}

function nameFor(food: NamedFood, locale: string): FoodName | null {
  const [language = "", ...subtags] = locale.split("-");
  const region = subtags.find((subtag) => /^[A-Za-z]{2}$/.test(subtag))?.toUpperCase() ?? null;
  return readersFoodName(food, language.toLowerCase(), region);
}
