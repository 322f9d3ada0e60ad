// @ts-nocheck
import type { BaseAmount } from "../model/amount.js";

/** What a reader can do or should know, as facts; sentences are made at the edge. Days count from the session. */
export type Advice =
  | {
      readonly code: "FREEZE";
      readonly component: string;
      /** How much for which meal; null where amounts cannot be added. */
      readonly portions: readonly { readonly meal: string; readonly day: number; readonly amount: BaseAmount | null }[];
      /** Days before each meal on which its portion moves to the fridge. */
      readonly thawDaysBefore: number;
      /** How long it keeps once thawed, and by which published rule (null: what was left when it was frozen). */
      readonly daysAfterThawing: number;
      readonly thawRule: string | null;
    }
  | {
      readonly code: "MAKE_LATER";
      readonly component: string;
      readonly meals: readonly { readonly meal: string; readonly day: number; readonly notBefore: number }[];
    }
  | { readonly code: "SWAP_DAYS"; readonly meal: string; readonly with: string }
  | { readonly code: "EAT_EARLIER"; readonly meal: string; readonly latestDay: number }
  | {
      readonly code: "SHOP_TWICE";
      readonly food: string;
      readonly meals: readonly string[];
      readonly notBefore: number;
    }
  /** Hours count: on its last day it is not good until midnight. */
  | { readonly code: "EAT_BEFORE"; readonly day: number; readonly hours: number; readonly until: string | null }
  | { readonly code: "NO_PUBLISHED_RULE"; readonly keepsAs: string | null }
  | {
      readonly code: "WRITER_EXCEEDS_RULE";
      readonly writerDays: number;
      readonly ruleDays: number;
      readonly rule: string;
    }
  | { readonly code: "REGION_WITHOUT_RULE"; readonly asked: string; readonly used: string };
