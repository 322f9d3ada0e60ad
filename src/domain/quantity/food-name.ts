import { memoize } from "../memoize.js";
import type { Food, FoodName } from "../model/food.js";
import { runToEnd, unlimitedWork, type InSlices, type Work } from "../counted-work.js";
import { singularPhrase } from "./singular.js";

/** The language of a name that is the same in all of them, such as a number (BCP 47: undetermined). */
export const anyLanguage = "und";

/** What matching needs of a food. */
export type NamedFood = Pick<Food, "slug" | "names"> &
  Partial<LineFacts> & {
    /** It came with the program: what somebody else calls so goes before it. */
    readonly base?: boolean;
  };

/** What reading a line asks of a food besides: how it is sold and measured, and what it turns into. */
type LineFacts = Pick<Food, "aisle" | "shoppedBy" | "measures" | "densities" | "packs" | "parts" | "yields" | "edible">;

export type FoodMatch =
  | { readonly kind: "FOUND"; readonly slug: string }
  /** One word, several foods: a person must choose. */
  | { readonly kind: "AMBIGUOUS"; readonly slugs: readonly string[] }
  | { readonly kind: "NONE" };

interface Entry {
  readonly slug: string;
  readonly language: string;
  readonly region: string | null;
  readonly base: boolean;
}

/** Names laid out for look-up: as written, and by the singular of the last word. */
export interface FoodNames {
  readonly exact: ReadonlyMap<string, readonly Entry[]>;
  readonly singular: ReadonlyMap<string, readonly Entry[]>;
  /** By slug. */
  readonly foods: ReadonlyMap<string, NamedFood>;
}

/** Case, spacing, hyphens and accents do not tell foods apart; nothing else is taken away. */
export const plainWords = (words: string): string =>
  words
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/ß/g, "ss")
    .replace(/[\s\-‐-―_,]+/gu, " ")
    .trim();

const spellings = ({ one, many, also }: FoodName): readonly string[] => [one, many, ...also];

const add = (index: Map<string, Entry[]>, key: string, entry: Entry): void => {
  const entries = index.get(key);
  if (entries === undefined) index.set(key, [entry]);
  else entries.push(entry);
};

/** What a name is looked up by, worked out once: most of the time of laying out a catalogue is spent here. */
const keysOf = memoize((name: FoodName): readonly { readonly exact: string; readonly singular: string }[] =>
  spellings(name).map((spelling) => {
    const exact = plainWords(spelling);
    return { exact, singular: singularPhrase(exact, name.language) };
  }),
);

/**
 * Lays out the names of a catalogue. Build it anew when a name is added: matching happens on the words of a line whenever
 * it is read, so a later synonym merges old plans without importing them again.
 */
export function* compileFoodNamesInSlices(foods: readonly NamedFood[], work: Work): InSlices<FoodNames> {
  const exact = new Map<string, Entry[]>();
  const singular = new Map<string, Entry[]>();
  for (const { slug, names, base = false } of foods) {
    work.step(1 + names.length);
    yield;
    for (const name of names) {
      const entry = { slug, language: name.language, region: name.region, base };
      for (const keys of keysOf(name)) {
        add(exact, keys.exact, entry);
        add(singular, keys.singular, entry);
      }
    }
  }
  return { exact, singular, foods: new Map(foods.map((food) => [food.slug, food])) };
}

/** `compileFoodNamesInSlices` without a pause. */
export const compileFoodNames = (foods: readonly NamedFood[]): FoodNames =>
  runToEnd(compileFoodNamesInSlices(foods, unlimitedWork));

const decide = (all: readonly Entry[], region: string | null): FoodMatch => {
  const own = all.filter(({ base }) => !base);
  const entries = own.length > 0 ? own : all;
  const here = entries.filter((entry) => entry.region === region);
  const anywhere = entries.filter((entry) => entry.region === null);
  const nearest = here.length > 0 ? here : anywhere.length > 0 ? anywhere : entries;
  const slugs = [...new Set(nearest.map(({ slug }) => slug))].toSorted();
  const [first] = slugs;
  if (first === undefined) return { kind: "NONE" };
  return slugs.length === 1 ? { kind: "FOUND", slug: first } : { kind: "AMBIGUOUS", slugs };
};

/**
 * The food that these words name, in this language (null: any). All words must match: "tomato paste" is never a tomato.
 * A name of the reader's own region goes before one of everywhere, that before one of another region.
 */
export const matchFood = (
  names: FoodNames,
  words: string,
  language: string | null,
  region: string | null,
): FoodMatch => {
  const key = plainWords(words);
  const spoken = (entries: readonly Entry[] | undefined): readonly Entry[] =>
    (entries ?? []).filter(
      (entry) => language === null || entry.language === language || entry.language === anyLanguage,
    );
  const exact = spoken(names.exact.get(key));
  if (exact.length > 0) return decide(exact, region);
  return decide(spoken(names.singular.get(singularPhrase(key, language ?? "en"))), region);
};

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
