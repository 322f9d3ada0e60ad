import type { Measured } from "../../model/amount.js";

/**
 * Why a line has no amount. UNSTATED: the writer gave none and said nothing about it. UNCLEAR: there is one, but a person
 * must say what it means; the reasons say why, and `choices` what it may be.
 */
export type NoAmount = "TO_TASTE" | "PINCH" | "DASH" | "AS_NEEDED" | "SOME" | "UNSTATED" | "UNCLEAR";

export type LineModifier =
  | "HEAPED"
  | "LEVEL"
  | "SCANT"
  | "APPROXIMATE"
  | "OPTIONAL"
  | "DIVIDED"
  /** Beside a number: the reader may adjust it. */
  | "TO_TASTE"
  /** An open extra beside the measured amount. */
  | "PLUS_MORE"
  | "FOR_SERVING";

/** What a person must look at, and the share of confidence it leaves. `lineReasons` lists both. */
export interface LineReason {
  readonly code: LineReasonCode;
  /** The words or candidates it is about. */
  readonly about: string;
}

/** Every reason, with the confidence that remains beside it. */
export const lineReasons = {
  TOO_LONG: 0,
  EMPTY: 0,
  BAD_NUMBER: 0.1,
  AMBIGUOUS_NUMBER: 0.1,
  NEGATIVE_NUMBER: 0.1,
  AMBIGUOUS_UNIT: 0.4,
  HEADING: 0.3,
  NO_FOOD: 0.4,
  NO_AMOUNT: 0.7,
  SEVERAL_FOODS: 0.6,
  SEVERAL_PARTS: 0.6,
  OUNCE_OF_LIQUID: 0.6,
  COUNT_ASSUMED: 0.8,
  ADDITION_NOT_SUMMED: 0.5,
  ALTERNATES_DISAGREE: 0.6,
  MARK_OF_OTHER_LOCALE: 0.7,
  SIZE_BY_LENGTH: 0.7,
  NUMBER_LEFT_OVER: 0.6,
  SIZE_OR_GRAMS: 0.4,
  NOT_SOLD_SO: 0.4,
  AMOUNTS_CONTRADICT: 0.4,
  UNIT_NOT_OF_FOOD: 0.4,
  DRY_OR_DRAINED: 0.4,
  DRY_OR_COOKED: 0.4,
  READY_OR_NOT: 0.4,
  IMPLAUSIBLE_AMOUNT: 0.4,
  NOTHING: 0.4,
} as const;

/** The same amount written another way, and the form it is said of ("about 1 cup chopped"). */
export type AlternateAmount = Measured & { readonly form?: string };

export type LineReasonCode = keyof typeof lineReasons;

/** Count times size: the count is the line's amount; the size is one pack's and never scales. */
export interface WrittenPack {
  readonly size: Measured;
  /** Count times size, exactly. */
  readonly net: Measured;
  /** The size is said to be without the liquid. */
  readonly drained?: true;
}

/** A line as written, taken apart. What was not understood stays in the words, with a reason. */
export interface ParsedLine {
  /** Untouched. */
  readonly raw: string;
  /** Exact. Without a unit word it counts pieces; words such as "can" and "clove" become `own:can`, `own:clove`. */
  readonly amount: Measured | null;
  /** Set exactly when `amount` is null. */
  readonly noAmount: NoAmount | null;
  /** With UNCLEAR: the amounts the words may mean ("1 cup" where the measures have no cup). */
  readonly choices: readonly Measured[];
  readonly pack: WrittenPack | null;
  /** The same amount written another way ("1 cup / 240 ml"). Never added, never used to correct the first. */
  readonly alternates: readonly AlternateAmount[];
  /** Amounts joined with "plus": already in `amount` where units allowed, else a reason says so. */
  readonly additions: readonly Measured[];
  /** Words of the food, without amount, form and preparation. */
  readonly food: string;
  /** The same with forms and sizes, which may belong to its name ("firm tofu"); left out where there are none. */
  readonly whole?: string;
  /** "juice", "zest", "white", "yolk": a part of the food that is counted. */
  readonly part: string | null;
  /** Words before the food that change what is measured ("chopped almonds"): canonical English, comma-separated. */
  readonly form: string | null;
  /** What is done after measuring ("almonds, chopped"), as written. */
  readonly preparation: string | null;
  readonly modifiers: readonly LineModifier[];
  /** Sizes, ripeness and remarks, as written. */
  readonly notes: readonly string[];
  /** 0 to 1: the product over the reasons. 1 means nothing was left open. */
  readonly confidence: number;
  readonly reasons: readonly LineReason[];
}
