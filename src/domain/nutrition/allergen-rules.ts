import type { Source } from "../model/source.js";

/** One line of a law's list. */
export interface AllergenEntry {
  readonly code: string;
  /** As it must be declared. */
  readonly name: string;
  /** Codes of foods' allergens that fall under it. */
  readonly includes: readonly string[];
  /** "10 mg/kg or more"; null: any amount. */
  readonly threshold: string | null;
  readonly exempt: string | null;
  readonly source: Source;
}

/** What must be declared in a region, from a date on. */
export interface AllergenList {
  readonly id: string;
  readonly region: string;
  readonly law: string;
  readonly inForceFrom: string | null;
  readonly inForceTo: string | null;
  readonly entries: readonly AllergenEntry[];
}

/** How far one region counts oats as a cereal with gluten: always, unless the food says otherwise, or not. */
export interface DietBreak {
  readonly code: string;
  /** ALWAYS breaks the diet; UNLESS_STATED breaks it if the food makes no statement; UNKNOWN_UNLESS_STATED leaves it open. */
  readonly when: "ALWAYS" | "UNLESS_STATED" | "UNKNOWN_UNLESS_STATED";
  /** null: everywhere that has no line of its own for this code. */
  readonly region: string | null;
}

/** A diet, as what breaks it. */
export interface DietRule {
  readonly code: string;
  /** What is stated, never a promise: "no ingredient that contains gluten". */
  readonly name: string;
  /** ABSENCE: settled when none of `breaks` is in the food. STATED: only the food's own statement can settle it. */
  readonly settledBy: "ABSENCE" | "STATED";
  readonly breaks: readonly DietBreak[];
  /** Codes of wider diets that whatever keeps this one keeps too: vegan food has no meat. Left out: none, as in the sets of 0.1.0. */
  readonly implies?: readonly string[];
  readonly source: Source;
}

/** A claim that a law ties to a number, shown beside the diet of the same code. */
export interface DietClaim {
  readonly id: string;
  readonly diet: string;
  readonly region: string;
  readonly law: string;
  readonly threshold: string;
  readonly note: string | null;
  readonly source: Source;
}

/** Everything published that this service knows about allergens and diets, as one dated set. */
export interface AllergenRules {
  readonly id: string;
  readonly version: string;
  readonly date: string;
  readonly lists: readonly AllergenList[];
  readonly diets: readonly DietRule[];
  readonly claims: readonly DietClaim[];
}
