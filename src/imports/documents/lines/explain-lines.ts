import type { InSlices, Work } from "../../../domain/counted-work.js";
import { languageOf } from "../../../domain/quantity/reader-locale.js";
import { lineIds } from "./read-lines.js";
import type { ReadDocument } from "../read-documents.js";
import { readTextLine, type TextLineReader } from "./read-text-line.js";
import type { LineDocument, OpenLine } from "../schemas/line-schema.js";
import { charactersInStep, lineLists, mostLooks, type LineThings } from "./resolve-text-lines.js";
import { lineNames } from "./line-names.js";

/** What a text line takes, as a line with keys would say it. */
export interface LineTaken {
  /** What steps call it; null: the line stands in no document. */
  readonly id: string | null;
  /** Slug of the food or of the component: one of the two. */
  readonly food: string | null;
  readonly component: string | null;
  readonly part: string | null;
  /** `2 us-cup`; null: to taste. */
  readonly amount: string | null;
  readonly each: string | null;
  /** Weighed or measured after trimming. */
  readonly isReady: boolean;
  readonly form: string | null;
  readonly preparation: string | null;
  readonly size: string | null;
  readonly plusMore: boolean;
  readonly optional: boolean;
}

/** How a text line was read. */
export interface LineExplained {
  readonly written: string;
  /** Two for "juice and zest of 2 lemons"; empty: the line is open. */
  readonly takes: readonly LineTaken[];
  readonly open: OpenLine | null;
  /** null: the line stands in no document. */
  readonly place: { readonly file: string; readonly line: number; readonly column: number } | null;
}

const takenOf = (line: LineDocument, id: string | null): LineTaken => ({
  id,
  food: line.food ?? null,
  component: line.component ?? null,
  part: line.part,
  amount: line.amount,
  each: line.each,
  isReady: line.measured === "READY",
  form: line.form,
  preparation: line.preparation,
  size: line.size ?? null,
  plusMore: line["plus-more"],
  optional: line.optional,
});

/** How the text lines of documents were read; the documents as resolving left them. */
export const explainLines = (documents: readonly ReadDocument[]): readonly LineExplained[] =>
  documents.flatMap(explainDocument);

function explainDocument(read: ReadDocument): readonly LineExplained[] {
  return lineLists(read.document).flatMap(({ path, lines }) => {
    const ids = lineIds(lines);
    const found = new Map<string, LineExplained>();
    for (const [at, line] of lines.entries()) {
      if (line.text === undefined) continue;
      const here = [...path, at];
      const written = read.writtenAt?.(here) ?? here;
      const key = written.join("/");
      const before = found.get(key)?.takes ?? [];
      found.set(key, {
        written: line.text,
        takes: line.open === undefined ? [...before, takenOf(line, ids[at] ?? null)] : [],
        open: line.open ?? null,
        place: { file: read.file, ...read.place(written, "VALUE") },
      });
    }
    return [...found.values()];
  });
}

/** Reads lines that stand in no document. */
export function* explainTexts(
  texts: readonly string[],
  how: Pick<TextLineReader, "locale" | "measures" | "region">,
  { foods, components }: LineThings,
  work: Work,
): InSlices<readonly LineExplained[]> {
  const names = yield* lineNames(foods, components, [languageOf(how.locale)], work);
  const reader = { ...how, names, looks: mostLooks };
  const explained: LineExplained[] = [];
  for (const written of texts) {
    work.step(1 + written.length / charactersInStep);
    yield;
    const read = readTextLine(written, reader);
    explained.push({
      written,
      takes: (read.lines ?? []).map((line) => takenOf(line, null)),
      open: read.lines === null ? read.open : null,
      place: null,
    });
  }
  return explained;
}
