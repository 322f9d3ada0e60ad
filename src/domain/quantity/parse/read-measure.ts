import type { Rational } from "../rational.js";
import type { NumberFault } from "./decimal.js";
import type { LineContext } from "./line-context.js";
import { skipSpaces } from "./numeral.js";
import type { LineModifier, LineReasonCode, NoAmount } from "./parsed-line.js";
import { readRange } from "./range.js";
import { isSizeUnit, readUnit, type ReadUnit } from "./read-unit.js";
import { amountlessWords } from "./words/amountless-words.js";
import { countWords, type CountWord } from "./words/count-words.js";
import { fillWords, formAdverbs, formWords, sizeWords } from "./words/form-words.js";
import { numberWords } from "./words/number-words.js";
import { bareWord, wordEnd } from "./word-at.js";

export interface Ends {
  readonly low: Rational;
  readonly high: Rational;
}

export interface PackSize extends Ends {
  readonly unit: ReadUnit;
}

export interface ReadMeasure extends Ends {
  readonly kind: "MEASURE";
  /** null: no unit word, so it counts. */
  readonly unit: ReadUnit | null;
  readonly size: PackSize | null;
  readonly modifiers: readonly LineModifier[];
  readonly notes: readonly string[];
  /** "1 packed cup": a form said before the unit. */
  readonly forms: readonly string[];
  readonly reasons: readonly LineReasonCode[];
  readonly end: number;
}

type Measure =
  | ReadMeasure
  | { readonly kind: "AMOUNTLESS"; readonly noAmount: NoAmount; readonly end: number }
  | { readonly kind: "FAULT"; readonly fault: NumberFault; readonly end: number };

const ONE: Rational = { n: 1, d: 1 };

interface Counted extends Ends {
  readonly end: number;
  readonly foreignMark: boolean;
  readonly inWords: boolean;
}

type Count = Counted | { readonly fault: NumberFault; readonly end: number };

/** "half a lemon", "a dozen": the article after a number word says nothing more. */
const ARTICLES = new Set(["a", "an", "einer", "eine", "de"]);

const countInWords = (text: string, start: number, { language }: LineContext): Counted | null => {
  const words = numberWords[language] ?? numberWords["en"];
  const end = wordEnd(text, start);
  const value = words?.get(bareWord(text, start, end));
  if (value === undefined) return null;
  const next = skipSpaces(text, end);
  const nextEnd = wordEnd(text, next);
  const nextWord = bareWord(text, next, nextEnd);
  const share = value.n === 1 && value.d === 1 ? words?.get(nextWord) : undefined;
  const isShare = share !== undefined && share.d > 1;
  const found = isShare ? share : value;
  const stop = isShare || (value.d > 1 && ARTICLES.has(nextWord)) ? nextEnd : end;
  return { low: found, high: found, end: stop, foreignMark: false, inWords: true };
};

const count = (text: string, start: number, context: LineContext): Count | null => {
  const range = readRange(text, start, context.marks);
  if (range === null) return countInWords(text, start, context);
  if (!range.ok) return range;
  const { low, high, end, foreignMark } = range;
  return { low, high, end, foreignMark, inWords: false };
};

interface Before {
  readonly at: number;
  readonly modifiers: readonly LineModifier[];
  readonly notes: readonly string[];
  readonly forms: readonly string[];
}

const none: Before = { at: 0, modifiers: [], notes: [], forms: [] };

const NO_COUNTS: ReadonlyMap<string, CountWord> = new Map();

/** Digits, brackets and signs; NaN is the end of the text. */
const isNoLetter = (code: number): boolean => !(code > 64);

/** Words such as "heaping", "large" and "packed" from `start` on. `counts`: words that count here and describe elsewhere. */
const describing = (text: string, start: number, sizes: boolean, counts = NO_COUNTS): Before => {
  let at = skipSpaces(text, start);
  if (isNoLetter(text.charCodeAt(at))) return { at, modifiers: [], notes: [], forms: [] };
  const modifiers: LineModifier[] = [];
  const notes: string[] = [];
  const forms: string[] = [];
  for (;;) {
    const end = wordEnd(text, at);
    const word = bareWord(text, at, end);
    const fill = end === at ? undefined : fillWords.get(word);
    if (fill !== undefined) modifiers.push(fill);
    else if (sizes && sizeWords.has(word) && !isUnitAsWritten(text.slice(at, end))) notes.push(text.slice(at, end));
    else if (sizes && formWords.has(word) && !counts.has(word)) forms.push(formWords.get(word) ?? word);
    else if (!(sizes && formAdverbs.has(word))) return { at, modifiers, notes, forms };
    at = skipSpaces(text, end);
  }
};

/** "KL" is a spoon in capitals, and "kl." small. */
const isUnitAsWritten = (word: string): boolean => /^KL\.?$/.test(word);

