import type { Path } from "./path.js";

/** Something a reader should know beside an answer that still stands. */
export type Warning =
  | { readonly code: "NOT_COMBINED"; readonly path: Path; readonly food: string; readonly missing: string }
  | {
      readonly code: "PART_NOT_COUNTED";
      readonly path: Path;
      readonly food: string;
      readonly part: string;
      readonly missing: string;
    }
  | {
      readonly code: "EDIBLE_PORTION_UNKNOWN";
      readonly path: Path;
      readonly food: string;
      readonly form: string | null;
    }
  /** `food` null: of nothing that is to be bought. */
  | { readonly code: "PRICE_UNKNOWN"; readonly path: Path; readonly food: string | null }
  | {
      readonly code: "PACK_NOT_COMPARABLE";
      readonly path: Path;
      readonly food: string;
      readonly pack: string;
      readonly missing: string;
    }
  | { readonly code: "ON_HAND_NOT_COMPARABLE"; readonly path: Path; readonly item: string; readonly missing: string }
  | {
      readonly code: "ON_HAND_IN_OTHER_FORM";
      readonly path: Path;
      /** The food needed, and the one on hand that turns into it. */
      readonly item: string;
      readonly from: string;
      /** Grams of `item` that what is on hand would give, and grams of `from` the whole need would take. */
      readonly gives: number;
      readonly wouldTake: number;
    }
  | { readonly code: "ON_HAND_NOT_NEEDED"; readonly path: Path; readonly item: string }
  | { readonly code: "ON_HAND_TOO_OLD"; readonly path: Path; readonly item: string; readonly useBy: string }
  /** There is more of it on hand than was taken: these meals need it, and are eaten after its date. */
  | {
      readonly code: "ON_HAND_NOT_IN_TIME";
      readonly path: Path;
      readonly item: string;
      readonly useBy: string;
      readonly meals: readonly string[];
    }
  | {
      readonly code: "DIET_NOT_MET";
      readonly path: Path;
      readonly diet: string;
      readonly item: string;
      readonly known: boolean;
      /** Swaps that the line offers and that were not taken; absent: none is offered. */
      readonly offered?: readonly string[];
    }
  /** An allergen that the household avoids is in a food, may be, or nobody knows. */
  | {
      readonly code: "ALLERGEN_NOT_AVOIDED";
      readonly path: Path;
      readonly allergen: string;
      readonly item: string;
      readonly presence: "CONTAINS" | "MAY_CONTAIN" | "UNKNOWN";
      /** Swaps that the line offers and that were not taken; absent: none is offered, or it is not known to be needed. */
      readonly offered?: readonly string[];
    }
  /** A food that the household does not like stays in these meals: nothing that suits it is offered instead. */
  | {
      readonly code: "DISLIKE_NOT_AVOIDED";
      readonly path: Path;
      readonly item: string;
      readonly meals: readonly string[];
    }
  /** It is optional in these meals, and was left out of them. */
  | { readonly code: "DISLIKE_LEFT_OUT"; readonly path: Path; readonly item: string; readonly meals: readonly string[] }
  | { readonly code: "SWAP_NOT_OFFERED"; readonly path: Path; readonly from: string; readonly to: string }
  | {
      readonly code: "SWAP_NOT_CONVERTIBLE";
      readonly path: Path;
      readonly from: string;
      readonly to: string;
      readonly missing: string;
    }
  | {
      readonly code: "MADE_IN_TWO_PLANS";
      readonly path: Path;
      readonly component: string;
      readonly plans: readonly string[];
    }
  | {
      readonly code: "LEFT_OVER";
      readonly path: Path;
      readonly component: string;
      readonly servingsMore: number | null;
    }
  | {
      /** The part keeps `days` once its piece is cut, which is too short for a meal on `day` where one is cut on `cutOn`. */
      readonly code: "PART_TOO_OLD";
      readonly path: Path;
      readonly food: string;
      readonly part: string;
      readonly meal: string;
      readonly day: number;
      readonly cutOn: number;
      readonly days: number;
    }
  | {
      /** What is bought for the session keeps `days` days; the share for these meals is bought on a later trip. */
      readonly code: "BUY_LATER";
      readonly path: Path;
      readonly food: string;
      readonly meals: readonly string[];
      /** Days after the session. */
      readonly notBefore: number;
      readonly days: number;
    }
  | {
      /** Eaten on the day of the session, at an hour before that begins. */
      readonly code: "MEAL_BEFORE_SESSION";
      readonly path: Path;
      readonly meal: string;
      /** Hours on the clock, `HH:MM`. */
      readonly at: string;
      readonly start: string;
    }
  | { readonly code: "KEEPING_UNKNOWN"; readonly path: Path; readonly item: string }
  /** Its keeping class is none that the rules know, as in documents of old: it is read as the strictest of all. */
  | { readonly code: "KEEPING_CLASS_UNKNOWN"; readonly path: Path; readonly item: string; readonly keepsAs: string }
  | { readonly code: "REGION_NOT_GIVEN"; readonly path: Path; readonly used: string };

export type WarningCode = Warning["code"];
