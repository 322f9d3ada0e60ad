// @ts-nocheck
import type { Food } from "../domain/model/food.js";
import { foodWords } from "./food-words.js";

/** The food's name for one: in that language and region, in that language, or the first. `locale`: BCP 47, or null. */
export const foodNameFor = (food: Pick<Food, "slug" | "names">, locale: string | null): string =>
  foodWords(food, locale ?? "").one;
