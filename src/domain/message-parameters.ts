import type { Problem, ProblemCode, Warning, WarningCode } from "./problem.js";

type OfCode<Fact, Code> = Fact extends { readonly code: infer Known } ? (Code extends Known ? Fact : never) : never;
type FactOf<Fact> = Fact extends unknown ? Exclude<keyof Fact, "code" | "path" | "place" | "asked"> : never;
/** What a fact that has parts, or a list of such things, is made of; never: it is a text or a number. */
type Thing<Value> = Value extends readonly (infer Entry)[] ? Thing<Entry> : Value extends object ? Value : never;
type PartOf<Value> = Value extends unknown ? keyof Value : never;
type At<Value, Part> = Value extends unknown ? (Part extends keyof Value ? Value[Part] : never) : never;
type Shape<Value> = [Thing<Value>] extends [never]
  ? true
  : { readonly [Part in PartOf<Thing<Value>>]-?: Shape<At<Thing<Value>, Part>> };
/** Every fact of a code by its name, with its parts. The compiler tells of one that is forgotten. */
type FactsOf<Fact> = [Fact] extends [never] ? never : { readonly [Name in FactOf<Fact>]-?: Shape<At<Fact, Name>> };
type Facts<All, Code extends string> = { readonly [C in Code]: FactsOf<OfCode<All, C>> };

/** The parts of a fact by their names; true: it has none. */
type FactShape = true | { readonly [part: string]: FactShape };
type FactShapes = Readonly<Record<string, FactShape>>;

/** What each kind of problem says beside where it is. */
const problemFacts: Facts<Problem, ProblemCode> = {
  UNKNOWN_UNIT: { unit: true, nearest: true },
  AMBIGUOUS_UNIT: { unit: true, candidates: true },
  UNKNOWN_CODE: { list: true, written: true, nearest: true },
  AMBIGUOUS_FOOD: { food: true, candidates: true },
  UNKNOWN_FOOD: {
    food: true,
    offer: { nearest: true, rows: { ndbNo: true, description: true }, slug: true, language: true, reader: true },
  },
  UNKNOWN_COMPONENT: { component: true },
  UNKNOWN_PART: { food: true, part: true, known: true },
  UNKNOWN_ROUTE: { component: true, route: true, known: true },
  UNKNOWN_PLAN: { publisher: true, plan: true, revision: true },
  WITHDRAWN: { publisher: true, plan: true, title: true, locale: true, at: true, because: true },
  UNKNOWN_PUBLISHER: { publisher: true },
  UNKNOWN_TOKEN: { token: true },
  UNKNOWN_WEBHOOK: { webhook: true },
  BAD_TIME: { written: true, zone: true, why: true, offers: true },
  PUBLISH_AT_LATER: { plan: true, at: true, zone: true },
  UNKNOWN_SCHEDULED: { scheduled: true },
  NOT_WAITING: { scheduled: true, state: true },
  CHANGED_SINCE_SCHEDULED: { plan: true, at: true },
  UNKNOWN_PREVIEW_LINK: { link: true },
  PREVIEW_ENDED: { why: true, at: true },
  UNKNOWN_DELIVERY: { delivery: true },
  SLUG_TAKEN: { slug: true },
  KEY_REUSED: {},
  KEY_IN_USE: {},
  STALE_DRAFT: { draft: true, slug: true, expected: true, actual: true },
  TRANSLATES_NOTHING: { of: true, nearest: true },
  UNKNOWN_DRAFT: { draft: true, slug: true },
  FOOD_IS_SHARED: { food: true },
  NOTHING_CHANGED: { revision: true },
  ALREADY_WITHDRAWN: { revision: true },
  COMPONENT_CYCLE: { cycle: true },
  COMPONENT_NOT_REACHED: { component: true },
  NOT_CONVERTIBLE: { item: true, from: true, to: true, missing: true },
  BAD_AMOUNT: { written: true, why: true },
  AMOUNT_OUT_OF_RANGE: { value: true, min: true, max: true },
  SERVINGS_OUT_OF_RANGE: { value: true, min: true, max: true },
  TOO_LARGE: { what: true, size: true, limit: true },
  STEPS_IN_A_CIRCLE: { steps: true },
  WAITS_CANNOT_BE_KEPT: { steps: true },
  KITCHEN_WITHOUT: { appliance: true, steps: true },
  RULE_SET_EXISTS: { set: true },
  DUPLICATE: { value: true },
  BAD_SHAPE: { expected: true, got: true },
  CELL_IS_A_DATE: { cell: true, offers: true },
  ALLERGEN_WEAKENED: { food: true, allergen: true, was: true, now: true },
  PRICE_OUT_OF_LINE: { food: true, price: true, ratio: true, packs: true },
  LIMIT_PASSED: { what: true, share: true, limit: true },
  IMPORT_FAULT: { run: true },
  RECIPE_OPEN: { open: true, written: true, reasons: { code: true, about: true }, foods: true },
  LINE_OPEN: { written: true, reasons: { code: true, about: true }, named: true, amounts: true },
  FILE_NOT_HAD: { why: true, tries: true },
  COMPONENT_SET_ASIDE: { component: true },
  BAD_ARCHIVE: {
    fault: {
      ...{ kind: true, detail: true, of: true, size: true, limit: true, version: true, known: true, archived: true },
      ...{ plan: true, revision: true },
    },
  },
  PUBLISHER_NOT_EMPTY: { publisher: true },
  UNKNOWN_FEED: { feed: true },
  UNKNOWN_RUN: { run: true },
  UNKNOWN_FILE: { file: true },
  IMAGE_REFUSED: { fault: true, found: true },
  UNKNOWN_IMAGE: { image: true },
  UNKNOWN_ROW: { line: true, part: true },
  ROW_SETTLED: { line: true },
  IMPORT_GOING_ON: { feed: true },
  IMPORT_ENDED: { run: true },
  DELIMITER_UNCLEAR: { firstLine: true },
  NOT_TEXT: { encoding: true },
  BAD_HOUSEHOLD: { what: true, value: true },
  MORE_PROBLEMS: { count: true },
  MORE_PUT_ASIDE: { count: true, kept: true },
  CLAIM_BROKEN: { claim: true, foods: true },
  CLAIM_NOT_KNOWN: { claim: true, foods: true },
  CLAIM_WITHOUT_RULE: { claim: true },
  KEPT_BEYOND_RULES: { subject: true, keepsAs: true, at: true, days: true, most: true, rule: true },
  NEEDS_THE_COLD: { subject: true, keepsAs: true, days: true },
  FORM_UNKNOWN: { food: true, form: true, known: true },
  TRANSLATION_NUMBERS: { language: true, at: true, original: true, translated: true },
};

