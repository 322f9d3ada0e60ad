// @ts-nocheck
import type { UnitRef } from "../../model/amount.js";
import { findUnit, ownMeasureRef, standardUnit } from "../unit.js";
import { unitWords } from "../units/unit-words.js";
import type { LineContext } from "./line-context.js";
import { skipSpaces } from "./numeral.js";
import { countWords } from "./words/count-words.js";
import { bareWord, wordEnd } from "./word-at.js";

export interface ReadUnit {
  readonly unit: UnitRef;
  /** More than one: the plan's measures leave the size open, and `unit` is only the first of them. */
  readonly candidates: readonly UnitRef[];
  readonly word: string;
  readonly kind: "STANDARD" | "CONTAINER" | "COUNT";
  readonly end: number;
}

/** First words of unit names of several words, so that most lines never try those. */
const longNameStarts: ReadonlySet<string> = new Set(
  Object.values(unitWords).flatMap((words) =>
    [...words.keys()].filter((word) => word.includes(" ")).map((word) => (word.split(" ")[0] ?? "").replace(/\.$/, "")),
  ),
);

/** Most words of a unit's name. */
const NAME_WORDS = 4;

/** Units nobody means in a line: the word is a food's ("2 stone fruits"), or only a component's. */
const notInLines: ReadonlySet<UnitRef> = new Set(["stone", "batch"]);

const standard = (text: string, start: number, end: number, context: LineContext): ReadUnit | null => {
  const word = text.slice(start, end);
  const found = findUnit(word, context);
  if (found === null) return null;
  const candidates = found.kind === "FOUND" ? [found.id] : found.candidates;
  const [unit] = candidates;
  if (unit === undefined || notInLines.has(unit)) return null;
  return { unit, candidates, word, kind: "STANDARD", end };
};

const longName = (text: string, start: number, context: LineContext): ReadUnit | null => {
  const ends = [wordEnd(text, start)];
  while (ends.length < NAME_WORDS) {
    const last = ends.at(-1) ?? start;
    const next = wordEnd(text, skipSpaces(text, last));
    if (next === last) break;
    ends.push(next);
  }
  for (const end of ends.slice(1).toReversed()) {
    const found = standard(text, start, end, context);
    if (found !== null) return found;
  }
  return null;
};

/** "cup(s)": the bracket belongs to the word. */
const afterOptionalPlural = (text: string, end: number): number => (text.startsWith("(s)", end) ? end + 3 : end);

/** The unit, container or counting word at `start` (spaces and the hyphen of "15-oz" skipped); null where none stands. */
export const readUnit = (text: string, start: number, context: LineContext): ReadUnit | null => {
  const from = text[start] === "-" ? start + 1 : skipSpaces(text, start);
  const end = wordEnd(text, from);
  if (end === from) return null;
  const bare = bareWord(text, from, end);
  const long = longNameStarts.has(bare) ? longName(text, from, context) : null;
  if (long !== null) return long;
  const counted = (countWords[context.language] ?? countWords["en"])?.get(bare);
  if (counted !== undefined) {
    const unit = ownMeasureRef(counted.one);
    const kind = counted.container ? "CONTAINER" : "COUNT";
    return { unit, candidates: [unit], word: bare, kind, end: afterOptionalPlural(text, end) };
  }
  const found = standard(text, from, end, context);
  return found === null ? null : { ...found, end: afterOptionalPlural(text, end) };
};

/** Mass or volume: what a pack's size may be written in. */
export const isSizeUnit = ({ kind, unit }: ReadUnit): boolean => {
  const dimension = kind === "STANDARD" ? standardUnit(unit)?.dimension : undefined;
  return dimension === "MASS" || dimension === "VOLUME";
};
