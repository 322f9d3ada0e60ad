// @ts-nocheck
import type { Food, FoodName } from "../domain/model/food.js";

/** What a reader calls a food: the name of the locale's region, else of its language, else the food's first. */
export function foodWords(food: Pick<Food, "slug" | "names">, locale: string): Pick<FoodName, "one" | "many"> {
  const [language = "", ...subtags] = locale.split("-");
  const region = subtags.find((subtag) => /^[A-Za-z]{2}$/.test(subtag))?.toUpperCase() ?? null;
  const spoken = food.names.filter((name) => name.language === language.toLowerCase());
  const chosen =
    (region === null ? undefined : spoken.find((name) => name.region === region)) ??
    spoken.find((name) => name.region === null) ??
    spoken[0] ??
    food.names[0];
  return chosen ?? { one: food.slug, many: food.slug };
}
