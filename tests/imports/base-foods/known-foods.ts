import { expect } from "vitest";
import type { Food } from "../../../src/domain/model/food.js";
import { compileFoodNames, type FoodNames } from "../../../src/domain/quantity/food-name.js";
import { readLine } from "../../../src/domain/quantity/read-line.js";
import { readBase } from "../../kit/base-foods.js";
import { lacks } from "./coverage.js";

/** The base foods as a new database knows them. */
export interface KnownFoods {
  readonly names: FoodNames;
  readonly foods: ReadonlyMap<string, Food>;
}

export async function knownFoods(): Promise<KnownFoods> {
  const { whole } = await readBase();
  return {
    names: compileFoodNames(whole.map((food) => ({ ...food, base: true }))),
    foods: new Map(whole.map((food) => [food.slug, food])),
  };
}

/** Foods that may be meant: one, or the few of a question. */
function meant({ names, foods }: KnownFoods, words: string, locale: string): readonly Food[] {
  const { match } = readLine(`100 g ${words}`, { locale, measures: "METRIC", region: locale.slice(3), foods: names });
  const slugs = match.kind === "FOUND" ? [match.slug] : match.kind === "AMBIGUOUS" ? match.slugs : [];
  return slugs.length > 4 ? [] : slugs.flatMap((slug) => foods.get(slug) ?? []);
}

/** Holds 95 % of a list to be found, and 90 % to be described whole. Says what may be meant by each. */
export function expectKnown(known: KnownFoods, list: readonly string[], locale: string): readonly (readonly Food[])[] {
  const asked = list.map((words) => ({ words, found: meant(known, words, locale) }));
  const notFound = asked.filter(({ found }) => found.length === 0).map(({ words }) => words);
  const notWhole = asked.filter(({ found }) => found.length === 0 || found.some((food) => lacks(food).length > 0));
  expect(notFound.length, notFound.join(", ")).toBeLessThanOrEqual(0.05 * list.length);
  expect(notWhole.length, notWhole.map(({ words }) => words).join(", ")).toBeLessThanOrEqual(0.1 * list.length);
  return asked.map(({ found }) => found);
}
