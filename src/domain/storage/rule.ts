import type { KeepingClass, PublishedKeepingRule, RuleAudience } from "../model/keeping.js";
import type { Source } from "../model/source.js";

export type HandlingTopic =
  | "ROOM"
  | "HOLDING"
  | "COOLING"
  | "REHEATING"
  | "THAWING"
  | "FREEZING"
  | "DATE_MARKING"
  | "PACKING"
  | "SOAKING"
  | "BOILING"
  | "HAZARD";

/** A number that a handling rule sets. `from` is the lower end where the source prints a range. */
interface HandlingLimit {
  readonly bound: "AT_MOST" | "AT_LEAST";
  readonly from: number | null;
  readonly value: number;
  readonly unit: "HOUR" | "MINUTE" | "DAY" | "INCH" | "TIME";
}

/** What a published source says about handling rather than keeping: cooling, reheating, thawing, temperatures, hazards. */
export interface HandlingRule {
  readonly id: string;
  readonly topic: HandlingTopic;
  /** What it is about, in a few words. */
  readonly about: string;
  readonly condition: string | null;
  readonly limit: HandlingLimit | null;
  readonly temperature: string | null;
  /** What is not a number: "never", "the clock stops". */
  readonly says: string | null;
  readonly audience: RuleAudience;
  readonly region: string;
  readonly inForceFrom: string | null;
  readonly inForceTo: string | null;
  readonly publisher: string;
  readonly note: string | null;
  readonly source: Source;
}

/** When a caution is due. Any one match is enough, and a match only ever adds a caution. */
interface CautionTrigger {
  readonly always: boolean;
  /** Anything of a class that needs the cold. */
  readonly perishable: boolean;
  /** Classes, each with the narrower ones inside it. */
  readonly keepsAs: readonly string[];
  /** Food slugs. */
  readonly foods: readonly string[];
  /** Whole words, or several in a row, in any name of a food; a star stands for the rest of one (`hähnchen*`). */
  readonly foodWords: readonly string[];
  /** The same in the text of a step; when `foodWords` or `foods` is given too, both must match one component or meal. */
  readonly stepWords: readonly string[];
}

/** A caution in the words, thresholds and units of one region. */
export interface RegionalCaution {
  /** ISO 3166 code, "EU", "ANZ", or "INT" for all others. */
  readonly region: string;
  readonly text: string;
  /** Ids of the published rules it rests on there. */
  readonly rules: readonly string[];
  readonly source: Source;
}

/** A caution as data: its words are the same in every output. */
export interface CautionRule {
  readonly code: string;
  /** For a reader of no known region: the strictest thresholds, in all units. */
  readonly text: string;
  /** The first that covers a reader's region is printed instead. Left out: none, as in the sets of 0.1.0. */
  readonly byRegion?: readonly RegionalCaution[];
  /** Codes of stricter cautions: where one is due for the same thing, this one is not printed for it. Left out: none. */
  readonly givesWayTo?: readonly string[];
  readonly when: CautionTrigger;
  /** Ids of the published rules it rests on. */
  readonly rules: readonly string[];
  readonly source: Source;
}

/** What published rules say about how long food keeps, and the kinds of food they speak of. */
export interface KeepingRules {
  /** The closed list of codes for `keepsAs`. */
  readonly classes: readonly KeepingClass[];
  readonly keeping: readonly PublishedKeepingRule[];
}

/** Everything published that this service knows about keeping and handling food, as one dated set. */
export interface FoodSafetyRules extends KeepingRules {
  readonly id: string;
  readonly version: string;
  /** ISO date of the set. */
  readonly date: string;
  readonly handling: readonly HandlingRule[];
  readonly cautions: readonly CautionRule[];
}
