import type { BaseAmount } from "../model/amount.js";
import type { Path } from "../problem.js";

/** STOPS: must be mended before publishing. LOOK: readers complain about it; the writer decides. */
export type Severity = "STOPS" | "LOOK";

interface Found {
  readonly severity: Severity;
  readonly path: Path;
}

/** What the writer's check found, as facts; sentences are made at the edge. */
export type Finding = Found &
  (
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
      }
    | { readonly code: "NOBODY_SAYS_HOW_LONG"; readonly subject: string }
    | { readonly code: "OVEN_WITHOUT_TEMPERATURE"; readonly component: string; readonly step: string }
    | {
        readonly code: "OVEN_NOT_PREHEATED";
        readonly component: string;
        readonly step: string;
        readonly temperatureC: number;
      }
    | { readonly code: "CAUTION_NOT_NAMED"; readonly subject: string; readonly caution: string }
    | { readonly code: "CAUTION_UNKNOWN"; readonly subject: string; readonly caution: string }
    | { readonly code: "CLAIM_BROKEN"; readonly claim: string; readonly foods: readonly string[] }
    | { readonly code: "CLAIM_NOT_KNOWN"; readonly claim: string; readonly foods: readonly string[] }
    | { readonly code: "CLAIM_WITHOUT_RULE"; readonly claim: string }
    | { readonly code: "SESSION_TOO_LONG"; readonly minutes: number; readonly promised: number }
  );
