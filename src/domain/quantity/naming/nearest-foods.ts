import { memoize } from "../../memoize.js";
import { entriesCalled, entriesWritten, type FoodNames, type NameEntry } from "../food-name.js";
import { editDistance } from "./edit-distance.js";
import { letterSet, mayBeWithin } from "./letter-set.js";
import { readingsOf } from "./name-key.js";
import { plainWords } from "./plain-words.js";

/** The most foods that are offered for words that name none. */
export const mostOffered = 3;

/** Edits that may be a slip of the finger, by the length of what was written. */
const slipsIn = (length: number): number => (length < 5 ? 1 : length < 9 ? 2 : 3);

/** Longest text that is compared letter by letter. */
const longestCompared = 40;

type NameList = FoodNames["lists"][number];

/** Names of one length, each with the set of its letters. */
interface SameLength {
  readonly names: string[];
  readonly letters: number[];
}

/** Plain names of a list by their length. */
const byLength = memoize(({ exact }: NameList): ReadonlyMap<number, SameLength> => {
  const found = new Map<number, SameLength>();
  for (const name of exact.keys()) {
    const same = found.get(name.length) ?? { names: [], letters: [] };
    same.names.push(name);
    same.letters.push(letterSet(name));
    found.set(name.length, same);
  }
  return found;
});

const none: SameLength = { names: [], letters: [] };

/** Names that may be meant by a slip of the finger, the nearest first. */
function slips(list: NameList, written: string): readonly (readonly [name: string, edits: number])[] {
  const most = slipsIn(written.length);
  const own = letterSet(written);
  const found: (readonly [string, number])[] = [];
  for (let length = Math.max(1, written.length - most); length <= written.length + most; length += 1) {
    const { names, letters } = byLength(list).get(length) ?? none;
    for (let at = 0; at < names.length; at += 1) {
      // Most names have other letters, and need no look at their order.
      if (!mayBeWithin(own, letters[at] ?? 0, most)) continue;
      const name = names[at] ?? "";
      const edits = editDistance(written, name, most);
      if (edits <= most) found.push([name, edits]);
    }
  }
  return found.toSorted((a, b) => a[1] - b[1]);
}

/** Names that hold all of these words, the shortest first. */
function holding(list: NameList, words: readonly string[]): readonly string[] {
  const lists = words.map((word) => list.words.get(word) ?? []);
  const [least = [], ...others] = lists.toSorted((a, b) => a.length - b.length);
  const sets = others.map((names) => new Set(names));
  return least.filter((name) => sets.every((names) => names.has(name))).toSorted((a, b) => a.length - b.length);
}

/**
 * Foods that may be meant by words that name none, nearest first: what is called so and preserved in some way, what is called so with a
 * word more, and what a slip of the finger makes of a name. To be offered, never taken.
 */
export function nearestFoods(
  names: FoodNames,
  words: string,
  language: string | null,
  most: number,
): readonly string[] {
  const plain = plainWords(words);
  if (plain === "" || plain.length > longestCompared) return [];
  const languages = language === null ? [...new Set(names.lists.flatMap((list) => list.languages))] : [language];
  const spoken = ({ language: of }: NameEntry): boolean => language === null || of === language;
  const sisters = languages.flatMap((each) =>
    readingsOf(words, each).flatMap(({ keys }) => keys.flatMap((key) => entriesCalled(names, "states", each, key))),
  );
  const called = (found: readonly string[]): readonly NameEntry[] =>
    found.flatMap((name) => entriesWritten(names, name));
  const near = names.lists.flatMap((list) => slips(list, plain)).toSorted((a, b) => a[1] - b[1]);
  const slipped = called(near.map(([name]) => name));
  const longer = called(names.lists.flatMap((list) => holding(list, plain.split(" "))));
  const offered = [...sisters, ...slipped, ...longer].filter(spoken).map(({ slug }) => slug);
  return [...new Set(offered)].slice(0, most);
}