/** A length is no amount: "2-inch piece". */
const LENGTH = /[ -]?(?:inch(?:es)?|in\.|cm|mm|["″])(?![a-z])[ -]*/iy;
const LENGTH_STARTS = new Set([...'icmICM"″']);

const afterLength = (text: string, start: number): number | null => {
  const joined = text[start] === " " || text[start] === "-";
  if (!LENGTH_STARTS.has(text[joined ? start + 1 : start] ?? "")) return null;
  LENGTH.lastIndex = start;
  return LENGTH.test(text) ? LENGTH.lastIndex : null;
};

interface Sized {
  readonly size: PackSize | null;
  readonly end: number;
  readonly reasons: readonly LineReasonCode[];
  readonly notes: readonly string[];
}

const TIMES = /\s*[x×]\s*(?=\d)/iy;

/** The size of one: "(15-oz)", "x 400g", or a second number before the container ("1 14-oz can"). */
const packSize = (text: string, start: number, context: LineContext): Sized => {
  const none: Sized = { size: null, end: start, reasons: [], notes: [] };
  TIMES.lastIndex = start;
  const times = TIMES.test(text) ? TIMES.lastIndex : null;
  const open = skipSpaces(text, start);
  const bracket = text[open] === "(";
  const from = times ?? (bracket ? open + 1 : open);
  if (times === null && !bracket && open === start) return none;
  const inside = describing(text, from, false);
  const range = readRange(text, inside.at, context.marks);
  if (range === null || !range.ok) return none;
  const length = afterLength(text, range.end);
  if (length !== null && (!bracket || text[length] === ")")) {
    const end = bracket ? length + 1 : length;
    return { size: null, end, reasons: ["SIZE_BY_LENGTH"], notes: [text.slice(from, length).trim()] };
  }
  const unit = readUnit(text, range.end, context);
  if (unit === null || !isSizeUnit(unit)) return none;
  const after = skipSpaces(text, unit.end);
  if (bracket && text[after] !== ")") return none;
  const end = bracket ? after + 1 : unit.end;
  return { size: { low: range.low, high: range.high, unit }, end, reasons: [], notes: [] };
};

const containerAfter = (text: string, unit: ReadUnit, context: LineContext): ReadUnit | null => {
  if (!isSizeUnit(unit)) return null;
  const next = readUnit(text, unit.end, context);
  return next?.kind === "CONTAINER" ? next : null;
};

/** Both lists, without a copy where one is empty: most lines have neither. */
const joined = <T>(a: readonly T[], b: readonly T[]): readonly T[] =>
  a.length === 0 ? b : b.length === 0 ? a : [...a, ...b];

/** A hyphen and a word, or a per cent sign, make the number part of a name: "7-grain bread", "2% milk". */
const isPartOfName = (text: string, end: number): boolean =>
  text[end] === "%" || (text[end] === "-" && /\p{L}/u.test(text[end + 1] ?? ""));

/**
 * A measure at `start`: number, range or number word; size of the pack; words such as "heaping"; unit. null where none
 * begins there.
 */
export const readMeasure = (text: string, start: number, context: LineContext): Measure | null => {
  const before = describing(text, start, false);
  const found = count(text, before.at, context);
  if (found !== null && "fault" in found) return { kind: "FAULT", fault: found.fault, end: found.end };
  const from = found?.end ?? before.at;
  const noAmount = found === null || found.inWords || text[from] === " " ? amountlessAt(text, from) : null;
  if (noAmount !== null) return noAmount;
  if (found === null) return null;
  const mark: readonly LineReasonCode[] = found.foreignMark ? ["MARK_OF_OTHER_LOCALE"] : [];
  const length = afterLength(text, from);
  const sized: Sized =
    length === null
      ? packSize(text, from, context)
      : { size: null, end: length, reasons: ["SIZE_BY_LENGTH"], notes: [text.slice(before.at, length).trim()] };
  const between = describing(text, sized.end, true, countWords[context.language]);
  const hyphened = sized.end === from && length === null && text[from] === "-";
  const unit = readUnit(text, hyphened ? from : between.at, context);
  if (unit === null && isPartOfName(text, from) && sized.end === from) return null;
  const container = unit === null || sized.size !== null ? null : containerAfter(text, unit, context);
  const written = unit === null ? { modifiers: [], notes: [], forms: [] } : between;
  const modifiers = joined(before.modifiers, written.modifiers);
  const notes = joined(sized.notes, written.notes);
  const { forms } = written;
  if (unit !== null && container !== null) {
    const reasons: readonly LineReasonCode[] = [...mark, ...sized.reasons, "COUNT_ASSUMED"];
    const size = { low: found.low, high: found.high, unit };
    const { end } = container;
    return { kind: "MEASURE", low: ONE, high: ONE, unit: container, size, modifiers, notes, forms, reasons, end };
  }
  // "1 cuillère à soupe bombée": how full the spoon is may stand behind it.
  const fill = unit?.kind === "STANDARD" ? describing(text, unit.end, false) : none;
  const filledEnd = fill.modifiers.length > 0 ? fill.at : (unit?.end ?? from);
  const isCount = unit !== null && (sized.size === null || unit.kind !== "STANDARD" || unit.unit === "piece");
  return {
    kind: "MEASURE",
    low: length === null ? found.low : ONE,
    high: length === null ? found.high : ONE,
    unit: isCount ? unit : null,
    size: sized.size,
    modifiers: joined(modifiers, fill.modifiers),
    notes,
    forms,
    reasons: joined(mark, sized.reasons),
    end: isCount ? filledEnd : sized.end,
  };
};

/** "pinch", "a few": words in the place of a measure that measure nothing. */
const amountlessAt = (text: string, start: number): Measure | null => {
  const from = describing(text, start, true).at;
  const end = wordEnd(text, from);
  const noAmount = end === from ? undefined : amountlessWords.get(bareWord(text, from, end));
  return noAmount === undefined ? null : { kind: "AMOUNTLESS", noAmount, end };
};
