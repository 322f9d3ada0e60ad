import type { CST } from "yaml";

/**
 * The text of each document of a text that may hold several, in their order: one document is the whole text, byte for
 * byte. Of several, each has everything up to where the next begins, remarks and all; only the line of `---` between
 * them is nobody's. Read again by itself, a part gives its document again.
 *
 * @param kept for each document token whether it is a document, or blank and so part of its neighbour
 */
export function documentParts(text: string, tokens: readonly CST.Token[], kept: readonly boolean[]): readonly string[] {
  const starts: number[] = [];
  let open = false;
  let count = 0;
  for (const token of tokens) {
    // A directive stands before the document that it is for.
    if ((token.type === "document" || token.type === "directive") && !open) {
      starts.push(starts.length === 0 ? 0 : token.offset);
      open = true;
    }
    if (token.type !== "document") continue;
    if (kept[count] === true) open = false;
    count += 1;
  }
  // What follows the last document, if it is blank, belongs to it.
  const own = starts.slice(0, kept.filter(Boolean).length);
  return own.map((start, index) => text.slice(start, own[index + 1] ?? text.length)).map(withoutMark);
}

const withoutMark = (part: string, index: number): string =>
  index === 0 ? part : part.replace(/^---[ \t]*(\r\n|\n|\r)/, "");
