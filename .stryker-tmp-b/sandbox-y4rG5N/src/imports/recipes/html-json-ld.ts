// @ts-nocheck
import { Parser } from "htmlparser2";

/** A block of JSON-LD in a saved page, and the line it begins on. */
export interface JsonLdBlock {
  readonly text: string;
  readonly line: number;
}

/** The most blocks of one page, and the most characters of one block, that are read. */
export const mostBlocks = 100;
export const longestBlock = 5_000_000;

/** The `application/ld+json` scripts of a saved HTML page. Nothing of the page is run or fetched. */
export function htmlJsonLd(html: string): { readonly blocks: readonly JsonLdBlock[]; readonly tooLarge: boolean } {
  const blocks: JsonLdBlock[] = [];
  let open: { text: string; readonly at: number } | null = null;
  let tooLarge = false;
  const parser = new Parser({
    onopentag: (name, attributes) => {
      if (name !== "script" || !/^application\/ld\+json\b/i.test(attributes["type"]?.trim() ?? "")) return;
      open = { text: "", at: parser.endIndex + 1 };
    },
    ontext: (part) => {
      if (open === null) return;
      if (open.text.length + part.length <= longestBlock) open.text += part;
      else tooLarge = true;
    },
    onclosetag: (name) => {
      if (name !== "script" || open === null) return;
      if (blocks.length < mostBlocks) blocks.push({ text: open.text, line: lineAt(html, open.at) });
      else tooLarge = true;
      open = null;
    },
  });
  parser.end(html);
  return { blocks, tooLarge };
}

const lineAt = (text: string, end: number): number => {
  let line = 1;
  for (let at = text.indexOf("\n"); at >= 0 && at < end; at = text.indexOf("\n", at + 1)) line += 1;
  return line;
};
