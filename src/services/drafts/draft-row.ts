import type { Problem } from "../../domain/problem.js";
import type { ReadDocument } from "../../imports/documents/read-documents.js";
import type { DraftKind } from "../deps.js";

/** One thing of a file that is to become a draft, or what became of it already. */
export interface DraftRow {
  readonly line: number;
  /** From 0: several recipes may begin on one line. */
  readonly part: number;
  readonly raw: string;
  readonly state:
    | {
        readonly kind: "BAD";
        readonly problems: readonly Problem[];
        readonly offer: string | null;
        /** Slug of the component it would have been; what builds on it cannot be taken either. */
        readonly component: string | null;
      }
    /** A later row of the file stands for the same thing, and counts instead. */
    | { readonly kind: "REPEATED" }
    /** The same as when it was last imported. */
    | { readonly kind: "SAME" }
    | NewText;
}

/** A text that is to be a draft. */
export interface NewText {
  readonly kind: "TEXT";
  readonly draft: DraftKind;
  readonly slug: string;
  readonly text: string;
  /** The line of the file that the text begins on. */
  readonly firstLine: number;
  /** What a person may start from where the text cannot be taken; null: the row as it stands. */
  readonly offer: string | null;
  readonly read: ReadDocument;
}

/** What loading a row does that is taken. PUBLISH: its text is the same, and what readers have of it is not. */
export interface TakenVerdict {
  readonly kind: "CREATED" | "CHANGED" | "PUBLISH";
  /** Slug of the plan that is published with this row, the last of the file that changes it or a translation of it; null: none is. */
  readonly publishes: string | null;
}

/** A place in a text of a file, as a place in the file. */
export const placedInFile = (problem: Problem, firstLine: number): Problem =>
  problem.place === undefined
    ? problem
    : { ...problem, place: { ...problem.place, line: problem.place.line + firstLine - 1 } };

/** The rows of a file in the order they are to be loaded: what a row builds on comes before it. Always the same order. */
export type DraftRows = () => AsyncIterable<DraftRow>;
