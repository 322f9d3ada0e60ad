import type { FoodOffer, Problem } from "../../../domain/problem.js";
import { findFood, type FoodNames } from "../../../domain/quantity/food-name.js";
import { mostOffered, nearestFoods } from "../../../domain/quantity/naming/nearest-foods.js";
import { slugOf } from "../../recipes/recipe-slug.js";
import { isComponentName, slugNamed } from "./line-names.js";

/** Rows of the open table by the words that name no food. */
export type RowsByWords = ReadonlyMap<string, FoodOffer["rows"]>;

/** What may be meant where a document names a food that nobody knows, for so many of them. */
export function foodOffers(
  names: FoodNames,
  rows: RowsByWords,
  most: number,
): (problem: Problem, language: string) => Problem {
  let left = most;
  return (problem, language) => {
    if (problem.code !== "UNKNOWN_FOOD" || left <= 0) return problem;
    left -= 1;
    const { food } = problem;
    const match = findFood(names, food, null, null);
    const near =
      match.kind === "AMBIGUOUS"
        ? match.slugs
        : [...nearestFoods(names, food, language, mostOffered), ...nearestFoods(names, food, null, mostOffered)];
    const nearest = [...new Set(near)]
      .filter((slug) => !isComponentName(slug))
      .map(slugNamed)
      .slice(0, mostOffered);
    return { ...problem, offer: { nearest, rows: rows.get(food) ?? [], slug: slugOf(food), language } };
  };
}
