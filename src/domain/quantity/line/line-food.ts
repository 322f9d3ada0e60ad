import type { FoodMatch, FoodNames, NamedFood } from "../food-name.js";
import { findFood, matchFood } from "../food-name.js";
import { saysSize } from "../naming/plain-descriptions.js";
import type { ParsedLine } from "../parse.js";
import { ownMeasureName } from "../unit.js";
import { countedOne, ownMeasureOf, sameMeasure, tellsFood } from "./measure-words.js";
import { spokenParts } from "./spoken-part.js";

/** Which food a line names, with what its words say besides. */
export interface LineFood {
  readonly match: FoodMatch;
  readonly part: string | null;
  /** "garlic cloves": a counting word within the food's words. */
  readonly counted: string | null;
  /** "feuille de laurier": the counting word was part of the name, and the line counts pieces. */
  readonly isWhole: boolean;
  /** "firm tofu": form and size are of the name, and say nothing of this line. */
  readonly isDescribed: boolean;
  /** A container was said, and no food of that name is sold so. */
  readonly notSoldSo: boolean;
}

interface LineReader {
  readonly names: FoodNames;
  readonly language: string;
  readonly region: string | null;
}

const NONE: FoodMatch = { kind: "NONE" };

const look = ({ names, language, region }: LineReader, words: string): FoodMatch =>
  words === "" ? NONE : matchFood(names, words, language, region);

/**
 * The same, where nothing is called so as written: in another spelling, number or order, without words that change nothing. A size says
 * how much one is: where the line's own reading left it among the words, only a person can say.
 */
const search = ({ names, language, region }: LineReader, words: string): FoodMatch =>
  words === "" || saysSize(words, language) ? NONE : findFood(names, words, language, region);

/** What a food kept in a container is called beside its plain name. */
const keptNames: Readonly<Record<string, readonly ((words: string) => string)[]>> = {
  en: [(words) => `canned ${words}`, (words) => `tinned ${words}`, (words) => `tinned ${words}, drained`],
  de: [(words) => `${words} aus der Dose`, (words) => `Dosen${words}`],
  fr: [(words) => `${words} en conserve`, (words) => `${words} en boîte`],
  es: [(words) => `${words} en conserva`, (words) => `${words} en lata`, (words) => `${words} de lata`],
  pl: [(words) => `${words} z puszki`],
};

/** Whether a food is known to be sold in such a container: by a measure, a pack or its name. */
export function isSoldIn(food: NamedFood, container: string): boolean {
  const words = [
    ...(food.measures ?? []).flatMap(({ name, one }) => [name, one]),
    ...(food.packs ?? []).map(({ name }) => name.toLowerCase()),
  ];
  return words.some((word) => sameMeasure(container, word));
}

const soldIn = (reader: LineReader, match: FoodMatch, container: string): FoodMatch => {
  const slugs = match.kind === "FOUND" ? [match.slug] : match.kind === "AMBIGUOUS" ? match.slugs : [];
  const foods = slugs.flatMap((slug) => reader.names.foods.get(slug) ?? []);
  const direct = foods.filter((food) => isSoldIn(food, container));
  // A dry food is boiled into the one that is sold so.
  const turned = foods
    .flatMap((food) => food.yields ?? [])
    .flatMap(({ food }) => reader.names.foods.get(food) ?? [])
    .filter((food) => isSoldIn(food, container));
  const found = [...new Set((direct.length > 0 ? direct : turned).map(({ slug }) => slug))].toSorted();
  const [first] = found;
  if (first === undefined) return NONE;
  return found.length === 1 ? { kind: "FOUND", slug: first } : { kind: "AMBIGUOUS", slugs: found };
};

/** In a container only what is sold so: first what is called so, then what the plain name means or turns into. */
function contained(reader: LineReader, words: string, container: string): FoodMatch {
  const called = sameMeasure(container, "tin") ? (keptNames[reader.language] ?? []) : [];
  for (const name of called) {
    const match = look(reader, name(words));
    if (match.kind !== "NONE") return match;
  }
  return soldIn(reader, search(reader, words), container);
}

/** "garlic cloves", "Knoblauchzehen": the food, and what of it is counted. */
function countedWithin(
  reader: LineReader,
  words: string,
): { readonly match: FoodMatch; readonly counted: string } | null {
  const has = (match: FoodMatch, word: string): boolean =>
    match.kind === "FOUND" && ownMeasureOf(word, reader.names.foods.get(match.slug)?.measures ?? []) !== null;
  const at = words.lastIndexOf(" ");
  const apart = at < 0 ? null : countedOne(words.slice(at + 1).toLowerCase(), reader.language);
  if (apart !== null) {
    const match = look(reader, words.slice(0, at));
    if (has(match, apart)) return { match, counted: apart };
  }
  if (at >= 0 && /^(?:leaf|leaves)$/i.test(words.slice(at + 1))) {
    const match = look(reader, words.slice(0, at));
    if (has(match, "leaf")) return { match, counted: "leaf" };
  }
  if (reader.language !== "de") return null;
  for (let cut = words.length - 3; cut > 2; cut -= 1) {
    const one = countedOne(words.slice(cut).toLowerCase(), "de");
    if (one === null) continue;
    const match = look(reader, words.slice(0, cut).replace(/s$/, ""));
    if (has(match, one)) return { match, counted: one };
  }
  return null;
}

