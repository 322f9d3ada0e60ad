import { memoize } from "../../memoize.js";
import { entriesOf, findFood, type FoodNames } from "../food-name.js";
import { nearestFoods } from "./nearest-foods.js";
import { plainWords } from "./plain-words.js";

type NameList = FoodNames["lists"][number];

interface SortedWord {
  readonly word: string;
  /** The plain name that it stands in. */
  readonly name: string;
}

/** Names of a list, and their words, in order, so that beginnings of them lie side by side. */
const sorted = memoize(({ exact }: NameList) => {
  const names = [...exact.keys()].toSorted();
  const words = names
    .flatMap((name) => [...new Set(name.split(" "))].map((word): SortedWord => ({ word, name })))
    .toSorted((a, b) => (a.word < b.word ? -1 : a.word > b.word ? 1 : 0));
  return { names, words };
});

/** Those that begin so, of some in order. */
function beginning<T>(all: readonly T[], start: string, textOf: (each: T) => string): readonly T[] {
  let [low, high] = [0, all.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    const at = all[middle];
    if (at !== undefined && textOf(at) < start) low = middle + 1;
    else high = middle;
  }
  let end = low;
  for (let at = all[end]; at !== undefined && textOf(at).startsWith(start); at = all[end]) end += 1;
  return all.slice(low, end);
}

const byLength = (a: string, b: string): number => a.length - b.length || (a < b ? -1 : 1);

/** Names in which every word begins some word, in any order. */
function holding(list: NameList, words: readonly string[]): readonly string[] {
  const found = words.map(
    (word) => new Set(beginning(sorted(list).words, word, ({ word: text }) => text).map(({ name }) => name)),
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
  const begun = names.lists.flatMap((list) => beginning(sorted(list).names, plain, String)).toSorted(byLength);
  const held = names.lists.flatMap((list) => holding(list, words)).toSorted(byLength);
  const found = new Set(called);
  for (const entry of entriesOf(names, "exact", plain).toSorted((a, b) => (a.layer ?? 0) - (b.layer ?? 0)))
    found.add(entry.slug);
  for (const name of [...begun, ...held]) for (const { slug } of entriesOf(names, "exact", name)) found.add(slug);
  return found.size > 0 ? [...found] : nearestFoods(names, text, null, mostNear);
}
