import type { Measured } from "../../model/amount.js";
import { multiplyRationals, toNumber } from "../rational.js";
import { findUnit, standardUnit } from "../unit.js";
import { alternateOf, measuredOf, wholeMeasure, withAddition, type WholeMeasure } from "./whole-measure.js";
import { cleanLine } from "./clean-line.js";
import { LINE_MAX } from "./limits.js";
import { lineContext, type LineContext, type LineOptions } from "./line-context.js";
import { measuredIn } from "./measured-sum.js";
import { lineReasons, type LineReason, type NoAmount, type ParsedLine, type WrittenPack } from "./parsed-line.js";
import { readMeasure } from "./read-measure.js";
import { isSizeUnit } from "./read-unit.js";
import { restOfLine, type RestOfLine } from "./rest-of-line.js";
import { filler, noAmountOf, partOf, partsOf } from "./words/line-phrases.js";
import { pourForm } from "./words/liquid-words.js";

const confidenceOf = (reasons: readonly LineReason[]): number =>
  reasons.reduce((left, { code }) => left * lineReasons[code], 1);

const nothing: Omit<ParsedLine, "raw" | "confidence" | "reasons"> = {
  amount: null,
  noAmount: "UNSTATED",
  choices: [],
  pack: null,
  alternates: [],
  additions: [],
  food: "",
  part: null,
  form: null,
  preparation: null,
  modifiers: [],
  notes: [],
};

const refused = (raw: string, reason: LineReason, food: string): ParsedLine => ({
  ...nothing,
  raw,
  food,
  noAmount: "UNCLEAR",
  confidence: lineReasons[reason.code],
  reasons: [reason],
});

const afterFiller = (text: string, at: number): number => {
  filler.lastIndex = at;
  return filler.test(text) ? filler.lastIndex : at;
};

interface Started {
  readonly part: string | null;
  /** "zest and juice of", as written. */
  readonly parts: string | null;
  readonly at: number;
}

/** "juice of 2 lemons": the part, then where its fruit begins. */
const startOf = (text: string): Started => {
  if (!/^[fjzstagrpled]/i.test(text)) return { part: null, parts: null, at: 0 };
  const both = partsOf.exec(text);
  if (both !== null) return { part: null, parts: both[0].trim(), at: both[0].length };
  for (const [part, pattern] of partOf) {
    const found = pattern.exec(text);
    if (found !== null) return { part, parts: null, at: found[0].length };
  }
  return { part: null, parts: null, at: 0 };
};

const withParts = (whole: WholeMeasure, parts: string): WholeMeasure => ({
  ...whole,
  notes: [...whole.notes, parts],
  reasons: [...whole.reasons, { code: "SEVERAL_PARTS", about: parts }],
});

/** A measure behind the food: "Mehl 200 g". */
const trailingMeasure = (text: string, context: LineContext): readonly [WholeMeasure, string] | null => {
  const digit = text.search(/[\d½⅓⅔¼¾⅛]/u);
  if (digit < 1) return null;
  const found = readMeasure(text, digit, context);
  if (found?.kind !== "MEASURE" || found.unit === null) return null;
  const whole = wholeMeasure(text, found, context);
  return text.slice(whole.end).trim() === "" ? [whole, text.slice(0, digit)] : null;
};

const EGG_PART = /^(.*\begg)s? (white|yolk)s?$/i;
const PREPARED_PARTS: Readonly<Record<string, string>> = { juiced: "juice", zested: "zest" };

interface Named {
  readonly food: string;
  readonly part: string | null;
}

const partIn = (food: string, preparation: string | null, part: string | null): Named => {
  const egg = /[ke]s?$/i.test(food) ? EGG_PART.exec(food) : null;
  if (egg !== null) return { food: egg[1] ?? food, part: (egg[2] ?? "").toLowerCase() };
  return { food, part: part ?? PREPARED_PARTS[preparation ?? ""] ?? null };
};

interface Settled {
  readonly whole: WholeMeasure;
  /** More than one: the amount is unclear. */
  readonly choices: readonly Measured[];
  readonly reasons: readonly LineReason[];
}

const withUnit = (whole: WholeMeasure, unit: string): WholeMeasure => ({ ...whole, amount: { ...whole.amount, unit } });

/** "2 gr. Karotten" are large ones, "200 gr. Mehl" grams: below so many, only the food tells. */
const GRAMS_OR_LARGE = /^gr\.?$/i;
const FEW = 100;

const fewer = ({ high }: Measured, than: number): boolean => toNumber(high) < than;

