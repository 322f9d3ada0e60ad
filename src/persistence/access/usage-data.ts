import type { Page, PageRequest } from "../sql/page.js";

/** What the requests with one token came to on one day (UTC). */
export interface TokenUsage {
  /** `2026-12-01`. */
  readonly day: string;
  readonly requests: number;
  /** Those that were refused because the points of that minute were used up. */
  readonly refused: number;
  readonly points: number;
}

/** How often readers asked for one plan on one day (UTC). */
export interface PlanRequests {
  /** `2026-12-01`. */
  readonly day: string;
  /** Slug. */
  readonly plan: string;
  readonly requests: number;
}

/** Sums that are added to those of their days. */
export interface CountedRequests {
  readonly tokens: readonly (TokenUsage & { readonly token: string })[];
  /** `publisher`: slug. What is no published plan is left out. */
  readonly plans: readonly (PlanRequests & { readonly publisher: string })[];
}

export interface UsageData {
  add(counted: CountedRequests): Promise<void>;
  /** Newest day first, days without requests left out. */
  ofToken(token: string, days: number): Promise<readonly TokenUsage[]>;
  /** Newest day first; of one plan by its slug, or (null) of all. */
  plans(publisher: string, plan: string | null, request: PageRequest): Promise<Page<PlanRequests>>;
  /** Removes what is older, and returns how many rows that were. */
  forget(before: string): Promise<number>;
}
