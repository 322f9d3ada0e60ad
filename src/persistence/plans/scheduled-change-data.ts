import type { PlanBundle } from "../../domain/model/plan.js";
import type { Problem } from "../../domain/problem.js";
import type { Author } from "../access/author.js";
import type { Page, PageRequest } from "../sql/page.js";

type ScheduledKind = "PUBLISH" | "WITHDRAW";
export type ScheduledState = "WAITING" | "DONE" | "KEPT_BACK" | "CANCELLED";
type CancelledBecause = "ASKED" | "REPLACED" | "TOKEN_REVOKED";

/** When, as an instant and as it was asked for. */
export interface ScheduledTime {
  readonly dueAt: Date;
  /** ISO date and time on the clock of the zone, without an offset. */
  readonly localTime: string;
  /** IANA name. */
  readonly zone: string;
}

/** A publication or a withdrawal that is to be done at an hour, without the document. */
export interface ScheduledChange extends ScheduledTime {
  readonly id: string;
  /** Slug. */
  readonly publisher: string;
  /** Slug of the plan. */
  readonly slug: string;
  readonly kind: ScheduledKind;
  readonly state: ScheduledState;
  /** Of the draft; null: a withdrawal. */
  readonly version: number | null;
  readonly changeNote: string | null;
  /** Of a withdrawal, for readers. */
  readonly reason: string | null;
  /** Id of the revision in force when this was asked for; null: there was none. */
  readonly inForce: string | null;
  /** Number of the revision that came of it. */
  readonly revision: number | null;
  /** Why it was kept back. */
  readonly problems: readonly Problem[];
  readonly cancelledBecause: CancelledBecause | null;
  readonly createdAt: Date;
  readonly createdBy: Author;
  readonly endedAt: Date | null;
}

type NewScheduledChange = Omit<
  ScheduledChange,
  "id" | "state" | "revision" | "problems" | "cancelledBecause" | "endedAt"
> & {
  /** What is published; null: a withdrawal. */
  readonly bundle: PlanBundle | null;
};

export type ScheduledEnd =
  | { readonly state: "DONE"; readonly revision: number | null }
  | { readonly state: "KEPT_BACK"; readonly problems: readonly Problem[] }
  | { readonly state: "CANCELLED"; readonly because: CancelledBecause };

export interface ScheduledChangeData {
  /** Returns its id. */
  add(change: NewScheduledChange): Promise<string>;
  find(id: string): Promise<ScheduledChange | null>;
  /** What is published, as it was when that was asked for. */
  bundle(id: string): Promise<PlanBundle | null>;
  /** Those of one plan that wait. */
  waiting(publisher: string, slug: string): Promise<readonly ScheduledChange[]>;
  countWaiting(publisher: string): Promise<number>;
  /** The next first; `states` empty: all. */
  page(publisher: string, states: readonly ScheduledState[], request: PageRequest): Promise<Page<ScheduledChange>>;
  /** Those that wait and whose time has come, the oldest first. */
  due(now: Date, limit: number): Promise<readonly ScheduledChange[]>;
  /** Inside a transaction: it is this one's alone until that ends. null: it waits no more. */
  claim(id: string): Promise<ScheduledChange | null>;
  /** Tells webhooks of what was kept back. false: it waited no more. */
  end(id: string, at: Date, end: ScheduledEnd): Promise<boolean>;
  /** false: it waits no more. */
  move(id: string, time: ScheduledTime): Promise<boolean>;
  /** Cancels whatever a token asked for that waits; counts them. */
  cancelOfToken(token: string, at: Date): Promise<number>;
  /** Those that were kept back since, the newest first; of one publisher, or (null) all. */
  keptBackSince(from: Date, publisher: string | null, limit: number): Promise<readonly ScheduledChange[]>;
}
