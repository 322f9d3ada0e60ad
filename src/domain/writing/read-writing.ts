import { readInlines } from "./read-inlines.js";
import { writingLimits, type Writing, type WritingFault, type WritingFaultKind, type WrittenBlock } from "./writing.js";
import { withoutSpacesAtEnd } from "./without-spaces.js";

/** An item to which lines may still belong. */
interface OpenItem {
  readonly blocks: WrittenBlock[];
  /** Columns that a line must be indented by, beyond what is around the item, to belong to it. */
  readonly width: number;
}

interface OpenParagraph {
  readonly lines: string[];
  /** Of its first line, from 1. */
  readonly line: number;
}

/** A list that may go on. */
interface OpenList {
  /** What its items begin with: a bullet, or the sign behind their numbers. */
  readonly mark: string;
  readonly items: WrittenBlock[][];
}

/** How a line begins an item. */
interface ItemBegun {
  readonly mark: string;
  /** null: of a list without an order. */
  readonly number: number | null;
  /** Columns of its indent, its mark and the space behind it. */
  readonly width: number;
  /** What stands behind them. */
  readonly content: string;
}

const marker = /^(?:([-+*])|(\d{1,9})([.)]))( +|$)/;
const rule = /^(?:(?:\* *){3,}|(?:- *){3,}|(?:_ *){3,})$/;

const isBlank = (line: string): boolean => /^ *$/.test(line);
const indentOf = (line: string): number => line.length - line.replace(/^ +/, "").length;

/** What a line begins: an item, or a block that is not for writers. null: neither, so that it is words. */
function beginningOf(line: string, isInParagraph: boolean): ItemBegun | WritingFaultKind | null {
  const indent = indentOf(line);
  if (indent >= 4) return isInParagraph ? null : "CODE";
  const body = line.slice(indent);
  return otherBlock(body, isInParagraph) ?? itemIn(body, indent);
}

function otherBlock(line: string, isInParagraph: boolean): WritingFaultKind | null {
  if (rule.test(line)) return "RULE";
  if (/^#{1,6}(?: |$)/.test(line) || (isInParagraph && /^(?:=+|-+) *$/.test(line))) return "HEADING";
  if (line.startsWith(">")) return "QUOTE";
  return line.startsWith("~~~") || line.startsWith("```") ? "CODE" : null;
}

function itemIn(line: string, indent: number): ItemBegun | null {
  const [found, bullet, number, sign = "", gap = ""] = marker.exec(line) ?? [];
  if (found === undefined) return null;
  // More than four spaces are one, and an indent of its words.
  const width = found.length - gap.length + (gap.length > 4 ? 1 : gap.length);
  return {
    mark: bullet ?? sign,
    number: number === undefined ? null : Number(number),
    width: indent + width,
    content: line.slice(width),
  };
}

/** Blocks as their lines are read (CommonMark 0.31, appendix "A parsing strategy", of the blocks that writers may use). */
class BlockReader {
  readonly #faults: WritingFault[] = [];
  readonly #blocks: WrittenBlock[] = [];
  readonly #lists = new WeakMap<WrittenBlock, OpenList>();
  #open: readonly OpenItem[] = [];
  #paragraph: OpenParagraph | null = null;

  readLine(text: string, line: number): void {
    const fault = (kind: WritingFaultKind): void => void this.#faults.push({ kind, line, got: text.trim() });
    if (text.includes("\t")) fault("TAB");
    if (isBlank(text)) {
      this.#endParagraph();
      return;
    }
    const { depth, rest } = this.#insideItems(text);
    const begun = beginningOf(rest, this.#paragraph !== null);
    if (typeof begun === "string") fault(begun);
    if (begun === null || typeof begun === "string" || !this.#mayBegin(begun, depth)) {
      this.#addWords(rest, depth, line);
      return;
    }
    if (isBlank(begun.content)) {
      fault("EMPTY_ITEM");
      return;
    }
    this.#addItem(begun, depth);
    if (depth >= writingLimits.lists) {
      fault("DEEP_LIST");
      return;
    }
    const within = beginningOf(begun.content, false);
    if (within !== null) fault(typeof within === "string" ? within : "LIST_IN_LINE");
    this.#addWords(begun.content, depth + 1, line);
  }

  end(): Writing {
    this.#endParagraph();
    return { blocks: this.#blocks, faults: this.#faults.toSorted((a, b) => a.line - b.line) };
  }

  /** How many of the open items a line belongs to, and what is left of it there. */
  #insideItems(text: string): { readonly depth: number; readonly rest: string } {
    let rest = text;
    let depth = 0;
    for (const { width } of this.#open) {
      if (indentOf(rest) < width) break;
      rest = rest.slice(width);
      depth += 1;
    }
    return { depth, rest };
  }

  /** In the middle of a paragraph a number, or a mark alone, is a word of it. */
  #mayBegin({ number, content }: ItemBegun, depth: number): boolean {
    const isInParagraph = this.#paragraph !== null && depth === this.#open.length;
    return !isInParagraph || (!isBlank(content) && (number === null || number === 1));
  }

  #addItem({ mark, number, width }: ItemBegun, depth: number): void {
    this.#endParagraph();
    this.#open = this.#open.slice(0, depth);
    const around = this.#around();
    const last = around.at(-1);
    let list = last && this.#lists.get(last);
    if (list?.mark !== mark) {
      list = { mark, items: [] };
      const block: WrittenBlock = { kind: "LIST", start: number, items: list.items };
      this.#lists.set(block, list);
      around.push(block);
    }
    const blocks: WrittenBlock[] = [];
    list.items.push(blocks);
    this.#open = [...this.#open, { blocks, width }];
  }

  #addWords(line: string, depth: number, at: number): void {
    const words = line.slice(indentOf(line));
    if (this.#paragraph !== null) {
      this.#paragraph.lines.push(words);
      return;
    }
    this.#open = this.#open.slice(0, depth);
    this.#paragraph = { lines: [words], line: at };
  }

  #endParagraph(): void {
    if (this.#paragraph === null) return;
    const { lines, line } = this.#paragraph;
    this.#paragraph = null;
    const text = withoutSpacesAtEnd(lines.join("\n"));
    if (/^\[(?:[^[\]\\]|\\[^])+\]:/.test(text)) this.#faults.push({ kind: "DEFINITION", line, got: text });
    const read = readInlines(text);
    this.#faults.push(...read.faults.map((fault) => ({ ...fault, line: line + fault.line - 1 })));
    this.#around().push({ kind: "PARAGRAPH", content: read.content });
  }

  /** The blocks that the next one joins. */
  #around(): WrittenBlock[] {
    return this.#open.at(-1)?.blocks ?? this.#blocks;
  }
}

/**
 * Reads what a writer may use of CommonMark 0.31: paragraphs, emphasis, lists and links. Whatever else CommonMark would read as
 * markup is a fault, so that what is read here means the same to every other program. The work grows with the length of the text.
 */
export function readWriting(source: string): Writing {
  const reader = new BlockReader();
  for (const [at, line] of source.split(/\r\n|\n|\r/).entries()) reader.readLine(line, at + 1);
  return reader.end();
}