/** Sizes that only the food decides: a pint of berries, an ounce of milk, a stick of butter. */
const settleUnit = (whole: WholeMeasure, food: string, context: LineContext): Settled => {
  const { unit } = whole;
  if (unit === null) return { whole, choices: [], reasons: [] };
  const form = pourForm(food);
  if (unit.unit === "oz" && form === "liquid") {
    const fluid = findUnit("fl oz", context);
    const reasons: LineReason[] = [{ code: "OUNCE_OF_LIQUID", about: unit.word }];
    return { whole: fluid?.kind === "FOUND" ? withUnit(whole, fluid.id) : whole, choices: [], reasons };
  }
  if (unit.unit === "own:stick" && context.measures === "US_CUSTOMARY" && /^(?:(?:un)?salted )?butter$/i.test(food)) {
    return { whole: withUnit(whole, "stick-butter"), choices: [], reasons: [] };
  }
  if (unit.unit === "g" && GRAMS_OR_LARGE.test(unit.word) && context.language === "de" && fewer(whole.amount, FEW)) {
    const choices = [whole.amount, { ...whole.amount, unit: "piece" }];
    return { whole, choices, reasons: [{ code: "SIZE_OR_GRAMS", about: unit.word }] };
  }
  const again = unit.kind === "STANDARD" && form !== null ? findUnit(unit.word, { ...context, form }) : null;
  if (again?.kind === "FOUND") return { whole: withUnit(whole, again.id), choices: [], reasons: [] };
  if (unit.candidates.length < 2) return { whole, choices: [], reasons: [] };
  const choices = unit.candidates.map((candidate) => ({ ...whole.amount, unit: candidate }));
  return { whole, choices, reasons: [{ code: "AMBIGUOUS_UNIT", about: unit.word }] };
};

const packOf = ({ amount, size, drained }: WholeMeasure): WrittenPack | null => {
  if (size === null) return null;
  const one = measuredOf(size, size.unit);
  const [low, high] = [multiplyRationals(one.low, amount.low), multiplyRationals(one.high, amount.high)];
  if (low === null || high === null) return null;
  return { size: one, net: { low, high, unit: one.unit }, ...(drained ? { drained } : {}) };
};

/** Author pairs are soft ("1 lb (500 g)"); further apart than a quarter they are not one amount. */
const SAME_AMOUNT = 1.25;

const baseOf = ({ high, unit }: Measured): number | null => {
  const base = measuredIn({ low: high, high, unit }, standardUnit(unit)?.dimension === "MASS" ? "g" : "ml");
  if (base === null) return null;
  const [n = "0", d = "1"] = base.high.split("/");
  return Number(n) / Number(d);
};

const disagreeing = (amount: Measured, alternates: readonly Measured[]): readonly LineReason[] =>
  alternates.flatMap((alternate) => {
    if (standardUnit(alternate.unit)?.dimension !== standardUnit(amount.unit)?.dimension) return [];
    const [a, b] = [baseOf(amount), baseOf(alternate)];
    const apart = a === null || b === null ? 1 : Math.max(a / b, b / a);
    return apart > SAME_AMOUNT ? [{ code: "ALTERNATES_DISAGREE" as const, about: alternate.unit }] : [];
  });

/** A remark that holds another amount: "or 2", "Abtr.gew. 240 g". */
const LEFT_OVER =
  /^(?:or|oder|ou|o|lub|albo) \d|\d\s?(?:g|kg|mg|ml|cl|dl|l|oz|lbs?|cups?|tbsp|tsp|el|tl|gramm?|grammes?)(?![\p{L}\d])/iu;

const OR_FOOD = /(?:^|\s)(?:or|oder|ou|o|lub|albo)\s/i;
const AND_FOOD = /\s(?:and|&|und|et|y|i)\s/i;

const foodReasons = (food: string, measured: boolean): readonly LineReason[] => {
  if (food === "") return [{ code: "NO_FOOD", about: "" }];
  return OR_FOOD.test(food) || (!measured && AND_FOOD.test(food)) ? [{ code: "SEVERAL_FOODS", about: food }] : [];
};

/** A word such as "cloves" with no food behind it is the food. */
const foodItself = (whole: WholeMeasure, rest: RestOfLine): readonly [WholeMeasure, string] =>
  rest.food === "" && whole.unit?.kind === "COUNT"
    ? [{ ...whole, unit: null, amount: { ...whole.amount, unit: "piece" } }, whole.unit.word]
    : [whole, rest.food];

const formOf = (before: readonly string[], behind: string | null): string | null =>
  before.length === 0 ? behind : [...before, ...(behind === null ? [] : [behind])].join(", ");

