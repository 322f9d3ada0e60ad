import { unlimitedWork, type Work } from "../counted-work.js";
import { memoizeLatest } from "../memoize.js";
import type { Measured, MeasureSystem } from "../model/amount.js";
import type { Food, Pack } from "../model/food.js";
import { regionCovers } from "../model/region.js";
import { failed, ok, type Path, type Problem, type Result } from "../problem.js";
import { toDimensionOf, type MeasureFacts } from "./convert.js";
import { lineAmount } from "./line/line-amount.js";
import { formatRationalUnit } from "./line/format-rational-unit.js";
import { ownMeasureOf, sameMeasure } from "./line/measure-words.js";
import { countWords } from "./parse/words/count-words.js";
import { scaleMeasured } from "./parse/measured-sum.js";
import { parseAmount, parseLine, type ParsedLine } from "./parse.js";
import { compareRationals, toNumber } from "./rational.js";
import { singularPhrase } from "./singular.js";
import { languageOf } from "./reader-locale.js";
import { ownMeasureName, ownMeasureRef, standardUnit } from "./unit.js";

/** What an amount is of: its measures, and the packs it is sold in, where it is a food. */
export interface SpokenThing extends MeasureFacts {
  readonly slug: string;
  readonly packs: Food["packs"];
}

interface SpokenContext {
  /** BCP 47 tag of the reader; null: any language that the text can be read in. */
  readonly locale: string | null;
  readonly measures: MeasureSystem;
  /** Where the reader shops: packs of other regions are meant only where none is sold there. */
  readonly region: string | null;
  readonly path: Path;
  /** What a pack of this name is called in other languages; left out: nothing else. */
  readonly packWords?: (name: string) => readonly string[];
  readonly work?: Work;
}

interface LineAsked {
  readonly text: string;
  readonly locale: string | null;
  readonly measures: MeasureSystem;
  readonly work: Work;
}

/** Words are looked for in several languages. */
const stepsOfLine = 40;

/** A household goes with many plans, and what its words say does not depend on them. */
const spokenLine = memoizeLatest(
  "spoken-lines",
  4_000,
  ({ text, locale, measures }: LineAsked) => `${locale ?? ""} ${measures} ${text}`,
  ({ text, locale, measures, work }) => {
    work.step(stepsOfLine);
    return parseLine(text, { locale, measures });
  },
);

/** A household does not count out more pieces than this: "500" may as well be grams. */
const mostPieces = 20;

const languages = Object.keys(countWords);

/**
 * An amount as people say it: `500g`, `1/2 lb`, `half a bag`, `2 tins`, `une bouteille`, `1 Beutel (500 g)`. A word for a pack is the food's own
 * measure of that name, or the pack of it that is sold; packs of several sizes are a question with each of them as a choice.
 *
 * Problems: those of `parseAmount`, and BAD_AMOUNT where words are left over, a number reads differently in the reader's language, or so many
 * pieces may be grams.
 */
export function readSpokenAmount(text: string, thing: SpokenThing, context: SpokenContext): Result<Measured> {
  const { path } = context;
  const plain = plainAmount(text, thing, context);
  if (plain.ok) return plain;
  // A number that cannot be read, or may be two, is none in any language.
  const [fault] = plain.problems;
  const isOfWords = fault?.code === "UNKNOWN_UNIT" || (fault?.code === "BAD_AMOUNT" && wordFaults.has(fault.why));
  if (!isOfWords) return plain;
  const spoken = context.locale === null ? null : languageOf(context.locale);
  const tried = [...new Set([...(spoken === null ? [] : [spoken]), "en", ...languages])];
  const written = text.trim();
  const counted = countedPack(written, thing, context);
  if (counted !== null) return counted;
  // One word may be one of something: "Flasche".
  for (const count of /^\p{L}+$/u.test(written) ? ["", "1 "] : [""])
    for (const language of tried) {
      const line = spokenLine({
        text: `${count}${written}`,
        locale: language === spoken ? context.locale : language,
        measures: context.measures,
        work: context.work ?? unlimitedWork,
      });
      const pack = count === "" ? packNamed(line, language, thing, context) : null;
      if (pack !== null && line.amount !== null) return inKind(line.amount, pack, thing, context);
      if (!isWhole(line)) continue;
      if (count !== "" && ownMeasureName(line.amount.unit) === null) continue;
      const found = amountOf(line, line.amount, thing, context);
      return found ?? failed([{ code: "BAD_AMOUNT", path, written: shortened(text), why: "NOT_SOLD_SO" }]);
    }
  return plain;
}

/** Faults of a text that begins with words, or goes on with words that are no unit. */
const wordFaults: ReadonlySet<string> = new Set(["NO_NUMBER", "EXPONENT_NOTATION"]);

