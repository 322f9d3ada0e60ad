import type { Rational } from "../rational.js";
import { readDecimal, type NumberFault } from "./decimal.js";
import { AMOUNT_MAX, DENOMINATOR_MAX } from "./limits.js";
import type { NumberMarks } from "./number-marks.js";

type ReadNumeral =
  | { readonly ok: true; readonly value: Rational; readonly end: number; readonly foreignMark: boolean }
  | { readonly ok: false; readonly fault: NumberFault; readonly end: number };

const glyphs: ReadonlyMap<string, Rational> = new Map([
  ["½", { n: 1, d: 2 }],
  ["⅓", { n: 1, d: 3 }],
  ["⅔", { n: 2, d: 3 }],
  ["¼", { n: 1, d: 4 }],
  ["¾", { n: 3, d: 4 }],
  ["⅕", { n: 1, d: 5 }],
  ["⅖", { n: 2, d: 5 }],
  ["⅗", { n: 3, d: 5 }],
  ["⅘", { n: 4, d: 5 }],
  ["⅙", { n: 1, d: 6 }],
  ["⅚", { n: 5, d: 6 }],
  ["⅐", { n: 1, d: 7 }],
  ["⅛", { n: 1, d: 8 }],
  ["⅜", { n: 3, d: 8 }],
  ["⅝", { n: 5, d: 8 }],
  ["⅞", { n: 7, d: 8 }],
  ["⅑", { n: 1, d: 9 }],
  ["⅒", { n: 1, d: 10 }],
]);

/** Solidus, fraction slash (U+2044) and division slash (U+2215). */
const isSlash = (mark: string | undefined): boolean => mark === "/" || mark === "⁄" || mark === "∕";

const isSpace = (code: number): boolean => code === 32 || code === 0xa0 || code === 0x2009 || code === 0x202f;

/** Index of the first character that is no space. */
export const skipSpaces = (text: string, start: number): number => {
  let at = start;
  while (isSpace(text.charCodeAt(at))) at += 1;
  return at;
};

const wholeAt = (text: string, start: number): { readonly value: number; readonly end: number } | null => {
  let at = start;
  let value = 0;
  for (let code = text.charCodeAt(at); code >= 48 && code <= 57; code = text.charCodeAt(at)) {
    value = value * 10 + code - 48;
    at += 1;
  }
  return at === start ? null : { value, end: at };
};

/** `1/2`, `1⁄2` or `½` at this place. */
const fractionAt = (text: string, start: number): ReadNumeral | null => {
  const glyph = glyphs.get(text[start] ?? "");
  if (glyph !== undefined) return { ok: true, value: glyph, end: start + 1, foreignMark: false };
  const top = wholeAt(text, start);
  if (top === null || !isSlash(text[top.end])) return null;
  const bottom = wholeAt(text, top.end + 1);
  if (bottom === null) return null;
  const { end } = bottom;
  if (bottom.value === 0) return { ok: false, fault: "DIVISION_BY_ZERO", end };
  if (bottom.value > DENOMINATOR_MAX) return { ok: false, fault: "DENOMINATOR_TOO_LARGE", end };
  if (top.value > AMOUNT_MAX) return { ok: false, fault: "TOO_LARGE", end };
  return { ok: true, value: { n: top.value, d: bottom.value }, end, foreignMark: false };
};

const JOINER = /(?:\s+(?:and|&|und|et|y|i)\s+|\s*[-–—]\s*|\s*)/y;

/** What joins a whole number to its fraction: nothing, a space, a hyphen (`1-1/2`) or "and". */
const afterJoiner = (text: string, start: number): number => {
  const code = text.charCodeAt(start);
  if (code !== 32 && code !== 45 && code < 128) return start;
  JOINER.lastIndex = start;
  return JOINER.test(text) ? JOINER.lastIndex : start;
};

/**
 * One number at `start`: `2`, `1,5`, `1/2`, `½`, `1½`, `1 1/2`, `1-1/2`. A whole number and a fraction below one belong
 * together; `1 3/2` does not. null where no number begins.
 */
export const readNumeral = (text: string, start: number, marks: NumberMarks | null): ReadNumeral | null => {
  const fraction = fractionAt(text, start);
  if (fraction !== null) return fraction;
  const whole = readDecimal(text, start, marks);
  if (whole === null || !whole.ok || whole.value.d !== 1) return whole;
  const rest = fractionAt(text, afterJoiner(text, whole.end));
  if (rest === null) return whole;
  if (!rest.ok) return rest;
  const { n, d } = rest.value;
  if (n >= d) return whole;
  return { ok: true, value: { n: whole.value.n * d + n, d }, end: rest.end, foreignMark: whole.foreignMark };
};
