/** A run of what a writer wrote. */
export type WrittenInline =
  | { readonly kind: "TEXT"; readonly text: string }
  /** A line that ends where the writer ended it. */
  | { readonly kind: "BREAK" }
  | {
      readonly kind: "EMPHASIS" | "STRONG";
      /** As written: two that touch would be read as one if both had the same. */
      readonly mark: "*" | "_";
      readonly content: readonly WrittenInline[];
    }
  /** `address` is http or https. */
  | { readonly kind: "LINK"; readonly address: string; readonly content: readonly WrittenInline[] };

export type WrittenBlock =
  | { readonly kind: "PARAGRAPH"; readonly content: readonly WrittenInline[] }
  | {
      readonly kind: "LIST";
      /** Number of its first item; null: a list without an order. */
      readonly start: number | null;
      readonly items: readonly (readonly WrittenBlock[])[];
    };

/** What is CommonMark, or nearly, and not among what a writer may use. */
export type WritingFaultKind =
  | "CODE"
  | "DEEP_EMPHASIS"
  | "DEEP_LIST"
  | "DEFINITION"
  | "EMPTY_ITEM"
  | "ENTITY"
  | "HEADING"
  | "HTML"
  | "IMAGE"
  | "LINK_ADDRESS"
  | "LINK_TITLE"
  | "LIST_IN_LINE"
  | "QUOTE"
  | "RULE"
  | "TAB"
  | "UNPAIRED_MARKS";

export interface WritingFault {
  readonly kind: WritingFaultKind;
  /** Line of the text, from 1. */
  readonly line: number;
  /** What is written there. */
  readonly got: string;
}

/** A text taken apart. Where there are faults, it is shown as it is written, and nothing of it is markup. */
export interface Writing {
  readonly blocks: readonly WrittenBlock[];
  readonly faults: readonly WritingFault[];
}

/** The most levels of lists in lists and of emphasis in emphasis, marks in a row, and letters of an address. */
export const writingLimits = { lists: 5, emphasis: 8, marks: 3, address: 2000 } as const;