/** The same of each kind of warning. */
const warningFacts: Facts<Warning, WarningCode> = {
  NOT_COMBINED: { food: true, missing: true },
  PART_NOT_COUNTED: { food: true, part: true, missing: true },
  EDIBLE_PORTION_UNKNOWN: { food: true, form: true },
  PRICE_UNKNOWN: { food: true },
  PACK_NOT_COMPARABLE: { food: true, pack: true, missing: true },
  ON_HAND_NOT_COMPARABLE: { item: true, missing: true },
  ON_HAND_IN_OTHER_FORM: { item: true, from: true, gives: true, wouldTake: true },
  ON_HAND_NOT_NEEDED: { item: true },
  ON_HAND_TOO_OLD: { item: true, useBy: true },
  ON_HAND_NOT_IN_TIME: { item: true, useBy: true, meals: true },
  DIET_NOT_MET: { diet: true, item: true, known: true, offered: true },
  ALLERGEN_NOT_AVOIDED: { allergen: true, item: true, presence: true, offered: true },
  DISLIKE_NOT_AVOIDED: { item: true, meals: true },
  DISLIKE_LEFT_OUT: { item: true, meals: true },
  SWAP_NOT_OFFERED: { from: true, to: true },
  SWAP_NOT_CONVERTIBLE: { from: true, to: true, missing: true },
  MADE_IN_TWO_PLANS: { component: true, plans: true },
  LEFT_OVER: { component: true, servingsMore: true },
  PART_TOO_OLD: { food: true, part: true, meal: true, day: true, cutOn: true, days: true },
  BUY_LATER: { food: true, meals: true, notBefore: true, days: true },
  MEAL_BEFORE_SESSION: { meal: true, at: true, start: true },
  KEEPING_UNKNOWN: { item: true },
  KEEPING_CLASS_UNKNOWN: { item: true, keepsAs: true },
  REGION_NOT_GIVEN: { used: true },
};

/** A fact of a problem or a warning, as texts: a list has one for each entry, what is not known has none. */
export interface MessageParameter {
  readonly name: string;
  readonly values: readonly string[];
}

/** What the sentences of a problem or a warning are made of, for those who make their own. */
export function messageParameters(about: Problem | Warning): readonly MessageParameter[] {
  const shapes: FactShapes = isWarning(about) ? warningFacts[about.code] : problemFacts[about.code];
  const facts = about as unknown as Readonly<Record<string, unknown>>;
  return Object.entries(shapes).flatMap(([name, shape]) =>
    facts[name] === undefined ? [] : flattened(name, shape, facts[name]),
  );
}

const isWarning = (about: Problem | Warning): about is Warning => Object.hasOwn(warningFacts, about.code);

/** `{ offer: { nearest: ["kale"] } }` is `offer.nearest`; a list of things is a list for each part of them. */
function flattened(name: string, shape: FactShape, value: unknown): readonly MessageParameter[] {
  const values = value === null ? [] : Array.isArray(value) ? (value as readonly unknown[]) : [value];
  if (shape === true) return [{ name, values: values.map(String) }];
  return Object.entries(shape).flatMap(([part, within]) => {
    const parts = values.map((each) => (each as Readonly<Record<string, unknown>>)[part]);
    if (Array.isArray(value))
      return flattened(
        `${name}.${part}`,
        within,
        parts.map((each) => each ?? ""),
      );
    return parts[0] === undefined ? [] : flattened(`${name}.${part}`, within, parts[0]);
  });
}

/** A kind of problem or warning, and what its parameters are called. */
interface MessageKind<Code> {
  readonly code: Code;
  readonly parameters: readonly string[];
}

const kindsOf = <Code extends string>(facts: Readonly<Record<Code, FactShapes>>): readonly MessageKind<Code>[] =>
  Object.entries<FactShapes>(facts).map(([code, shapes]) => ({
    code: code as Code,
    parameters: Object.entries(shapes).flatMap(([name, shape]) => namesOf(name, shape)),
  }));

const namesOf = (name: string, shape: FactShape): readonly string[] =>
  shape === true ? [name] : Object.entries(shape).flatMap(([part, within]) => namesOf(`${name}.${part}`, within));

export const problemMessages: readonly MessageKind<ProblemCode>[] = kindsOf(problemFacts);
export const warningMessages: readonly MessageKind<WarningCode>[] = kindsOf(warningFacts);
