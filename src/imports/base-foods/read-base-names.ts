import type { FoodName } from "../../domain/model/food.js";
import { plainWords, wordsOfName } from "../../domain/quantity/food-name.js";
import type { BaseFoodEntry } from "./base-food-schema.js";

/**
 * `aubergine|aubergines; egg plant|egg plants, brinjal`: the usual name, then other words for exactly the same food. A third form is what
 * five and more take, where that is another one: `jabłko|jabłka|jabłek`.
 */
function readName(written: string): Omit<FoodName, "language" | "region"> {
  const [usual = "", others = ""] = written.split(";");
  const [one = "", many = "", counted = ""] = usual.split("|").map((word) => word.trim());
  const also = others.split(/[,|]/).map((word) => word.trim());
  const forms = { one, many: many === "" ? one : many, ...(counted === "" ? {} : { counted }) };
  return { ...forms, also: [...new Set(also)].filter((word) => word !== "") };
}

/** The names of an entry as written: English of everywhere and of the United States, and the other languages. */
export const namesOf = (names: BaseFoodEntry["names"]): readonly FoodName[] =>
  Object.entries(names).flatMap(([tag, written]) => {
    const [language = tag, region = null] = tag.split("-");
    return written === undefined ? [] : [{ language, region, ...readName(written) }];
  });

interface Named {
  readonly slug: string;
  readonly names: readonly FoodName[];
}

/**
 * Keeps English words that mean another food in the United States ("tomato puree") for readers in Britain: elsewhere they are a
 * question. What an American calls the food is then its name of everywhere, if no other word is left.
 *
 * @param shared words that two foods are called by: a question everywhere
 */
export function apartByRegion<N extends Named>(foods: readonly N[], shared: ReadonlySet<string>): readonly N[] {
  const american = new Map<string, Set<string>>();
  for (const { slug, names } of foods)
    for (const name of names.filter(({ language, region }) => language === "en" && region === "US"))
      for (const word of wordsOfName(name)) {
        const key = plainWords(word);
        american.set(key, (american.get(key) ?? new Set()).add(slug));
      }
  return foods.map((food) => {
    const elsewhere = (word: string): boolean =>
      !shared.has(word.toLowerCase()) && [...(american.get(plainWords(word)) ?? [])].some((slug) => slug !== food.slug);
    return { ...food, names: food.names.flatMap((name) => apart(name, food.names, elsewhere)) };
  });
}

function apart(name: FoodName, all: readonly FoodName[], elsewhere: (word: string) => boolean): readonly FoodName[] {
  if (name.language !== "en" || name.region !== null || !wordsOfName(name).some(elsewhere)) return [name];
  const british: FoodName = { ...name, region: "GB" };
  const left = [...new Set(wordsOfName(name).filter((word) => !elsewhere(word)))];
  const [first, ...others] = left;
  const us = all.find(({ language, region }) => language === "en" && region === "US");
  if (!elsewhere(name.one) && !elsewhere(name.many))
    return [{ ...name, also: name.also.filter((word) => !elsewhere(word)) }, british];
  if (first !== undefined) return [{ ...name, one: first, many: first, also: others }, british];
  return us === undefined ? [british] : [{ ...us, region: null }, british];
}
