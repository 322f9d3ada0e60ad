import type { Source } from "./source.js";

export type StoragePlace = "FRIDGE" | "FREEZER" | "ROOM";

/** How long something keeps, as its writer or its label says. */
export interface KeepingRule {
  readonly place: StoragePlace;
  readonly days: number;
  readonly container: string | null;
  /** "herbs scalded first": the rule holds only then. */
  readonly condition: string | null;
  readonly source: Source;
}

/**
 * A published ceiling for a class of food. Lives in a rule set beside the plans, never frozen into a revision:
 * a new set changes answers from its date on.
 */
export interface PublishedKeepingRule {
  readonly id: string;
  /** Class of food, matched with `keepsAs`: "cooked-grain", "leftovers"… */
  readonly keepsAs: string;
  readonly place: StoragePlace;
  readonly days: number;
  /** 1: the day of making is day 1 (retail date marks). 0: it is day 0 (household advice). */
  readonly firstDay: 0 | 1;
  readonly purpose: "SAFETY" | "QUALITY";
  /** ISO 3166 code of the authority, or "INT". */
  readonly region: string;
  readonly condition: string | null;
  /** Storage temperature the rule assumes, in the words of its source. */
  readonly temperature: string | null;
  /** ISO dates. `inForceTo` is set once a later edition superseded it; the rule is kept and marked, never used. */
  readonly inForceFrom: string;
  readonly inForceTo: string | null;
  readonly source: Source;
}
