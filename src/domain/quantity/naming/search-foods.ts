import { memoize } from "../../memoize.js";
import { entriesWritten, findFood, type FoodNames } from "../food-name.js";
import { nearestFoods } from "./nearest-foods.js";
import { plainWords } from "./plain-words.js";

type NameList = FoodNames["lists"][number];

/** Words of a list's names in order, so that those with one beginning lie side by side. */
const sortedWords = memoize(({ words }: NameList): readonly string[] => [...words.keys()].toSorted());

/** Those that begin so. */
function beginning(all: readonly string[], start: string): readonly string[] {
  let [low, high] = [0, all.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((all[middle] ?? "") < start) low = middle + 1;
    else high = middle;
  }
  let end = low;
  while (all[end]?.startsWith(start) === true) end += 1;
  return all.slice(low, end);
}

const byLength = (a: string, b: string): number => a.length - b.length || (a < b ? -1 : 1);

/** Names in which every word begins some word, in any order. */
function holding(list: NameList, words: readonly string[]): readonly string[] {
  const found = words.map(
    (start) => new Set(beginning(sortedWords(list), start).flatMap((word) => list.words.get(word) ?? [])),
  );
  const [least, ...others] = found.toSorted((a, b) => a.size - b.size);
  return least === undefined ? [] : [...least].filter((name) => others.every((names) => names.has(name)));
}

/** The most words of a search. */
const mostWords = 8;

/** The most foods that are offered where nothing is called so. */
const mostNear = 10;

/**
 * Slugs of foods for a text, best first: called so, in any language; called so in another spelling, number or order; with a name that begins
 * so; with a name that has all these words, or words that begin so. Where there is none of them: the nearest (nearest-foods.ts).
 */
export function searchFoods(names: FoodNames, text: string): readonly string[] {
  const plain = plainWords(text);
  if (plain === "") return [];
  const match = findFood(names, text, null, null);
  const called = match.kind === "FOUND" ? [match.slug] : match.kind === "AMBIGUOUS" ? match.slugs : [];
  const words = plain.split(" ").slice(0, mostWords);
  const held = names.lists.flatMap((list) => holding(list, words)).toSorted(byLength);
  const begun = held.filter((name) => name.startsWith(plain));
  const found = new Set(called);
  for (const entry of entriesWritten(names, plain).toSorted((a, b) => (a.layer ?? 0) - (b.layer ?? 0)))
    found.add(entry.slug);
  for (const name of [...begun, ...held]) for (const { slug } of entriesWritten(names, name)) found.add(slug);
  return found.size > 0 ? [...found] : nearestFoods(names, text, null, mostNear);
}
