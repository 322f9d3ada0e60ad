import type { AllergenRules } from "../../nutrition/allergen-rules.js";
import type { FoodSafetyRules } from "../../storage/rule.js";

/** Published rules of every kind that were issued together. A set is used whole, and never changes. */
export interface RuleSet {
  /** Its edition: `2026-11`. */
  readonly code: string;
  readonly title: string;
  /** ISO date of the first day it is used. Rules inside it may begin and end on days of their own. */
  readonly inForceFrom: string;
  readonly safety: FoodSafetyRules;
  readonly allergens: AllergenRules;
}
