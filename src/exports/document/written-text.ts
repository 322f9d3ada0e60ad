import type { WrittenBlock, WrittenInline } from "../../domain/writing/writing.js";
import { writtenBlocks } from "./written-blocks.js";
import { writtenHtml } from "./written-html.js";

/** A text of the writer's without any markup: addresses stand behind the words of their links. Lines end in \n. */
export const writtenText = (source: string): string => blocksText(writtenBlocks(source));

/** The same text in all its forms. */
export const writtenForms = (
  source: string,
): { readonly source: string; readonly html: string; readonly text: string } => ({
  source,
  html: writtenHtml(writtenBlocks(source)),
  text: writtenText(source),
});

export const blocksText = (blocks: readonly WrittenBlock[]): string => blocks.map(blockText).join("\n\n");

function blockText(block: WrittenBlock): string {
  if (block.kind === "PARAGRAPH") return block.content.map(inlineText).join("");
  return block.items
    .map((item, at) => {
      const mark = block.start === null ? "-" : `${block.start + at}.`;
      return `${mark} ${blocksText(item).replace(/\n(?=[^\n])/g, `\n${" ".repeat(mark.length + 1)}`)}`;
    })
    .join("\n");
}

function inlineText(inline: WrittenInline): string {
  switch (inline.kind) {
    case "TEXT":
      return inline.text;
    case "BREAK":
      return "\n";
    case "LINK": {
      const words = inline.content.map(inlineText).join("");
      return words === inline.address ? words : `${words} (${inline.address})`;
    }
    default:
      return inline.content.map(inlineText).join("");
  }
}
