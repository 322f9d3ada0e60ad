import type { WrittenBlock } from "../../domain/writing/writing.js";

/** Words in a language. */
interface Said {
  readonly text: string;
  /** BCP 47 tag where it is another than that of the words around them. */
  readonly language?: string;
}

/** A run of text inside a line. */
export type Inline =
  | ({ readonly kind: "TEXT" } & Said)
  | ({ readonly kind: "STRONG" } & Said)
  /** Said beside the matter: sources, notes. */
  | { readonly kind: "ASIDE"; readonly text: string }
  | { readonly kind: "LINK"; readonly text: string; readonly address: string };

export type Line = readonly Inline[];

/** Lines that belong together, each begun anew. */
export type Lines = readonly Line[];

/** TICKS: things to tick off. TICKED: those that are ticked already. STEPS: in order. */
export type ListKind = "ITEMS" | "TICKS" | "TICKED" | "STEPS";

/**
 * A document before it is Markdown or HTML: what is said and in what order. Every way out for reading is drawn from the same
 * blocks, so that all say the same words; drawing escapes every text.
 */
export type Block =
  /** A text of the writer's own: `writtenBlocks`. */
  | { readonly kind: "WRITTEN"; readonly blocks: readonly WrittenBlock[]; readonly language?: string }
  | ({ readonly kind: "HEADING"; readonly level: 1 | 2 | 3 } & Said)
  | { readonly kind: "PARAGRAPH"; readonly lines: Lines }
  | { readonly kind: "LIST"; readonly of: ListKind; readonly items: readonly Lines[] }
  /** The first cell of a row names it. Every row is as long as `head`. */
  | { readonly kind: "TABLE"; readonly head: readonly string[]; readonly rows: readonly (readonly Lines[])[] };

/** `language` null: that of the words around it. */
const said = (words: string, language: string | null): Said => ({
  text: words,
  ...(language !== null && { language }),
});

export const text = (words: string, language: string | null = null): Inline => ({
  kind: "TEXT",
  ...said(words, language),
});
export const strong = (words: string, language: string | null = null): Inline => ({
  kind: "STRONG",
  ...said(words, language),
});
export const aside = (words: string): Inline => ({ kind: "ASIDE", text: words });
export const link = (words: string, address: string): Inline => ({ kind: "LINK", text: words, address });

/** One line of plain text. */
export const plain = (words: string): Lines => [[text(words)]];

export const heading = (level: 1 | 2 | 3, words: string, language: string | null = null): Block => ({
  kind: "HEADING",
  level,
  ...said(words, language),
});
export const paragraph = (...lines: Lines): Block => ({ kind: "PARAGRAPH", lines });

/** No block where there is no item. */
export const listOf = (of: ListKind, items: readonly Lines[]): readonly Block[] =>
  items.length === 0 ? [] : [{ kind: "LIST", of, items }];

/** No block where there is no row. */
export const tableOf = (head: readonly string[], rows: readonly (readonly Lines[])[]): readonly Block[] =>
  rows.length === 0 ? [] : [{ kind: "TABLE", head, rows }];

/** A heading with what stands under it; nothing where nothing does. */
export const section = (level: 1 | 2 | 3, title: string, blocks: readonly Block[]): readonly Block[] =>
  blocks.length === 0 ? [] : [heading(level, title), ...blocks];
