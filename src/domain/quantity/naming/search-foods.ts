import type { InSlices, Work } from "../../counted-work.js";
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
function* holding(list: NameList, words: readonly string[], work: Work): InSlices<readonly string[]> {
  const found: ReadonlySet<string>[] = [];
  for (const start of words) {
    const names = new Set<string>();
    for (const word of beginning(sortedWords(list), start)) {
      const named = list.words.get(word) ?? [];
      work.step(1 + named.length / namesInStep);
      yield;
      for (const name of named) names.add(name);
    }
    found.push(names);
  }
  const [least, ...others] = found.toSorted((one, other) => one.size - other.size);
  work.step((least?.size ?? 0) / namesInStep);
  yield;
  return least === undefined ? [] : [...least].filter((name) => others.every((names) => names.has(name)));
}

/** Names that are put into a set, or looked for in one, in a step. */
const namesInStep = 5;

/** A name is looked up in each list. */
const stepsOfName = 3;

/** The most words of a search. */
const mostWords = 8;

/** The most foods that are offered where nothing is called so. */
const mostNear = 10;

/**
 * Slugs of foods for a text, best first: called so, in any language; called so in another spelling, number or order; with a name that begins
 * so; with a name that has all these words, or words that begin so. Where there is none of them: the nearest (nearest-foods.ts).
 * In slices, since letters that many names begin with find thousands.
 */
export function* searchFoodsInSlices(names: FoodNames, text: string, work: Work): InSlices<readonly string[]> {
  const plain = plainWords(text);
  if (plain === "") return [];
  const match = findFood(names, text, null, null);
  const called = match.kind === "FOUND" ? [match.slug] : match.kind === "AMBIGUOUS" ? match.slugs : [];
  const words = [...new Set(plain.split(" ").slice(0, mostWords))];
  const lists: string[] = [];
  for (const list of names.lists) for (const name of yield* holding(list, words, work)) lists.push(name);
  yield;
  const held = lists.toSorted(byLength);
  const begun = held.filter((name) => name.startsWith(plain));
  const found = new Set(called);
  for (const entry of entriesWritten(names, plain).toSorted((a, b) => (a.layer ?? 0) - (b.layer ?? 0)))
    found.add(entry.slug);
  for (const name of new Set([...begun, ...held])) {
    work.step(stepsOfName);
    yield;
    for (const { slug } of entriesWritten(names, name)) found.add(slug);
  }
  return found.size > 0 ? [...found] : nearestFoods(names, text, null, mostNear);
}
