import type { Source } from "./source.js";

export type StoragePlace = "FRIDGE" | "FREEZER" | "ROOM";

/** How long something keeps, as its writer or its label says. */
export interface KeepingRule {
  readonly place: StoragePlace;
  readonly days: number;
  readonly container: string | null;
  /** "herbs scalded first": the rule holds only then. */
  readonly condition: string | null;
  /** Absent: QUALITY in the freezer, SAFETY elsewhere. */
  readonly purpose?: "SAFETY" | "QUALITY";
  /** Where the figure was published for; absent: nobody says. */
  readonly region?: string;
  readonly source: Source;
}

/** One kind of food that published rules speak about. */
export interface KeepingClass {
  readonly code: string;
  /** What belongs to it, in a few words. */
  readonly what: string;
  /** Code of the next wider class: its ceilings hold here as well. null: none. */
  readonly within: string | null;
  /** Nobody publishes a figure for this very kind; the ceilings of `within` stand in for it, and the answer says so. */
  readonly byAnalogy: boolean;
  /** Needs the cold: the time out of the refrigerator is limited (two-hour rule). */
  readonly perishable: boolean;
}

/** For whom a rule was written: people at home, or kitchens that sell what they cook. */
export type RuleAudience = "HOUSEHOLD" | "FOOD_SERVICE" | "ANY";

/**
 * A published ceiling for a class of food. Lives in a rule set beside the plans, never frozen into a revision:
 * a new set changes answers from its date on.
 */
export interface PublishedKeepingRule {
  readonly id: string;
  /** Class of food, matched with `keepsAs`: "cooked-grain", "leftovers"… One of the classes of its set. */
  readonly keepsAs: string;
  readonly place: StoragePlace;
  /** The upper end where the source prints a range; hours are fractions of a day. */
  readonly days: number;
  /** The lower end of a printed range, or null. */
  readonly daysFrom: number | null;
  /** DAYS end with a calendar day; HOURS run from the moment of making, whatever the clocks on the wall do. */
  readonly counts: "DAYS" | "HOURS";
  /** 1: the day of making is day 1 (retail date marks). 0: it is day 0 (household advice). */
  readonly firstDay: 0 | 1;
  /** The length as the source words it: "3 to 4 days", "48 hours". */
  readonly printed: string;
  readonly purpose: "SAFETY" | "QUALITY";
  readonly audience: RuleAudience;
  /** ISO 3166 code of the authority, "EU", "ANZ" (Australia and New Zealand), or "INT". */
  readonly region: string;
  readonly condition: string | null;
  /** Storage temperature the rule assumes, in the words of its source. */
  readonly temperature: string | null;
  /**
   * ISO dates; from null: the source does not say. `inForceTo` is the first day it no longer holds, set once a later
   * edition superseded it; the rule is kept and marked, never used.
   */
  readonly inForceFrom: string | null;
  readonly inForceTo: string | null;
  /** Who issued it. */
  readonly publisher: string;
  /** What a reader of the rules should know: two rows of one source that disagree, a value nobody published. */
  readonly note: string | null;
  readonly source: Source;
}
