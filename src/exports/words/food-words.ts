import type { Food, FoodName } from "../../domain/model/food.js";
import { readersFoodName } from "../../domain/quantity/food-name.js";

/** What a reader calls a food: the name of the locale's region, else of its language, else English, else the food's first. */
export function foodWords(food: Pick<Food, "slug" | "names">, locale: string): Pick<FoodName, "one" | "many"> {
  const [language = "", ...subtags] = locale.split("-");
  const region = subtags.find((subtag) => /^[A-Za-z]{2}$/.test(subtag))?.toUpperCase() ?? null;
  return readersFoodName(food, language.toLowerCase(), region) ?? { one: food.slug, many: food.slug };
}
