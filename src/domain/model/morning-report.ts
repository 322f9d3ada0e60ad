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

/** What became of the imports of a night, the newest first. */
export interface MorningReport {
  readonly from: Date;
  readonly to: Date;
  readonly imports: readonly MorningImport[];
  readonly moreImports: boolean;
}
