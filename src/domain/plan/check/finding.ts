import type { BaseAmount } from "../../model/amount.js";
import type { TemperatureUnit } from "../../quantity/temperature.js";
import type { FormProblem, Path, StoppingProblem, TextPlace } from "../../problem.js";

/** Titles and names in the writer's language, by `components/SLUG`, `meals/SLUG` and `foods/SLUG`. */
export type FindingNames = ReadonlyMap<string, string>;

interface ToLookAt {
  readonly severity: "LOOK";
  readonly path: Path;
}

/**
 * What the writer's check found, as facts; sentences are made at the edge. STOPS: must be mended before publishing, and is a
 * problem itself. LOOK: readers complain about it; the writer decides.
 */
export type Finding =
  | (StoppingProblem & { readonly severity: "STOPS" })
  | (ToLookAt &
      (
        | FormProblem
        | { readonly code: "APPLIANCE_NOT_IN_KITCHEN"; readonly appliance: string }
        | { readonly code: "LINE_IN_NO_STEP"; readonly item: string }
        | { readonly code: "AMOUNT_MISSING"; readonly item: string }
        | { readonly code: "NOT_MEASURABLE"; readonly item: string; readonly amount: BaseAmount }
        | { readonly code: "COMPONENT_NEVER_EATEN"; readonly component: string }
        | {
            readonly code: "COMPONENT_LEFT_OVER";
            readonly component: string;
            readonly share: number;
            readonly limit: number;
          }
        | {
            readonly code: "KEPT_TOO_LONG";
            readonly subject: string;
            readonly meal: string;
            readonly day: number;
            readonly days: number;
            /** Hours from the start of a session at nine to the meal, where hours decide; left out where days do. */
            readonly hoursAfter?: number;
          }
        | { readonly code: "NOBODY_SAYS_HOW_LONG"; readonly subject: string }
        | { readonly code: "OVEN_WITHOUT_TEMPERATURE"; readonly component: string; readonly step: string }
        | {
            readonly code: "OVEN_NOT_PREHEATED";
            readonly component: string;
            readonly step: string;
            readonly temperatureC: number;
          }
        | { readonly code: "FIXED_FOR_MORE"; readonly step: string; readonly batches: number }
        | { readonly code: "FOOD_OF_OPEN_TABLE"; readonly food: string }
        | { readonly code: "CUT_IN_NO_STEP"; readonly item: string }
        | { readonly code: "HOT_MAY_WAIT"; readonly step: string }
        | {
            readonly code: "NEVER_CHILLED";
            readonly subject: string;
            /** The first meal it is kept for, and its day. */
            readonly meal: string;
            readonly day: number;
            /** Minutes from the heat into the cold. */
            readonly within: number;
          }
        | { readonly code: "CAUTION_NOT_NAMED"; readonly subject: string; readonly caution: string }
        | { readonly code: "CAUTION_UNKNOWN"; readonly subject: string; readonly caution: string }
        | {
            readonly code: "TRANSLATION_INCOMPLETE";
            /** BCP 47 tag. */
            readonly language: string;
            readonly translated: number;
            readonly total: number;
            /** The first of those that are missing. */
            readonly texts: readonly string[];
          }
        /** Their originals were changed, or are gone. `texts`: the first of `count`. */
        | {
            readonly code: "TRANSLATION_OUTDATED" | "TRANSLATION_ORPHANED";
            readonly language: string;
            readonly count: number;
            readonly texts: readonly string[];
          }
        /** Addresses that only one of a text and its translation leads to. */
        | { readonly code: "TRANSLATION_LINKS"; readonly language: string; readonly links: readonly string[] }
        | { readonly code: "SESSION_TOO_LONG"; readonly minutes: number; readonly promised: number }
      ));

/** A finding with the names of what it speaks of, and the degrees of the region it is checked for; left out: Celsius. */
export type NamedFinding = Finding & { readonly names?: FindingNames; readonly degrees?: TemperatureUnit };

/** A finding with its place in the writer's own text, where there is one. */
export type PlacedFinding = NamedFinding & { readonly place?: TextPlace };

/** The findings that stop publishing, as problems of the plan. */
export const stopping = (findings: readonly Finding[]): readonly StoppingProblem[] =>
  findings.filter((finding) => finding.severity === "STOPS");
