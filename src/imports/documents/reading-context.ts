import type { Measured, MeasureSystem } from "../../domain/model/amount.js";
import type { OwnMeasure } from "../../domain/model/food.js";
import type { Source } from "../../domain/model/source.js";
import type { Path, Result } from "../../domain/problem.js";
import { parseAmount } from "../../domain/quantity/parse.js";
import { readSource } from "./read-source.js";
import type { SourcesWritten, SourceWritten } from "./schemas/shared-schemas.js";

/** What the head of a document says about all its amounts and sources. */
export interface ReadingContext {
  readonly amount: (written: string, own: readonly OwnMeasure[], path: Path) => Result<Measured>;
  readonly source: (written: SourceWritten, path: Path) => Result<Source>;
}

interface DocumentHead {
  readonly locale: string;
  readonly "measured-in": MeasureSystem;
  readonly sources?: SourcesWritten;
}

export const readingContextOf = (head: DocumentHead): ReadingContext => ({
  amount: (written, own, path) =>
    parseAmount(written, { locale: head.locale, measures: head["measured-in"], own, path }),
  source: (written, path) => readSource(written, head.sources, path),
});
