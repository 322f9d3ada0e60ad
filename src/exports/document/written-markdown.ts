import type { WrittenBlock, WrittenInline } from "../../domain/writing/writing.js";
import { markdownText, unlikeBlock } from "./markdown-text.js";

/**
 * A text of the writer's as CommonMark that means the same, with every sign escaped that newsletters may take for more.
 *
 * @param takesFirst whether its first list takes the marks of a first one; not so behind another list
 */
export function writtenMarkdown(blocks: readonly WrittenBlock[], takesFirst = true): string {
  const marks = firstMarksOf(blocks, takesFirst);
  return blocks
    .map((block, at) => (block.kind === "PARAGRAPH" ? linesOf(block.content) : listText(block, marks[at] === true)))
    .join("\n\n");
}

/** Whether its last block, where that is a list, has the marks of a first one. */
export const endsWithFirstMarks = (blocks: readonly WrittenBlock[], takesFirst: boolean): boolean =>
  firstMarksOf(blocks, takesFirst).at(-1) === true;

/** For each block whether, as a list, it has the marks of a first one: two lists in a row are one, unless their marks differ (5.3). */
function firstMarksOf(blocks: readonly WrittenBlock[], takesFirst: boolean): readonly boolean[] {
  const found: boolean[] = [];
  for (const at of blocks.keys())
    found.push(at === 0 ? takesFirst : blocks[at - 1]?.kind !== "LIST" || found[at - 1] === false);
  return found;
}

function listText({ start, items }: Extract<WrittenBlock, { kind: "LIST" }>, isFirst: boolean): string {
  return items
    .map((item, at) => {
      const mark = start === null ? (isFirst ? "-" : "*") : `${start + at}${isFirst ? "." : ")"}`;
      const indent = " ".repeat(mark.length + 1);
      return `${mark} ${writtenMarkdown(item).replace(/\n(?=[^\n])/g, `\n${indent}`)}`;
    })
    .join("\n");
}

const linesOf = (inlines: readonly WrittenInline[]): string =>
  inlinesText(inlines).split("\n").map(unlikeBlock).join("\n");

/** A link behind an exclamation mark would be a picture, which is fetched (6.4): the mark is escaped there. */
const inlinesText = (inlines: readonly WrittenInline[]): string =>
  inlines.reduce((before, inline) => {
    const text = inlineText(inline);
    return text.startsWith("[") ? before.replace(/!$/, "\\!") + text : before + text;
  }, "");

function inlineText(inline: WrittenInline): string {
  switch (inline.kind) {
    case "TEXT":
      return escaped(inline.text);
    case "BREAK":
      return "\\\n";
    case "EMPHASIS":
      return `${inline.mark}${inlinesText(inline.content)}${inline.mark}`;
    case "STRONG":
      return `${inline.mark.repeat(2)}${inlinesText(inline.content)}${inline.mark.repeat(2)}`;
    case "LINK":
      return `[${inlinesText(inline.content)}](${inline.address.replace(/[()&*_[\]]/g, "\\$&")})`;
  }
}

/** As `markdownText`, without folding what is at the ends of a line or between lines. */
const escaped = (text: string): string =>
  text
    .split(/(\s+)/)
    .map((part) => (/^\s*$/.test(part) ? part : markdownText(part)))
    .join("");
