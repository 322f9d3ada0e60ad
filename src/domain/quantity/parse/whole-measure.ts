import type { Measured } from "../../model/amount.js";
import { divideRationals, rationalText } from "../rational.js";
import { standardUnit } from "../unit.js";
import type { LineContext } from "./line-context.js";
import { addMeasured, measuredRange, scaleMeasured } from "./measured-sum.js";
import { skipSpaces } from "./numeral.js";
import type { AlternateAmount, LineModifier, LineReason } from "./parsed-line.js";
import { afterRangeWord } from "./range.js";
import { readMeasure, type Ends, type PackSize, type ReadMeasure } from "./read-measure.js";
import { isSizeUnit, type ReadUnit } from "./read-unit.js";
import { formAdverbs, formWords } from "./words/form-words.js";

/** The first measure with all that is said about it before the food begins. */
export interface WholeMeasure {
  readonly amount: Measured;
  readonly unit: ReadUnit | null;
  readonly size: PackSize | null;
  readonly alternates: readonly AlternateAmount[];
  /** The size of the pack is one without the liquid. */
  readonly drained: boolean;
  readonly additions: readonly Measured[];
  readonly modifiers: readonly LineModifier[];
  readonly notes: readonly string[];
  readonly forms: readonly string[];
  readonly reasons: readonly LineReason[];
  readonly end: number;
}

export const measuredOf = ({ low, high }: Ends, unit: ReadUnit | null): Measured => ({
  low: rationalText(low.n, low.d),
  high: rationalText(high.n, high.d),
  unit: unit?.unit ?? "piece",
});

const OR = /\s*(?:[/|=]|\s(?:or|oder|ou|o|lub)\s)\s*/iy;
const PLUS = /\s*(?:\+|(?:plus|and|und|et|más|y|i)\s)\s*/iy;
const SMALL =
  /^\s*(?:(?:about|approx\.?|ca\.?|circa|etwa|environ|around|roughly|unos|unas|około|ok\.|total(?:ing)?|or)\s*)+/i;