/** Numbers and units alone, with the marks of the reader's language; what these and English read differently is not read. */
function plainAmount(text: string, thing: SpokenThing, context: SpokenContext): Result<Measured> {
  const { measures, path, locale } = context;
  const inLocale = (of: string | null): Result<Measured> =>
    parseAmount(text, { locale: of, measures, own: thing.measures, path });
  const english = inLocale("en");
  const read = locale !== null && languageOf(locale) === "en" ? english : inLocale(locale);
  if (!read.ok && !english.ok) return locale === null ? english : read;
  // Without a language numbers are English, as a program writes them.
  if (locale !== null && read.ok && english.ok && !isSame(read.value, english.value))
    return failed([{ code: "BAD_AMOUNT", path, written: shortened(text), why: "AMBIGUOUS_SEPARATOR" }]);
  const chosen = locale === null && english.ok ? english : read.ok ? read : english;
  if (!chosen.ok) return chosen;
  const found = chosen.value;
  const own = ownMeasureName(found.unit);
  if (own !== null && !text.includes("own:")) return inKind(found, own, thing, context);
  return found.unit === "piece" && /[\d½⅓⅔¼¾⅛]\s*$/.test(text) ? inPieces(found, text, thing, context) : ok(found);
}

const isSame = (one: Measured, other: Measured): boolean =>
  one.unit === other.unit && one.low === other.low && one.high === other.high;

/** A bare number counts pieces of what comes in pieces. */
function inPieces(found: Measured, text: string, thing: SpokenThing, { path }: SpokenContext): Result<Measured> {
  const comesInPieces =
    thing.shoppedBy === "COUNT" || thing.measures.some(({ name, pieces }) => name === "piece" || pieces !== null);
  return comesInPieces && toNumber(found.high) <= mostPieces
    ? ok(found)
    : failed([{ code: "BAD_AMOUNT", path, written: shortened(text), why: "NO_UNIT" }]);
}

/** "half a box (6)": a pack whose size is a count, which is no size to a line of a recipe. */
function countedPack(written: string, thing: SpokenThing, context: SpokenContext): Result<Measured> | null {
  const [, before = "", inside = ""] = /^([^()]*)\(([^()]*)\)$/.exec(written) ?? [];
  if (before.trim() === "" || inside.trim() === "") return null;
  const { locale, measures, path } = context;
  const size = parseAmount(inside, { locale: locale ?? "en", measures, own: thing.measures, path });
  const dimension = size.ok ? standardUnit(size.value.unit)?.dimension : null;
  if (!size.ok || dimension === "MASS" || dimension === "VOLUME") return null;
  const { low, unit } = size.value;
  const packs = thing.packs.filter(({ content }) => content.unit === unit && compareRationals(content.low, low) === 0);
  if (packs.length === 0)
    return failed([{ code: "BAD_AMOUNT", path, written: shortened(written), why: "NOT_SOLD_SO" }]);
  return readSpokenAmount(before, { ...thing, measures: [], packs }, context);
}

/** "half a net": the word of a pack that counts nothing but what is sold in it. */
function packNamed(
  { amount, food, part, notes, pack }: ParsedLine,
  language: string,
  { packs }: SpokenThing,
  { packWords }: SpokenContext,
): string | null {
  if (amount?.unit !== "piece" || food === "" || part !== null || notes.length > 0 || pack !== null) return null;
  const written = food.toLowerCase();
  const said = [written, singularPhrase(written, language)];
  const isSaid = (name: string): boolean => said.includes(name.toLowerCase());
  return packs.find(({ name }) => isSaid(name) || packWords?.(name).some(isSaid) === true)?.name.toLowerCase() ?? null;
}

type WholeLine = ParsedLine & { readonly amount: Measured };

/** Whether all of a text was read as an amount. */
const isWhole = (line: ParsedLine): line is WholeLine =>
  line.amount !== null &&
  line.food === "" &&
  line.part === null &&
  line.form === null &&
  line.preparation === null &&
  line.notes.length === 0 &&
  line.alternates.length === 0 &&
  line.reasons.every(({ code }) => code === "NO_FOOD" || code === "COUNT_ASSUMED");

function amountOf(
  line: WholeLine,
  amount: Measured,
  thing: SpokenThing,
  context: SpokenContext,
): Result<Measured> | null {
  const word = ownMeasureName(amount.unit);
  if (line.pack === null) return word === null ? ok(amount) : inKind(amount, word, thing, context);
  // "2 tins of 400 g" of what is counted drained are two of its tins.
  const own = word === null ? null : ownMeasureOf(word, thing.measures);
  if (own === null || !isDrained(own)) return ok(line.pack.net);
  const named = {
    slug: thing.slug,
    names: [],
    measures: thing.measures,
    densities: thing.densities,
    packs: thing.packs,
  };
  const food = { match: { kind: "FOUND", slug: thing.slug }, part: null, counted: null } as const;
  const said = { ...food, isWhole: false, isDescribed: false, notSoldSo: false };
  const drained = lineAmount({ ...line, food: thing.slug }, said, named);
  return drained.amount === null ? null : ok(drained.amount);
}

