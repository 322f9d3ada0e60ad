import type { Problem } from "../problem.js";

/** One thing that readers find otherwise; null before: it is new; null after: it is gone. */
export interface ReportedDifference {
  /** Such as "price", "allergen milk" or a path through a plan. */
  readonly what: string;
  readonly before: string | null;
  readonly after: string | null;
}

/** What an import did, or in a dry run would do, to one thing. */
export interface ReportedChange {
  /** Such as "plan barley-days", "food egg" or "pack box-of-6 of egg". */
  readonly what: string;
  readonly isNew: boolean;
  readonly differences: readonly ReportedDifference[];
  /** Whose word was replaced: a source, or who had saved the draft; null: the feed's own, or nobody's. */
  readonly superseded: string | null;
}

/** A row that was taken although something is wrong with it, such as a code that no list has. `part`: from 0. */
export interface RowWarning {
  readonly line: number;
  readonly part: number;
  readonly problem: Problem;
}

export interface ReportedRow {
  readonly line: number;
  readonly part: number;
  readonly problems: readonly Problem[];
  readonly isSettled: boolean;
}

/** What became of an import, for whoever looks after it in the morning. */
export interface ImportReport {
  readonly feed: string;
  /** null: the operator's. */
  readonly publisher: string | null;
  readonly run: string;
  readonly kind: "LOAD" | "DRY_RUN" | "UNDO";
  readonly state: "QUEUED" | "RUNNING" | "DONE" | "STOPPED" | "FAILED" | "CANCELLED";
  readonly fileName: string | null;
  readonly endedAt: Date | null;
  readonly counts: {
    readonly read: number;
    readonly created: number;
    readonly changed: number;
    readonly unchanged: number;
    readonly quarantined: number;
    readonly repeated: number;
  };
  /** Why it stopped or failed. */
  readonly problems: readonly Problem[];
  /** The first of them. */
  readonly changes: readonly ReportedChange[];
  readonly moreChanges: boolean;
  readonly warnings: readonly RowWarning[];
  readonly rows: readonly ReportedRow[];
  readonly moreRows: boolean;
}
