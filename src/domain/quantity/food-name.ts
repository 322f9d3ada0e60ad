import { memoize, memoizeInSlices } from "../memoize.js";
import type { Food, FoodName } from "../model/food.js";
import { runToEnd, unlimitedWork, type InSlices, type Work } from "../counted-work.js";
import { accentedWords, hasAccents, plainWords } from "./naming/plain-words.js";
import { nameKeyReader, readingsOf, saysFresh } from "./naming/name-key.js";
import { shelvesOfDryGoods } from "./naming/plain-descriptions.js";
import { singularPhrase } from "./singular.js";

export { plainWords } from "./naming/plain-words.js";

/** The language of a name that is the same in all of them, such as a number (BCP 47: undetermined). */
export const anyLanguage = "und";

/** What matching needs of a food. */
export type NamedFood = Pick<Food, "slug" | "names"> &
  Partial<LineFacts> & {
    /** It came with the program: what somebody else calls so goes before it. */
    readonly base?: boolean;
    /** A publisher's own: it goes before those that all share. */
    readonly own?: boolean;
    /** No food at all: what is called so beside a food is a question. */
    readonly component?: boolean;
  };

/** What reading a line asks of a food besides: how it is sold and measured, and what it turns into. */
type LineFacts = Pick<Food, "aisle" | "shoppedBy" | "measures" | "densities" | "packs" | "parts" | "yields" | "edible">;

export type FoodMatch =
  | { readonly kind: "FOUND"; readonly slug: string }
  /** One word, several foods: a person must choose. */
  | { readonly kind: "AMBIGUOUS"; readonly slugs: readonly string[] }
  | { readonly kind: "NONE" };

/** A name of a food, as it is looked up. */
export interface NameEntry {
  readonly slug: string;
  readonly language: string;
  readonly region: string | null;
  readonly text: string;
  /** 0: a publisher's own, 1: the operator's, 2: one that came with the program; null: a component, which is beside all of them. */
  readonly layer: 0 | 1 | 2 | null;
  readonly isDryGoods: boolean;
}

type Index = ReadonlyMap<string, readonly NameEntry[]>;

/** Indexes by language, so that no key is put together for it. */
type IndexByLanguage = ReadonlyMap<string, Index>;

/** Names of some foods, laid out for look-up. */
interface NameIndex {
  /** As written. */
  readonly exact: Index;
  /** By the singular of the last word, where that is another than is written. */
  readonly singular: Index;
  /** By language and key (naming/name-key.ts). */
  readonly keys: IndexByLanguage;
  /** The same without the words for how a food is preserved. */
  readonly states: IndexByLanguage;
  /** Names as written, by each of their words. */
  readonly words: ReadonlyMap<string, readonly string[]>;
  readonly languages: readonly string[];
  readonly slugs: ReadonlySet<string>;
}

/** Foods by slug. */
type FoodsBySlug = Pick<ReadonlyMap<string, NamedFood>, "get" | "has">;

/** Names of foods, those of the first list before those of the next, where the two have a slug in common. */
export interface FoodNames {
  readonly lists: readonly NameIndex[];
  readonly foods: FoodsBySlug;
}

/** Whether it is the first one of its key. */
const add = (index: Map<string, NameEntry[]>, key: string, entry: NameEntry): boolean => {
  const entries = index.get(key);
  if (entries === undefined) index.set(key, [entry]);
  else entries.push(entry);
  return entries === undefined;
};

const addWords = (index: Map<string, string[]>, name: string): void => {
  for (const word of name.includes(" ") ? name.split(" ") : [name]) {
    const names = index.get(word);
    if (names === undefined) index.set(word, [name]);
    // A word that it has twice.
    else if (names.at(-1) !== name) names.push(name);
  }
};

/** The forms of a name, then the other words. */
export const wordsOfName = ({ one, many, counted, also }: FoodName): readonly string[] =>
  counted === undefined ? [one, many, ...also] : [one, many, counted, ...also];

/** The form of more than one that a shown number takes, by the number's CLDR category: Polish 2 jabłka, 5 jabłek. */
export const severalForm = ({ many, counted = many }: Pick<FoodName, "many" | "counted">, category: string): string =>
  category === "many" ? counted : many;

const spellingsOf = (name: FoodName): readonly string[] => {
  const spellings: string[] = [];
  for (const word of wordsOfName(name)) if (!spellings.includes(word)) spellings.push(word);
  return spellings;
};