/** Longest words in which a compound is looked for. */
const COMPOUND_MAX = 60;

const comesInPieces = ({ names }: LineReader, match: FoodMatch): boolean =>
  match.kind === "FOUND" && (names.foods.get(match.slug)?.measures ?? []).some(({ name }) => name === "piece");

/** "feuille de laurier", "rama de canela", "sticks of cinnamon", "Stange Zimt": the counting word may belong to the name. */
const namedWhole: Readonly<Record<string, (words: string, counted: string) => readonly string[]>> = {
  en: (words, counted) => [`${words} ${counted}`],
  de: (words, counted) => [`${words}${counted}`],
  fr: (words, counted) => [`${counted} de ${words}`, `${counted} d'${words}`],
  es: (words, counted) => [`${counted} de ${words}`],
  pl: (words, counted) => [`${counted} ${words}`],
};

/** The food that a counting word and the words behind it name together, where no food of those words has such a measure. */
function namedAfter(reader: LineReader, words: string, counted: string, match: FoodMatch): FoodMatch {
  if (words.length > COMPOUND_MAX) return NONE;
  const food = match.kind === "FOUND" ? reader.names.foods.get(match.slug) : undefined;
  if (food !== undefined && ownMeasureOf(counted, food.measures ?? []) !== null) return NONE;
  for (const name of namedWhole[reader.language]?.(words, counted) ?? []) {
    const called = look(reader, name);
    if (called.kind === "FOUND") return called;
  }
  return NONE;
}

/** The food that a line names. A container that tells of another food matches only what is sold so. */
export function lineFood(line: ParsedLine, reader: LineReader): LineFood {
  const container = line.amount === null ? null : ownMeasureName(line.amount.unit);
  const plain = { part: line.part, counted: null, isWhole: false, isDescribed: false, notSoldSo: false };
  if (container !== null && tellsFood(container)) {
    const match = contained(reader, line.food, container);
    return match.kind === "NONE"
      ? { ...plain, match: search(reader, line.food), notSoldSo: true }
      : { ...plain, match };
  }
  // "firm tofu", "pan rallado": words that describe may belong to the name.
  const whole = line.whole === undefined ? NONE : look(reader, line.whole);
  if (whole.kind === "FOUND") return { ...plain, match: whole, isDescribed: true };
  if (
    line.food.length <= COMPOUND_MAX &&
    line.amount?.unit === "piece" &&
    !comesInPieces(reader, look(reader, line.food))
  ) {
    const within = countedWithin(reader, line.food);
    if (within !== null) return { ...plain, ...within };
  }
  // "Erbsen (TK)": a remark may belong to the name.
  const [note] = line.notes;
  const remarked = note === undefined ? NONE : look(reader, `${note} ${line.food}`);
  const match = remarked.kind === "FOUND" ? remarked : look(reader, line.food);
  const ofBase = match.kind === "FOUND" && reader.names.foods.get(match.slug)?.base === true;
  if (ofBase) {
    // Egg yolks may be bought in a carton, lemon juice in a bottle. Who names neither takes them of eggs and lemons.
    const spoken = partOf(reader, line.food);
    if (spoken !== null) return { ...plain, ...spoken };
  }
  const named = container === null ? NONE : namedAfter(reader, line.food, container, match);
  if (named.kind === "FOUND") return { ...plain, match: named, isWhole: true };
  if (match.kind !== "NONE") return { ...plain, match };
  if (line.food.length > COMPOUND_MAX) return { ...plain, match: search(reader, line.food) };
  return { ...plain, match: search(reader, line.food), ...partOf(reader, line.food) };
}

/** The part that words name, of a food that has it: "lemon juice". */
function partOf(reader: LineReader, words: string): { readonly match: FoodMatch; readonly part: string } | null {
  if (words.length > COMPOUND_MAX) return null;
  for (const { part, food } of spokenParts(words)) {
    const match = look(reader, food);
    const parts = match.kind === "FOUND" ? (reader.names.foods.get(match.slug)?.parts ?? []) : [];
    if (parts.some(({ name }) => name === part)) return { match, part };
  }
  return null;
}
