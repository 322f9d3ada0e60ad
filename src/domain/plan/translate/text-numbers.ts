import { numberWords } from "../../quantity/parse/words/number-words.js";
import { languageOf } from "../../quantity/reader-locale.js";
import { extraNumberWords, spaceGroups, unitAfter, type NumberUnit } from "./number-units.js";

/** A number in a text. */
export interface TextNumber {
  /** As it stands there, with its unit where that is known. */
  readonly written: string;
  /** What it may mean: `1,500` is a thousand and a half, or one and a half. */
  readonly values: readonly number[];
  /** null: no unit that is known in all languages. */
  readonly unit: NumberUnit | null;
}

export interface NumbersOfText {
  readonly numbers: readonly TextNumber[];
  /** Values of the words for numbers in it. They are not held against anything, but may be what a digit stands for. */
  readonly words: ReadonlySet<number>;
}

/** Longest text that is looked at, in letters: longer than any that a document may hold. */
const longest = 10_000;

const number = /\d+\s+\d+[/\u2044]\d+|\d+[/\u2044]\d+|\d{1,3}(?:['’]\d{3})+(?:[.,]\d+)?(?!\d)|\d+(?:[.,]\d+)*|\d+/gu;

/**
 * The numbers of a text in digits, of any script, with what they count where a unit of time, temperature, weight, volume or length follows.
 *
 * @param language BCP 47 tag
 */
export function numbersInText(text: string, language: string): NumbersOfText {
  const plain = latinDigits(text.slice(0, longest));
  const grouped = spaceGroups(language) ? plain.replace(/(?<!\d)(\d{1,3}) (?=\d{3}(?!\d))/g, "$1’") : plain;
  const found = [...grouped.matchAll(number)].map((match) => ({
    written: match[0],
    at: match.index,
    end: match.index + match[0].length,
    values: valuesOf(match[0]),
  }));
  const numbers: TextNumber[] = [];
  // A range has its unit behind the second number, so they are read from behind.
  let next: Place | null = null;
  for (const each of found.toReversed()) {
    const behind = grouped.slice(each.end, next?.at ?? each.end + 30);
    const own = unitAfter(behind);
    const isRange: boolean =
      next !== null && /^\s*(?:[-–—]|to|or|and|bis|oder|und|à|ou|et|a|o|y|do|lub|i)\s*$/iu.test(behind);
    const unit: NumberUnit | null = own?.unit ?? (isRange ? unitOf(next) : null);
    const before = grouped.slice(Math.max(0, each.at - mostBefore), each.at);
    const isCold = unit?.of === "TEMPERATURE" && isMinus(before) && !isAfterNumber(before);
    const values = isCold ? each.values.map((value) => -value) : each.values;
    numbers.push({ written: `${isCold ? "−" : ""}${each.written}${own?.written ?? ""}`, values, unit });
    next = { at: each.at, unit };
  }
  return { numbers: withHours(numbers.toReversed(), found, grouped), words: wordsFor(plain, language) };
}

interface Place {
  readonly at: number;
  readonly unit: NumberUnit | null;
}

const unitOf = (place: Place | null): NumberUnit | null => place?.unit ?? null;

/** Letters before a number that are looked at for its sign. */
const mostBefore = 40;

const isMinus = (before: string): boolean => /(?:^|[\s(])(?:[-−–]|minus|moins|menos)\s?$/iu.test(before);

/** "180 – 200 °C" is a range, and "– 18 °C" after words is a frost. */
const isAfterNumber = (before: string): boolean => /\d\s*[-−–]\s?$/u.test(before);

/** "1 h 30 min" is one length of time. */
function withHours(
  numbers: readonly TextNumber[],
  places: readonly { readonly end: number; readonly at: number }[],
  text: string,
): readonly TextNumber[] {
  const done: TextNumber[] = [];
  for (const [index, each] of numbers.entries()) {
    const last = done.at(-1);
    const between = text.slice(places[index - 1]?.end ?? 0, places[index]?.at ?? 0);
    const isHours = last?.unit?.of === "MINUTES" && last.unit.times === 60;
    const goesOn = each.unit?.of === "MINUTES" && each.unit.times === 1;
    if (last !== undefined && isHours && goesOn && /^\s?\p{L}+\.?,?\s(?:(?:and|und|et|y|i)\s)?$/iu.test(between)) {
      done[done.length - 1] = {
        written: `${last.written} ${each.written}`,
        values: [(last.values[0] ?? 0) * 60 + (each.values[0] ?? 0)],
        unit: { of: "MINUTES", times: 1 },
      };
    } else done.push(each);
  }
  return done;
}

/** Digits of any script as those of this one, and ½ as 1⁄2. */
const latinDigits = (text: string): string =>
  text
    .replace(/[º˚]/gu, "°")
    // A space that no line ends at holds thousands together.
    .replace(/(\d)[\u2009\u00a0\u202f](?=\d{3}(?!\d))/gu, "$1’")
    .replace(/(\d)(?=[¼-¾⅐-⅞])/gu, "$1 ")
    .normalize("NFKC")
    .replace(/\p{Nd}/gu, (digit) => (digit >= "0" && digit <= "9" ? digit : String(digitOf(digit))));

/** Digits of one script follow one another, and their zero is the first. */
function digitOf(digit: string): number {
  const point = digit.codePointAt(0) ?? 0;
  let before = 0;
  while (before < 9 && /\p{Nd}/u.test(String.fromCodePoint(point - before - 1))) before += 1;
  return before;
}

function valuesOf(written: string): readonly number[] {
  const [, whole = "0", over, under] = /^(?:(\d+)\s+)?(\d+)[/\u2044](\d+)$/u.exec(written) ?? [];
  if (over !== undefined) {
    const value = Number(whole) + Number(over) / Number(under);
    return Number.isFinite(value) ? [value] : [Number(over)];
  }
  const plain = written.replace(/['’]/gu, "");
  const marks = [...plain.replace(/\d/gu, "")];
  const last = marks.at(-1);
  if (last === undefined) return [Number(plain)];
  const asDecimal = decimal(plain, last);
  const isGrouped = /^\d{1,3}(?:[.,]\d{3})+$/u.test(plain) && new Set(marks).size === 1;
  if (isGrouped)
    return marks.length === 1
      ? [Number(plain.replace(/[.,]/gu, "")), asDecimal]
      : [Number(plain.replace(/[.,]/gu, ""))];
  return [asDecimal];
}

const decimal = (plain: string, mark: string): number => {
  const at = plain.lastIndexOf(mark);
  return Number(`${plain.slice(0, at).replace(/[.,]/gu, "")}.${plain.slice(at + 1)}`);
};

function wordsFor(text: string, language: string): ReadonlySet<number> {
  const base = languageOf(language);
  const known = numberWords[base];
  const values = new Set<number>();
  for (const [word] of text.toLowerCase().matchAll(/\p{L}+/gu)) {
    const value = known?.get(word);
    if (value !== undefined) values.add(value.n / value.d);
    const extra = extraNumberWords.get(`${base} ${word}`);
    if (extra !== undefined) values.add(extra);
  }
  return values;
}