/** Another index of this one, by language, where there is none yet a new one. */
const ofLanguage = (index: Map<string, Map<string, NameEntry[]>>, language: string): Map<string, NameEntry[]> => {
  const known = index.get(language);
  if (known !== undefined) return known;
  const made = new Map<string, NameEntry[]>();
  index.set(language, made);
  return made;
};

/** A name is looked at in all its forms and spellings. */
const stepsOfName = 4;

const layerOf = ({ own = false, base = false, component = false }: NamedFood): NameEntry["layer"] =>
  component ? null : own ? 0 : base ? 2 : 1;

const indexOf = memoizeInSlices(function* (foods: readonly NamedFood[], work: Work): InSlices<NameIndex> {
  const exact = new Map<string, NameEntry[]>();
  const singular = new Map<string, NameEntry[]>();
  const keys = new Map<string, Map<string, NameEntry[]>>();
  const states = new Map<string, Map<string, NameEntry[]>>();
  const words = new Map<string, string[]>();
  const languages = new Set<string>();
  const keysOf = nameKeyReader();
  for (const food of foods) {
    work.step(1 + stepsOfName * food.names.length);
    yield;
    const { slug } = food;
    const layer = layerOf(food);
    const isDryGoods = shelvesOfDryGoods.has(food.aisle ?? "");
    for (const name of food.names) {
      const { language, region } = name;
      if (language !== anyLanguage) languages.add(language);
      const byKey = ofLanguage(keys, language);
      const byState = ofLanguage(states, language);
      for (const text of spellingsOf(name)) {
        const entry: NameEntry = { slug, language, region, text, layer, isDryGoods };
        const { plain, key, state } = keysOf(text, language);
        if (add(exact, plain, entry)) addWords(words, plain);
        const single = singularPhrase(plain, language);
        if (single !== plain) add(singular, single, entry);
        add(byKey, key, entry);
        if (state !== null) add(byState, state, entry);
      }
    }
  }
  const slugs = new Set(foods.map(({ slug }) => slug));
  return { exact, singular, keys, states, words, languages: [...languages], slugs };
});

const bySlug = memoize(
  (foods: readonly NamedFood[]): ReadonlyMap<string, NamedFood> => new Map(foods.map((food) => [food.slug, food])),
);

/**
 * Lays out the names of a catalogue: once for each list, as long as it lives. Matching happens on the words of a line whenever it is read, so
 * a later synonym merges old plans without importing them again.
 */
export function* compileFoodNamesInSlices(foods: readonly NamedFood[], work: Work): InSlices<FoodNames> {
  return { lists: [yield* indexOf(foods, work)], foods: bySlug(foods) };
}

/** `compileFoodNamesInSlices` without a pause. */
export const compileFoodNames = (foods: readonly NamedFood[]): FoodNames =>
  runToEnd(compileFoodNamesInSlices(foods, unlimitedWork));

/** The same names, with facts of some of their foods. */
export const withFacts = (names: FoodNames, facts: FoodsBySlug): FoodNames => ({
  lists: names.lists,
  foods: {
    get: (slug) => {
      const named = names.foods.get(slug);
      return named && { ...named, ...facts.get(slug), names: named.names };
    },
    has: (slug) => names.foods.has(slug),
  },
});

/** Names of a publisher's foods, or of documents, in front of those that all share: of one slug the first counts. */
export const namesBefore = (first: FoodNames, then: FoodNames): FoodNames => ({
  lists: [...first.lists, ...then.lists],
  foods: {
    get: (slug) => first.foods.get(slug) ?? then.foods.get(slug),
    has: (slug) => first.foods.has(slug) || then.foods.has(slug),
  },
});

/** Entries of all lists; of foods that an earlier list has too, only its own. */
function entriesIn(
  { lists }: FoodNames,
  found: (list: NameIndex) => readonly NameEntry[] | undefined,
): readonly NameEntry[] {
  return lists.flatMap((list, at) => {
    const entries = found(list) ?? [];
    return at === 0 ? entries : entries.filter(({ slug }) => !lists.slice(0, at).some(({ slugs }) => slugs.has(slug)));
  });
}

/** Entries that are written so. */
export const entriesWritten = (names: FoodNames, plain: string): readonly NameEntry[] =>
  entriesIn(names, ({ exact }) => exact.get(plain));

/** Entries of a language by a key of it, or by what is left of that without the words for how a food is preserved. */
export const entriesCalled = (
  names: FoodNames,
  index: "keys" | "states",
  language: string,
  key: string,
): readonly NameEntry[] => entriesIn(names, (list) => list[index].get(language)?.get(key));