const measuredLine = (
  raw: string,
  first: WholeMeasure,
  words: string,
  part: string | null,
  context: LineContext,
): ParsedLine => {
  const packed = first.unit?.kind === "CONTAINER";
  const rest = restOfLine(words, packed ? "PACKED" : first.unit === null ? "COUNTED" : "MEASURED", context);
  const summed = rest.additions.reduce((sum, added) => withAddition(sum, added, sum.end), first);
  const [itself, food] = foodItself(summed, rest);
  const each = rest.brackets.find(
    (bracket) =>
      (bracket.each || packed || (bracket.beforeFood === true && first.unit === null)) && isSizeUnit(bracket.unit),
  );
  const sized =
    itself.size === null && each !== undefined
      ? { ...itself, size: { ...each.ends, unit: each.unit }, drained: each.drained }
      : itself;
  const named = partIn(food, rest.preparation, part);
  const { whole, choices, reasons: unitReasons } = settleUnit(sized, named.food, context);
  const sizeIsNew = itself.size === null;
  const others = rest.brackets.filter((bracket) => !(sizeIsNew && bracket === each));
  const alternates = [...whole.alternates, ...others.map(alternateOf)];
  const reasons = [
    ...whole.reasons,
    ...unitReasons,
    ...foodReasons(named.food, true),
    ...rest.notes.filter((note) => LEFT_OVER.test(note)).map((about) => ({ code: "NUMBER_LEFT_OVER" as const, about })),
    ...(rest.additions.length > 0 && others.length > 0
      ? [
          {
            code: "ADDITION_NOT_SUMMED" as const,
            about: rest.additions.map(({ low, unit }) => `${low} ${unit}`).join(", "),
          },
        ]
      : []),
    ...disagreeing(whole.amount, alternates),
  ];
  return {
    raw,
    amount: choices.length > 0 ? null : whole.amount,
    noAmount: choices.length > 0 ? "UNCLEAR" : null,
    choices,
    pack: packOf(whole),
    alternates,
    additions: whole.additions,
    food: named.food,
    ...(rest.whole === null ? {} : { whole: rest.whole }),
    part: named.part,
    form: formOf(whole.forms, rest.form),
    preparation: rest.preparation,
    modifiers: [...whole.modifiers, ...rest.modifiers],
    notes: [...whole.notes, ...rest.notes],
    confidence: confidenceOf(reasons),
    reasons,
  };
};

const amountlessLine = (
  raw: string,
  kind: NoAmount | null,
  words: string,
  part: string | null,
  context: LineContext,
): ParsedLine => {
  const rest = restOfLine(words, "MEASURED", context);
  const named = partIn(rest.food, rest.preparation, part);
  const noAmount = kind ?? noAmountOf(rest.modifiers, rest.asNeeded);
  const reasons: LineReason[] = [
    ...(words.endsWith(":") ? [{ code: "HEADING" as const, about: words }] : []),
    ...(noAmount === "UNSTATED" && !words.endsWith(":") ? [{ code: "NO_AMOUNT" as const, about: named.food }] : []),
    ...(kind === null && /\d/.test(named.food) ? [{ code: "NUMBER_LEFT_OVER" as const, about: named.food }] : []),
    ...foodReasons(named.food, false),
  ];
  return {
    raw,
    amount: null,
    noAmount,
    choices: [],
    pack: null,
    additions: [],
    alternates: rest.brackets.map(({ measured }) => measured),
    food: named.food,
    ...(rest.whole === null ? {} : { whole: rest.whole }),
    part: named.part,
    form: rest.form,
    preparation: rest.preparation,
    modifiers: rest.modifiers,
    notes: rest.notes,
    confidence: confidenceOf(reasons),
    reasons,
  };
};

const refusedBeforeReading = (raw: string, text: string): ParsedLine | null => {
  if (text === "") return refused(raw, { code: "EMPTY", about: "" }, "");
  return /^[-−–]\s?[\d½⅓⅔¼¾⅛]/u.test(text) ? refused(raw, { code: "NEGATIVE_NUMBER", about: text }, text) : null;
};

/**
 * A line as a writer typed it, taken apart: exact amount, unit, pack, alternates, additions, food, form, preparation. Never
 * guesses in silence: whatever was left open is a reason that lowers the confidence. Never throws; a line over 1000
 * characters is refused unread (TOO_LONG).
 */
export const parseLine = (raw: string, options: LineOptions): ParsedLine => {
  if (raw.length > LINE_MAX) return refused(raw, { code: "TOO_LONG", about: String(raw.length) }, "");
  const text = cleanLine(raw);
  const early = refusedBeforeReading(raw, text);
  if (early !== null) return early;
  const context = lineContext(options);
  const { part, parts, at } = startOf(text);
  const found = readMeasure(text, at, context);
  if (found?.kind === "FAULT") {
    const code = found.fault === "AMBIGUOUS_SEPARATOR" ? "AMBIGUOUS_NUMBER" : "BAD_NUMBER";
    return refused(raw, { code, about: text.slice(at, found.end) }, text.slice(found.end).trim());
  }
  if (found?.kind === "MEASURE") {
    const measured = wholeMeasure(text, found, context);
    const whole = parts === null ? measured : withParts(measured, parts);
    return measuredLine(raw, whole, text.slice(afterFiller(text, whole.end)), part, context);
  }
  if (found !== null)
    return amountlessLine(raw, found.noAmount, text.slice(afterFiller(text, found.end)), part, context);
  const trailing = part === null ? trailingMeasure(text, context) : null;
  return trailing === null
    ? amountlessLine(raw, null, text.slice(at), part, context)
    : measuredLine(raw, trailing[0], trailing[1], null, context);
};
