import type { InSlices } from "../../domain/counted-work.js";
import { readHtmlTokensInSlices } from "./html-tokens.js";

/** A block of JSON-LD in a saved page, and the line it begins on. */
export interface JsonLdBlock {
  readonly text: string;
  readonly line: number;
}

/** The most blocks of one page, and the most characters of one block, that are read. */
const mostBlocks = 100;
const longestBlock = 5_000_000;

/** The `application/ld+json` scripts of a saved HTML page. Nothing of the page is run or fetched. */
export function* htmlJsonLd(
  html: string,
): InSlices<{ readonly blocks: readonly JsonLdBlock[]; readonly tooLarge: boolean }> {
  const blocks: JsonLdBlock[] = [];
  const lineAt = lineCounter(html);
  let open: { text: string; readonly at: number } | null = null;
  let tooLarge = false;
  yield* readHtmlTokensInSlices(html, {
    open: (name, type, end) => {
      if (name === "script" && /^application\/ld\+json\b/i.test(type)) open = { text: "", at: end + 1 };
    },
    text: (part) => {
      if (open === null) return;
      if (open.text.length + part.length <= longestBlock) open.text += part;
      else tooLarge = true;
    },
    close: (name) => {
      if (name !== "script" || open === null) return;
      if (blocks.length < mostBlocks) blocks.push({ text: open.text, line: lineAt(open.at) });
      else tooLarge = true;
      open = null;
    },
  });
  return { blocks, tooLarge };
}

/** Lines of places further and further on: each is counted from the one before. */
function lineCounter(text: string): (place: number) => number {
  let line = 1;
  let next = text.indexOf("\n");
  return (place) => {
    for (; next >= 0 && next < place; next = text.indexOf("\n", next + 1)) line += 1;
    return line;
  };
}
