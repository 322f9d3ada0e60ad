import type { Measured, MeasureSystem, UnitRef } from "../../model/amount.js";
import type { OwnMeasure } from "../../model/food.js";
import { failed, ok, type Path, type Problem, type Result } from "../../problem.js";
import { AMOUNT_MAX, AMOUNT_TEXT_MAX } from "./limits.js";
import { numberMarks } from "./number-marks.js";
import { ownMeasureOf } from "../line/measure-words.js";
import { skipSpaces } from "./numeral.js";
import { readRange } from "./range.js";
import { rationalText } from "../rational.js";
import { countWords } from "./words/count-words.js";
import { findUnit, nearestUnits, ownMeasureName, ownMeasureRef } from "../unit.js";

interface AmountContext {
  /** BCP 47 tag that decides decimal and grouping marks; null: only what can mean one thing is read. */
  readonly locale: string | null;
  readonly measures: MeasureSystem;
  /** The food's or component's own measures; their words go before the standard units. */
  readonly own: readonly OwnMeasure[];
  readonly path: Path;
  /** "dry" or "liquid" where the caller knows what is measured (the US pint has two sizes). */
  readonly form?: "dry" | "liquid" | null;
}

const bad = (path: Path, written: string, why: string): Result<never> =>
  failed([{ code: "BAD_AMOUNT", path, written, why }]);

/**
 * The food's own measure by name, by its words for one and many, by the plural of its name, or by another word of any language for such a measure
 * ("cans" of tins) where only one can be meant; the whole item is the standard piece.
 */
export const findOwnMeasure = (word: string, own: readonly OwnMeasure[]): UnitRef | null => {
  const wanted = (ownMeasureName(word) ?? word).toLowerCase();
  const named = own.find(({ name, one, many }) =>
    [name, one, many, `${one}s`].some((each) => each.toLowerCase() === wanted),
  );
  const found = named ?? counted(wanted, own);
  if (found === null) return null;
  return found.name === "piece" ? "piece" : ownMeasureRef(found.name);
};

const counted = (word: string, own: readonly OwnMeasure[]): OwnMeasure | null => {
  if (own.length === 0) return null;
  const known = Object.values(countWords).flatMap((words) => words.get(word)?.one ?? []);
  const found = new Set([...new Set(known)].flatMap((one) => ownMeasureOf(one, own) ?? []));
  const [first = null] = found;
  return found.size === 1 ? first : null;
};

const unitOf = (word: string, context: AmountContext): UnitRef | Problem => {
  const { path, own } = context;
  if (word === "") return "piece";
  const ownRef = findOwnMeasure(word, own);
  if (ownRef !== null) return ownRef;
  const found = ownMeasureName(word) === null ? findUnit(word, context) : null;
  if (found?.kind === "FOUND") return found.id;
  if (found?.kind === "AMBIGUOUS") return { code: "AMBIGUOUS_UNIT", path, unit: word, candidates: found.candidates };
  const nearest = nearestUnits(
    ownMeasureName(word) ?? word,
    own.map(({ name }) => name),
  );
  return { code: "UNKNOWN_UNIT", path, unit: word, nearest };
};

/**
 * A structured amount: a number, mixed fraction or range, then a unit id, a unit word or the food's own measure; without
 * one it counts pieces. `"1 1/2 us-cup"`, `"600 g"`, `"2-3 tbsp"`, `"1 tin"`, `"3"`.
 *
 * Problems: BAD_AMOUNT (`why` is EMPTY, NO_NUMBER, EXPONENT_NOTATION or a NumberFault), AMOUNT_OUT_OF_RANGE (negative, or
 * above 1e9), UNKNOWN_UNIT with the nearest, AMBIGUOUS_UNIT with the candidates, TOO_LARGE for a text over 120 characters.
 */
export const parseAmount = (text: string, context: AmountContext): Result<Measured> => {
  const { path } = context;
  if (text.length > AMOUNT_TEXT_MAX) {
    return failed([{ code: "TOO_LARGE", path, what: "amount", size: text.length, limit: AMOUNT_TEXT_MAX }]);
  }
  const written = text.trim();
  if (written === "") return bad(path, text, "EMPTY");
  if (/^[-−]\s*[\d½⅓⅔¼¾⅛.]/.test(written)) {
    return failed([{ code: "AMOUNT_OUT_OF_RANGE", path, value: written, min: 0, max: AMOUNT_MAX }]);
  }
  const range = readRange(written, 0, numberMarks(context.locale));
  if (range === null) return bad(path, text, "NO_NUMBER");
  if (!range.ok) {
    return range.fault === "TOO_LARGE"
      ? failed([{ code: "AMOUNT_OUT_OF_RANGE", path, value: written, min: 0, max: AMOUNT_MAX }])
      : bad(path, text, range.fault);
  }
  const word = written.slice(skipSpaces(written, range.end));
  if (/^e[+-]?\d/i.test(word)) return bad(path, text, "EXPONENT_NOTATION");
  const unit = unitOf(word, context);
  if (typeof unit !== "string") return failed([unit]);
  return ok({ low: rationalText(range.low.n, range.low.d), high: rationalText(range.high.n, range.high.d), unit });
};
