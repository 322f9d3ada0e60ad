import { hash } from "node:crypto";
import type { DraftDocument, DraftMarks, DraftWriting } from "../data.js";

interface DocumentColumns {
  readonly documentText: string | null;
  readonly documentFormat: DraftDocument["format"] | null;
  readonly contentHash: string | null;
}

export interface MarkColumns extends DocumentColumns {
  readonly version: number;
  readonly updatedAt: Date;
  readonly updatedBy: string | null;
}

/** SHA-256 of a document's text, hex. */
export const hashOfText = (text: string): string => hash("sha256", text);

/** The columns of a draft that hold what its writer wrote, and who saved it. */
export const documentColumns = ({
  document,
  by,
}: DraftWriting): DocumentColumns & { readonly updatedBy: string | null } => ({
  documentText: document?.text ?? null,
  documentFormat: document?.format ?? null,
  contentHash: document === null ? null : hashOfText(document.text),
  updatedBy: by,
});

/** What is known of a draft beside its value. */
export const marksOf = (row: MarkColumns): DraftMarks => ({
  version: row.version,
  updatedAt: row.updatedAt,
  updatedBy: row.updatedBy,
  document: documentOf(row),
});

const documentOf = ({ documentText, documentFormat, contentHash }: DocumentColumns): DraftMarks["document"] =>
  documentText === null || documentFormat === null || contentHash === null
    ? null
    : { text: documentText, format: documentFormat, hash: contentHash };