/** Entries whose last word has this singular, or is it. */
const entriesOfSingular = (names: FoodNames, single: string): readonly NameEntry[] => [
  ...entriesWritten(names, single).filter(({ language }) => singularPhrase(single, language) === single),
  ...entriesIn(names, ({ singular }) => singular.get(single)),
];

/** The food that some names mean: of the nearest layer, then of the reader's region, then of everywhere, then of any. */
const decide = (all: readonly NameEntry[], region: string | null): FoodMatch => {
  const first = Math.min(...all.map(({ layer }) => layer ?? 2));
  const entries = all.filter(({ layer }) => layer === null || layer === first);
  const here = entries.filter((entry) => entry.region === region);
  const anywhere = entries.filter((entry) => entry.region === null);
  const nearest = here.length > 0 ? here : anywhere.length > 0 ? anywhere : entries;
  const slugs = [...new Set(nearest.map(({ slug }) => slug))].toSorted();
  const [slug] = slugs;
  if (slug === undefined) return { kind: "NONE" };
  return slugs.length === 1 ? { kind: "FOUND", slug } : { kind: "AMBIGUOUS", slugs };
};

/** Those that are written with these very accents, where some are: "mąki" is of flour, "maki" are poppies. */
const accented = (entries: readonly NameEntry[], words: string): readonly NameEntry[] => {
  if (!hasAccents(words)) return entries;
  const written = accentedWords(words);
  const same = entries.filter(({ text }) => accentedWords(text) === written);
  return same.length > 0 ? same : entries;
};

/**
 * The food that is called so, in this language (null: any). All words must match, in their order: "tomato paste" is never a tomato.
 * A name of the reader's own region goes before one of everywhere, that before one of another region.
 */
export const matchFood = (
  names: FoodNames,
  words: string,
  language: string | null,
  region: string | null,
): FoodMatch => {
  const key = plainWords(words);
  const spoken = (entries: readonly NameEntry[]): readonly NameEntry[] =>
    entries.filter((entry) => language === null || entry.language === language || entry.language === anyLanguage);
  const exact = spoken(entriesWritten(names, key));
  if (exact.length > 0) return decide(accented(exact, words), region);
  return decide(spoken(entriesOfSingular(names, singularPhrase(key, language ?? "en"))), region);
};

const languagesOf = ({ lists }: FoodNames): readonly string[] => [
  ...new Set(lists.flatMap(({ languages }) => languages)),
];

/** Longest text that is read as a name in other ways than as written. */
const longestName = 120;

/**
 * The food that these words mean: as `matchFood`, or else in another spelling, number, case or order, without words that change nothing
 * ("fresh", "large", "organic"). Words that make another food of it (dried, smoked, ground, paste) are never left out. A name without
 * such a word, where only names with one are known, is a question: "chickpeas" between dried and tinned ones. Typing mistakes are
 * nobody's name (naming/nearest-foods.ts).
 */
export function findFood(
  names: FoodNames,
  words: string,
  language: string | null,
  region: string | null,
  work: Work = unlimitedWork,
): FoodMatch {
  const called = matchFood(names, words, language, region);
  if (called.kind !== "NONE" || words.length > longestName) return called;
  const languages = language === null ? languagesOf(names) : [language];
  const ways = languages.map((each) => ({ each, readings: readingsOf(words, each, work) }));
  for (let at = 0; ways.some(({ readings }) => at < readings.length); at += 1) {
    const found = ways.flatMap(({ each, readings }) =>
      (readings[at]?.keys ?? []).flatMap((key) =>
        entriesCalled(names, "keys", each, key).filter(
          ({ isDryGoods }) => !(isDryGoods && readings[at]?.isFresh === true),
        ),
      ),
    );
    if (found.length > 0) return decide(found, region);
  }
  const sisters = ways.flatMap(({ each, readings }) =>
    readings
      .filter(({ isFresh }) => !isFresh)
      .flatMap(({ keys }) => keys.flatMap((key) => entriesCalled(names, "states", each, key))),
  );
  const open = decide(sisters, region);
  if (open.kind !== "FOUND") return open;
  // One that says more than was written is offered, not taken; that it is fresh is what is meant where nothing is said.
  return sisters.some(({ slug, text, language: of }) => slug === open.slug && saysFresh(text, of))
    ? open
    : { kind: "NONE" };
}

/** The food's name for a reader: own language and region, own language, English, then the first. */
export const readersFoodName = ({ names }: NamedFood, language: string, region: string | null): FoodName | null => {
  const own = names.filter((name) => name.language === language);
  return (
    own.find((name) => name.region === region) ??
    own.find((name) => name.region === null) ??
    own[0] ??
    names.find((name) => name.language === "en") ??
    names[0] ??
    null
  );
};