const EACH =
  /^[\s-]*(?:environ\s+|około\s+)?(?:each|apiece|a piece|je|pro Stück|das Stück|chacune?|(?:la )?pièce|l['’]une?|cada un[ao]|la pieza|każd[aey]|za sztukę)\s*$/iu;
const EACH_BEFORE = /^\s*(?:each|jeweils|je|zu je|à|każd[aey]\s+po|po)\s*/iu;
/** "de 170 g chacune" */
const OF = /^\s*(?:of|von|zu|de)\s+(?=\d)/i;
/** "6- to 8-ounce" */
const HANGING_HYPHEN = /(\d)-\s+(?=(?:to|or)\s)/g;
const TAIL =
  /^\s*(?:each|total|in total|net|worth|(drained(?: weight)?|abtropfgewicht|égouttée?s?|poids égoutté|escurrid[oa]s?|po odsączeniu))?\s*$/i;
const DRAINED_BEFORE = /^\s*(?:drained(?: weight)?|abtropfgewicht|poids égoutté|peso escurrido)[:\s]+/i;

const after = (pattern: RegExp, text: string, at: number): number | null => {
  const sticky = pattern;
  sticky.lastIndex = at;
  return sticky.test(text) ? sticky.lastIndex : null;
};

const measureAt = (text: string, at: number, context: LineContext): ReadMeasure | null => {
  const found = readMeasure(text, at, context);
  return found?.kind === "MEASURE" ? found : null;
};

const withUnitAt = (text: string, at: number | null, context: LineContext): ReadMeasure | null => {
  const found = at === null ? null : measureAt(text, at, context);
  return found !== null && found.unit !== null ? found : null;
};

export interface Bracket {
  readonly measured: Measured;
  readonly unit: ReadUnit;
  readonly ends: Ends;
  /** "(15 oz each)" */
  readonly each: boolean;
  /** "(240 g drained weight)" */
  readonly drained: boolean;
  /** "small (2 pound) cabbage": before the food, where it says what one is like. */
  readonly beforeFood?: true;
  /** "(about 1 cup chopped)" */
  readonly form: string | null;
}

/** The amount a bracket holds, if it holds nothing else. */
export const bracketAmount = (bracket: string, context: LineContext): Bracket | null => {
  const content = bracket.replace(HANGING_HYPHEN, "$1 ");
  const whole = amountIn(content, context);
  if (whole !== null) return whole;
  const ofEach = OF.test(content) ? amountIn(content.replace(OF, ""), context) : null;
  return ofEach?.each === true ? ofEach : null;
};

const amountIn = (content: string, context: LineContext): Bracket | null => {
  const before = EACH_BEFORE.exec(content);
  const drained = DRAINED_BEFORE.exec(content);
  const inner = content.slice(before?.[0].length ?? drained?.[0].length ?? 0).replace(SMALL, "");
  const found = withUnitAt(inner, 0, context);
  if (found === null || found.unit === null || found.size !== null) return null;
  const tail = inner.slice(found.end);
  const said = TAIL.exec(tail);
  const form = said === null ? formSaid(tail) : null;
  const each = before !== null || EACH.test(tail);
  if (said === null && form === null && !each) return null;
  const isDrained = drained !== null || said?.[1] !== undefined;
  return { measured: measuredOf(found, found.unit), unit: found.unit, ends: found, each, drained: isDrained, form };
};

/** "finely chopped", where nothing else is said. */
const formSaid = (tail: string): string | null => {
  const words = tail
    .trim()
    .toLowerCase()
    .split(/[\s,]+/);
  if (!words.every((word) => formWords.has(word) || formAdverbs.has(word))) return null;
  const forms = words.flatMap((word) => formWords.get(word) ?? []);
  return forms.length === 0 ? null : forms.join(", ");
};

export const alternateOf = ({ measured, form }: Bracket): AlternateAmount =>
  form === null ? measured : { ...measured, form };

interface Step {
  readonly whole: WholeMeasure;
  readonly more: boolean;
}

const stop = (whole: WholeMeasure): Step => ({ whole, more: false });

const bracketStep = (text: string, open: number, whole: WholeMeasure, context: LineContext): Step => {
  const close = text.indexOf(")", open);
  if (close < 0) return stop(whole);
  const found = bracketAmount(text.slice(open + 1, close), context);
  if (found === null) return stop(whole);
  const end = close + 1;
  const isSize = isSizeUnit(found.unit) && (whole.unit === null || whole.unit.kind === "CONTAINER" || found.each);
  if (isSize && whole.size === null) {
    return { whole: { ...whole, size: { ...found.ends, unit: found.unit }, drained: found.drained, end }, more: true };
  }
  return { whole: { ...whole, alternates: [...whole.alternates, alternateOf(found)], end }, more: true };
};

/** "3 cups/384 g plus 3 tbsp": the pair was of the first amount, and grows with it. */
const grown = ({ amount, alternates }: WholeMeasure, sum: Measured): readonly AlternateAmount[] => {
  const factor = alternates.length > 0 && amount.low === amount.high ? divideRationals(sum.low, amount.low) : null;
  return factor === null
    ? alternates
    : alternates.flatMap((each) => {
        const larger = scaleMeasured(each, factor);
        return larger === null ? [] : [{ ...each, ...larger }];
      });
};

/** Adds where both units convert by definition; else keeps the addition apart and says so. */
export const withAddition = (whole: WholeMeasure, added: Measured, end: number): WholeMeasure => {
  const sum = addMeasured(whole.amount, added);
  const reason: LineReason = { code: "ADDITION_NOT_SUMMED", about: `${added.low} ${added.unit}` };
  return {
    ...whole,
    amount: sum ?? whole.amount,
    alternates: sum === null ? whole.alternates : grown(whole, sum),
    additions: [...whole.additions, added],
    reasons: sum === null ? [...whole.reasons, reason] : whole.reasons,
    end,
  };
};

/** "1 tsp to 1 tbsp": what follows the far end, such as an addition, belongs to it. */
const rangeStep = (text: string, whole: WholeMeasure, context: LineContext): Step => {
  const far = whole.unit === null ? null : withUnitAt(text, afterRangeWord(text, whole.end), context);
  if (far === null) return stop(whole);
  const upper = follow(text, far, context, false);
  const amount = measuredRange(whole.amount, upper.amount);
  if (amount === null) return stop(whole);
  const alternates = [...whole.alternates, ...upper.alternates];
  return { whole: { ...whole, amount, alternates, end: upper.end }, more: false };
};

const smallerOf = (last: AlternateAmount, next: Measured): AlternateAmount | null => {
  const [large, small] = [standardUnit(last.unit), standardUnit(next.unit)];
  const follows = large?.dimension === small?.dimension && (small?.factor ?? 0) < (large?.factor ?? 0);
  const sum = follows ? addMeasured(last, next) : null;
  return sum === null ? null : { ...last, ...sum };
};

/** "1 lb 4 oz": a smaller unit of the same kind straight behind belongs to the amount. */
const smallerStep = (text: string, at: number, whole: WholeMeasure, context: LineContext): Step => {
  const next = withUnitAt(text, at, context);
  // "1kg/2lb 4oz": the ounces are those of the pounds.
  const last = whole.alternates.at(-1);
  const pair = last === undefined || next === null ? null : smallerOf(last, measuredOf(next, next.unit));
  if (pair !== null && next !== null && next.size === null) {
    return { whole: { ...whole, alternates: [...whole.alternates.slice(0, -1), pair], end: next.end }, more: true };
  }
  const [large, small] = [standardUnit(whole.unit?.unit ?? ""), standardUnit(next?.unit?.unit ?? "")];
  const follows =
    large !== null && small !== null && large.dimension === small.dimension && small.factor < large.factor;
  if (next === null || next.size !== null || !follows) return stop(whole);
  return { whole: withAddition(whole, measuredOf(next, next.unit), next.end), more: true };
};

const OF_SIZE = /\s*(?:de|à|a|of|von|zu|je|po)\s+(?=\d)/iy;

/** "1 boîte de 400 g de pois chiches": the size behind its container. */
const sizeBehind = (text: string, whole: WholeMeasure, context: LineContext): Step | null => {
  const found = withUnitAt(text, after(OF_SIZE, text, whole.end), context);
  if (found === null || found.unit === null || found.size !== null || !isSizeUnit(found.unit)) return null;
  return {
    whole: { ...whole, size: { low: found.low, high: found.high, unit: found.unit }, end: found.end },
    more: true,
  };
};

const isDigit = (code: number): boolean => code >= 48 && code <= 57;

const step = (text: string, whole: WholeMeasure, context: LineContext, mayRange: boolean): Step => {
  const at = skipSpaces(text, whole.end);
  if (text[at] === "(") return bracketStep(text, at, whole, context);
  const sized = whole.unit?.kind === "CONTAINER" && whole.size === null ? sizeBehind(text, whole, context) : null;
  if (sized !== null) return sized;
  const code = text.charCodeAt(at);
  if (isDigit(code)) return smallerStep(text, at, whole, context);
  const isLetter = (code >= 97 && code <= 122) || (code >= 65 && code <= 90);
  if (isLetter && !/[aombdluetpiy]/i.test(text[at] ?? "")) return stop(whole);
  const other = withUnitAt(text, after(OR, text, whole.end), context);
  if (
    other !== null &&
    other.size !== null &&
    other.unit?.kind === "CONTAINER" &&
    whole.unit !== null &&
    isSizeUnit(whole.unit)
  ) {
    // "400g/14oz tin": both are what is in one.
    const amount: Measured = { low: "1", high: "1", unit: other.unit.unit };
    const reasons = [...whole.reasons, { code: "COUNT_ASSUMED", about: text.slice(0, other.end).trim() } as const];
    return { whole: { ...whole, amount, unit: other.unit, size: other.size, reasons, end: other.end }, more: true };
  }
  if (other !== null) {
    const alternates = [...whole.alternates, measuredOf(other, other.unit)];
    return { whole: { ...whole, alternates, end: other.end }, more: true };
  }
  const plus = after(PLUS, text, whole.end);
  const added = whole.unit === null ? null : withUnitAt(text, plus, context);
  if (added !== null) return { whole: withAddition(whole, measuredOf(added, added.unit), added.end), more: true };
  return mayRange ? rangeStep(text, whole, context) : stop(whole);
};

const NONE: readonly AlternateAmount[] = [];

/** Most alternates and additions read of one line; more stay in its words. */
const STEPS_MAX = 8;

const follow = (text: string, first: ReadMeasure, context: LineContext, mayRange: boolean): WholeMeasure => {
  let whole: WholeMeasure = {
    amount: measuredOf(first, first.unit),
    unit: first.unit,
    size: first.size,
    alternates: NONE,
    drained: false,
    additions: NONE,
    modifiers: first.modifiers,
    notes: first.notes,
    forms: first.forms,
    reasons: first.reasons.map((code) => ({ code, about: text.slice(0, first.end).trim() })),
    end: first.end,
  };
  for (let steps = 0; steps < STEPS_MAX; steps += 1) {
    const next = step(text, whole, context, mayRange);
    whole = next.whole;
    if (!next.more) break;
  }
  return whole;
};

/** Follows alternates ("/", "or", brackets), additions ("plus") and the far end of a range with two units. */
export const wholeMeasure = (text: string, first: ReadMeasure, context: LineContext): WholeMeasure =>
  follow(text, first, context, true);
