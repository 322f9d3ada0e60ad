import type { Problem } from "../problem.js";
import type { ImportReport } from "./import-report.js";

/** An import without what it did, and whose word it replaced: sources, or who had saved a draft. */
export type MorningImport = Pick<
  ImportReport,
  "feed" | "publisher" | "run" | "kind" | "state" | "endedAt" | "counts" | "problems"
> & {
  readonly superseded: readonly string[];
  /** Put aside by it, and neither mended nor passed over since. */
  readonly toMend: number;
};

/** A published plan of which readers are told something else than before. */
export interface ChangedPlan {
  readonly publisher: string;
  readonly slug: string;
  readonly title: string;
  readonly revision: number;
  readonly lessSafe: boolean;
  readonly changedAt: Date;
  readonly differences: readonly {
    readonly kind: string;
    readonly path: readonly (string | number)[];
    readonly before: string | null;
    readonly after: string | null;
    readonly lessSafe: boolean;
  }[];
}

/** A token from before 0.2.0 that publishes through feeds of that time without the scope PUBLISH. */
export interface ImportOnlyToken {
  /** Its id. */
  readonly token: string;
  readonly name: string;
  /** null: the operator's. */
  readonly publisher: string | null;
  /** `PUBLISHER/FEED`. */
  readonly feeds: readonly string[];
  /** From then on it needs PUBLISH too. */
  readonly until: Date;
}

/** A publication or withdrawal at an hour that could not be carried out. */
export interface KeptBack {
  /** Its id. */
  readonly scheduled: string;
  readonly publisher: string;
  readonly slug: string;
  readonly kind: "PUBLISH" | "WITHDRAW";
  readonly localTime: string;
  readonly zone: string;
  readonly problems: readonly Problem[];
}

/** What became of the imports of a night, the newest first. */
export interface MorningReport {
  readonly from: Date;
  readonly to: Date;
  readonly imports: readonly MorningImport[];
  readonly moreImports: boolean;
  /** Less safe ones first. Left out: none was looked for. */
  readonly plans?: readonly ChangedPlan[];
  /** Left out: none was looked for. */
  readonly importOnlyTokens?: readonly ImportOnlyToken[];
  /** The newest first. Left out: none was looked for. */
  readonly keptBack?: readonly KeptBack[];
}
