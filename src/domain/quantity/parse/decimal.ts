import type { Rational } from "../rational.js";
import { AMOUNT_MAX, DECIMALS_MAX } from "./limits.js";
import type { NumberMarks } from "./number-marks.js";

/** Why a number was not read. */
export type NumberFault =
  /** One mark, two meanings: `1,000` without a locale. */
  | "AMBIGUOUS_SEPARATOR"
  | "BAD_GROUPING"
  | "TOO_MANY_DECIMALS"
  | "TOO_LARGE"
  | "DIVISION_BY_ZERO"
  | "DENOMINATOR_TOO_LARGE"
  | "RANGE_REVERSED";

type ReadDecimal =
  | { readonly ok: true; readonly value: Rational; readonly end: number; readonly foreignMark: boolean }
  | { readonly ok: false; readonly fault: NumberFault; readonly end: number };

const isDigit = (code: number): boolean => code >= 48 && code <= 57;

/** Spaces that hold a number together: no-break, thin, narrow no-break, and the apostrophes of Switzerland. */
const isGroupOnly = (mark: string): boolean => /^[\u00a0\u2009\u202f'’]$/.test(mark);

const isMark = (mark: string): boolean => mark === "." || mark === "," || isGroupOnly(mark);

/** A plain space groups digits only where the locale groups with a space, and only before exactly three digits. */
const isSpaceGroup = (text: string, at: number, marks: NumberMarks | null): boolean =>
  text[at] === " " && marks !== null && /^\s$/.test(marks.group) && /^\d{3}(?!\d)/.test(text.slice(at + 1, at + 5));

/** "1 1/2" with a no-break space: what follows is a fraction, no group. */
const isFractionNext = (text: string, at: number): boolean => /^\s\d{1,2}[/⁄∕]/u.test(text.slice(at, at + 4));

interface Scanned {
  readonly digits: readonly string[];
  readonly marks: readonly string[];
  readonly end: number;
}

const scan = (text: string, start: number, marks: NumberMarks | null): Scanned => {
  const digits: string[] = [];
  const found: string[] = [];
  let [from, at] = [start, start];
  for (;;) {
    while (isDigit(text.charCodeAt(at))) at += 1;
    digits.push(text.slice(from, at));
    const mark = text[at] ?? "";
    const holds = isDigit(text.charCodeAt(at + 1)) && (isMark(mark) || isSpaceGroup(text, at, marks));
    if (!holds || isFractionNext(text, at)) return { digits, marks: found, end: at };
    found.push(mark === " " ? "\u00a0" : mark);
    at += 1;
    from = at;
  }
};

const grouped = (digits: readonly string[]): boolean => {
  const [first = "", ...rest] = digits;
  return first.length >= 1 && first.length <= 3 && !first.startsWith("0") && rest.every((part) => part.length === 3);
};

interface Reading {
  readonly whole: string;
  readonly decimals: string;
  readonly foreignMark: boolean;
}

/** The one possible reading of digits with marks between them, or why there is none or more than one. */
const reading = ({ digits, marks }: Scanned, own: NumberMarks | null): Reading | NumberFault => {
  const last = marks.at(-1) ?? "";
  const head = digits.slice(0, -1);
  const asGroups = { whole: digits.join(""), decimals: "", foreignMark: false };
  const asDecimal = {
    whole: head.join(""),
    decimals: digits.at(-1) ?? "",
    foreignMark: own !== null && own.decimal !== last,
  };
  const oneKind = marks.every((mark) => mark === last || (isGroupOnly(mark) && isGroupOnly(last)));
  if (isGroupOnly(last)) return oneKind && grouped(digits) ? asGroups : "BAD_GROUPING";
  if (!oneKind) {
    const groupsAlike = marks.slice(0, -1).every((mark) => mark === marks[0]) && marks[0] !== last;
    return groupsAlike && grouped(head) ? asDecimal : "BAD_GROUPING";
  }
  if (marks.length > 1) return grouped(digits) ? asGroups : "BAD_GROUPING";
  if (!grouped(digits) || own?.decimal === last) return asDecimal;
  return own?.group === last ? asGroups : "AMBIGUOUS_SEPARATOR";
};

const valueOf = (whole: string, decimals: string): Rational | NumberFault => {
  const kept = decimals.replace(/0+$/, "");
  if (kept.length > DECIMALS_MAX) return "TOO_MANY_DECIMALS";
  const size = Number(whole);
  if (size > AMOUNT_MAX || (size === AMOUNT_MAX && kept !== "")) return "TOO_LARGE";
  const d = 10 ** kept.length;
  return { n: size * d + Number(kept === "" ? "0" : kept), d };
};

/**
 * Reads digits from `start`, with grouping and decimal mark by the locale's `marks`. Without a locale only what can mean
 * one thing is read. `foreignMark`: there was one reading, but not with the mark of that locale (`1.5` in German).
 * null where no digit stands at `start`.
 */
export const readDecimal = (text: string, start: number, marks: NumberMarks | null): ReadDecimal | null => {
  if (!isDigit(text.charCodeAt(start))) return null;
  const scanned = scan(text, start, marks);
  const { end } = scanned;
  const found: Reading | NumberFault =
    scanned.marks.length === 0
      ? { whole: scanned.digits[0] ?? "", decimals: "", foreignMark: false }
      : reading(scanned, marks);
  if (typeof found === "string") return { ok: false, fault: found, end };
  const value = valueOf(found.whole, found.decimals);
  return typeof value === "string"
    ? { ok: false, fault: value, end }
    : { ok: true, value, end, foreignMark: found.foreignMark };
};