const isDrained = ({ one }: Food["measures"][number]): boolean =>
  /drained|abgetropft|égoutt|escurrid|odsącz/iu.test(one);

interface Kind {
  readonly content: Measured;
}

/** So many packs, or of the food's own measures, that this word may mean: all of one size, or it is a question. */
function inKind(count: Measured, word: string, thing: SpokenThing, context: SpokenContext): Result<Measured> {
  const { path } = context;
  const own = ownMeasureOf(word, thing.measures);
  const measure: Kind[] =
    own === null ? [] : [{ content: one(own.name === "piece" ? "piece" : ownMeasureRef(own.name)) }];
  const packs = own !== null && isDrained(own) ? [] : packsCalled(word, thing.packs, context.region);
  const kinds = distinct([...measure, ...packs.map(({ content }) => ({ content }))], thing);
  const [only] = kinds;
  if (only === undefined) {
    const known = [...thing.measures.map(({ name }) => name), ...thing.packs.map(({ name }) => name)];
    return failed([unknownUnit(word, [...new Set(known)].slice(0, 3), path)]);
  }
  if (kinds.length > 1) {
    const candidates = kinds.map(({ content }) => `${word} (${sizeText(content, thing)})`);
    return failed([{ code: "AMBIGUOUS_UNIT", path, unit: word, candidates }]);
  }
  // Of a pack that holds more or less, no more than it holds at least.
  const times = [count.low, count.high].map((each) => scaleMeasured({ ...only.content, high: only.content.low }, each));
  const [low, high] = times;
  if (low === undefined || low === null || high === undefined || high === null)
    return failed([{ code: "BAD_AMOUNT", path, written: formatRationalUnit(count), why: "DENOMINATOR_TOO_LARGE" }]);
  return ok({ low: low.low, high: high.high, unit: only.content.unit });
}

const one = (unit: string): Measured => ({ low: "1", high: "1", unit });

const unknownUnit = (unit: string, nearest: readonly string[], path: Path): Problem => ({
  code: "UNKNOWN_UNIT",
  path,
  unit,
  nearest,
});

/** What one holds, in grams or millilitres where that is known: what a reader finds on the pack. */
const sizeText = (content: Measured, thing: MeasureFacts): string => {
  if (content.unit === "piece") return content.low;
  const own = ownMeasureName(content.unit);
  if (own === null) return formatRationalUnit(content);
  if (content.low !== "1") return `${content.low} ${own}`;
  for (const [dimension, unit] of [
    ["MASS", "g"],
    ["VOLUME", "ml"],
  ] as const) {
    const size = toDimensionOf(toNumber(content.low), content.unit, dimension, thing);
    if (size !== null && size !== undefined) return `${String(Number(size.low.toFixed(2)))} ${unit}`;
  }
  return formatRationalUnit(content);
};

/** Packs of that kind, sold whole: those of the reader's region, or of any where none is sold there. */
function packsCalled(word: string, packs: readonly Pack[], region: string | null): readonly Pack[] {
  const called = packs.filter((pack) => pack.loose === undefined && isCalled(word, pack.name));
  const here = called.filter((pack) => region === null || pack.region === null || regionCovers(pack.region, region));
  return here.length > 0 ? here : called;
}

/** A pack is called by any word of its name: "bag", "family bag", "Beutel". */
const isCalled = (word: string, name: string): boolean =>
  name
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .flatMap((each) => [each, ...Object.values(countWords).flatMap((words) => words.get(each)?.one ?? [])])
    .concat(name.toLowerCase())
    .some((each) => each !== "" && sameMeasure(word, each));

/** Each size once: a kilogram and 1000 g are the same, and so is a tin and the pack that holds one. */
function distinct(kinds: readonly Kind[], thing: MeasureFacts): readonly Kind[] {
  const kept: Kind[] = [];
  for (const kind of kinds) if (!kept.some(({ content }) => holdSame(content, kind.content, thing))) kept.push(kind);
  return kept;
}

/** Contents that differ by less than this share are of one size: one was weighed, the other is printed on it. */
const sameSize = 0.02;

function holdSame(a: Measured, b: Measured, thing: MeasureFacts): boolean {
  if (a.unit === b.unit) return compareRationals(a.low, b.low) === 0;
  return (["MASS", "VOLUME", "COUNT"] as const).some((dimension) => {
    const [first, second] = [a, b].map(({ low, unit }) => toDimensionOf(toNumber(low), unit, dimension, thing)?.low);
    if (first === undefined || second === undefined) return false;
    return Math.abs(first - second) <= sameSize * Math.max(first, second);
  });
}

const shortened = (text: string): string => (text.length > 60 ? `${text.slice(0, 60)}…` : text);
