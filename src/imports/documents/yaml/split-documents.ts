import { yamlLimits } from "./yaml-limits.js";

/** One document of a file of many: its text, and the line of the file that it begins on. */
export interface DocumentPiece {
  readonly line: number;
  readonly text: string;
}

/** A line that ends a document, and is never part of one (YAML 1.2.2, 9.1): `---` begins the next, `...` does not. */
const marker = /^(---|\.\.\.)(?=[ \t\r\n]|$)/;
const isEmpty = (line: string): boolean => /^(#|$)/.test(line.trimStart());
/** A remark or a directive stands in front of the document that it is for. */
const isFront = (line: string): boolean => isEmpty(line) || line.startsWith("%");

/**
 * Takes a file of many documents apart, in memory that does not grow with it, so that a fault in one costs no other. What
 * is longer than a document may be is cut there and passed over to the next mark: the reader then says that it is too large.
 */
export async function* splitDocuments(pieces: AsyncIterable<string>): AsyncGenerator<DocumentPiece> {
  let held: string[] = [];
  let size = 0;
  let start = 1;
  let line = 1;
  let hasContent = false;
  const taken = (): readonly DocumentPiece[] => {
    const found = hasContent ? [{ line: start, text: held.join("") }] : [];
    held = [];
    size = 0;
    hasContent = false;
    start = line;
    return found;
  };
  const keep = (text: string): void => {
    if (size > yamlLimits.characters) return;
    held.push(text);
    size += text.length;
  };
  for await (const { text, begins, ends } of linesOf(pieces)) {
    const mark = begins ? marker.exec(text)?.[1] : undefined;
    if (mark === "..." || (mark === "---" && hasContent)) yield* taken();
    if (mark === "...") start = line + 1;
    else {
      keep(text);
      if (!isFront(mark === undefined ? text : text.slice(3))) hasContent = true;
    }
    if (ends) line += 1;
  }
  yield* taken();
}

interface LinePart {
  readonly text: string;
  /** It begins a line of the file; a very long line comes in several parts. */
  readonly begins: boolean;
  readonly ends: boolean;
}

const longestPart = 64 * 1024;

async function* linesOf(pieces: AsyncIterable<string>): AsyncGenerator<LinePart> {
  let rest = "";
  let begins = true;
  for await (const piece of pieces) {
    rest += piece;
    let from = 0;
    for (let end = rest.indexOf("\n", from); end >= 0; end = rest.indexOf("\n", from)) {
      yield { text: rest.slice(from, end + 1), begins, ends: true };
      begins = true;
      from = end + 1;
    }
    rest = rest.slice(from);
    if (rest.length < longestPart) continue;
    yield { text: rest, begins, ends: false };
    begins = false;
    rest = "";
  }
  if (rest !== "") yield { text: rest, begins, ends: false };
}
