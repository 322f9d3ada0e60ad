import { readInlines } from "./read-inlines.js";
import { writingLimits, type Writing, type WritingFault, type WritingFaultKind, type WrittenBlock } from "./writing.js";
import { withoutSpacesAtEnd } from "./without-spaces.js";

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

/** One that has begun; `kind` is what its items begin with. */
interface OpenList {
  readonly kind: "LIST";
  readonly start: number | null;
  readonly items: WrittenBlock[][];
  readonly mark: string;
}

const marker = /^(?:([-+*])|(\d{1,9})([.)]))( +|$)/;
const rule = /^(?:(?:\* *){3,}|(?:- *){3,}|(?:_ *){3,})$/;

/** What begins a block that is not for writers; null: nothing does. */
function otherBlock(line: string, isInParagraph: boolean): WritingFaultKind | null {
  if (rule.test(line)) return "RULE";
  if (/^#{1,6}(?: |$)/.test(line) || (isInParagraph && /^(?:=+|-+) *$/.test(line))) return "HEADING";
  if (line.startsWith(">")) return "QUOTE";
  return line.startsWith("~~~") || line.startsWith("```") ? "CODE" : null;
}

const isBlank = (line: string): boolean => /^ *$/.test(line);
const indentOf = (line: string): number => line.length - line.replace(/^ +/, "").length;

/**
 * Reads what a writer may use of CommonMark 0.31: paragraphs, emphasis, lists and links. Whatever else CommonMark would read as
 * markup is a fault, so that what is read here means the same to every other program. The work grows with the length of the text.
 */
export function readWriting(source: string): Writing {
  const faults: WritingFault[] = [];
  const blocks: WrittenBlock[] = [];
  const lists = new WeakMap<object, OpenList>();
  let open: OpenItem[] = [];
  let paragraph: OpenParagraph | null = null;

  const inside = (): WrittenBlock[] => open.at(-1)?.blocks ?? blocks;
  const endParagraph = (): void => {
    if (paragraph === null) return;
    const text = withoutSpacesAtEnd(paragraph.lines.join("\n"));
    const { line } = paragraph;
    paragraph = null;
    if (/^\[(?:[^[\]\\]|\\[^])+\]:/.test(text)) faults.push({ kind: "DEFINITION", line, got: text });
    const read = readInlines(text);
    faults.push(...read.faults.map((fault) => ({ ...fault, line: line + fault.line - 1 })));
    inside().push({ kind: "PARAGRAPH", content: read.content });
  };
  const closeTo = (depth: number): void => {
    if (depth >= open.length) return;
    endParagraph();
    open = open.slice(0, depth);
  };
  const addItem = (mark: string, start: number | null, width: number): void => {
    const around = inside();
    const last = around.at(-1);
    const going = last?.kind === "LIST" ? lists.get(last) : undefined;
    const list: OpenList =
      going?.mark === mark && (going.start === null) === (start === null)
        ? going
        : { kind: "LIST", start, items: [], mark };
    if (list !== going) {
      const { kind, items } = list;
      const block: WrittenBlock = { kind, start, items };
      lists.set(block, list);
      around.push(block);
    }
    const item: WrittenBlock[] = [];
    list.items.push(item);
    open = [...open, { blocks: item, width }];
  };

  const readLine = (text: string, line: number): void => {
    const fault = (kind: WritingFaultKind): void => void faults.push({ kind, line, got: text.trim() });
    let rest = text;
    let depth = 0;
    if (isBlank(text)) {
      endParagraph();
      return;
    }
    for (const { width } of open) {
      if (indentOf(rest) < width) break;
      rest = rest.slice(width);
      depth += 1;
    }
    let isNew = false;
    for (;;) {
      const indent = indentOf(rest);
      const body = rest.slice(indent);
      const isInParagraph = paragraph !== null && !isNew;
      if (indent >= 4) {
        if (!isInParagraph) fault("CODE");
        break;
      }
      const other = otherBlock(body, isInParagraph);
      if (other !== null) {
        fault(other);
        break;
      }
      const [found, bullet, number, after, gap = ""] = marker.exec(body) ?? [];
      if (found === undefined) break;
      if (isNew) {
        fault("LIST_IN_LINE");
        break;
      }
      const content = body.slice(found.length);
      const interrupts = isInParagraph && depth === open.length;
      const isEmpty = isBlank(content);
      if (interrupts && (isEmpty || (number !== undefined && Number(number) !== 1))) break;
      if (isEmpty) {
        fault("EMPTY_ITEM");
        return;
      }
      endParagraph();
      closeTo(depth);
      const wide = found.length - gap.length;
      const taken = gap.length > 4 ? 1 : gap.length;
      addItem(bullet ?? after ?? "", number === undefined ? null : Number(number), indent + wide + taken);
      depth += 1;
      isNew = true;
      if (depth > writingLimits.lists) {
        fault("DEEP_LIST");
        return;
      }
      rest = body.slice(wide + taken);
    }
    const body = rest.slice(indentOf(rest));
    if (paragraph !== null && !isNew) paragraph.lines.push(body);
    else {
      closeTo(depth);
      paragraph = { lines: [body], line };
    }
  };

  for (const [at, line] of source.split(/\r\n|\n|\r/).entries()) {
    if (line.includes("\t")) faults.push({ kind: "TAB", line: at + 1, got: line.trim() });
    readLine(line, at + 1);
  }
  endParagraph();
  return { blocks, faults: faults.toSorted((a, b) => a.line - b.line) };
}
