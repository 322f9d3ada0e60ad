import { runToEnd, type InSlices } from "../../domain/counted-work.js";
import type { Block, Inline, Lines, ListKind } from "./document.js";
import { drawLines } from "./draw-lines.js";
import { endsWithFirstMarks, writtenMarkdown } from "./written-markdown.js";
import { markdownAddress, markdownText } from "./markdown-text.js";

/** Blocks as CommonMark. A table becomes a list, because CommonMark has none and newsletters differ in theirs. Lines end in \n. */
export const renderMarkdown = (blocks: readonly Block[]): string => runToEnd(renderMarkdownInSlices(blocks));

/** The same, a turn for each block. */
export function* renderMarkdownInSlices(blocks: readonly Block[]): InSlices<string> {
  let marks: ListMarks = firstMarks;
  const drawn: string[] = [];
  for (const [at, block] of blocks.entries()) {
    yield;
    const before = blocks[at - 1];
    marks =
      before !== undefined && isList(before, "LAST") && isList(block, "FIRST")
        ? otherMarks(lastMarks(before, marks))
        : firstMarks;
    drawn.push(blockText(block, marks));
  }
  return `${drawn.join("\n\n")}\n`;
}

/** Two lists in a row are one to CommonMark, unless their marks differ (5.3 lists). */
interface ListMarks {
  readonly bullet: "-" | "*";
  readonly after: "." | ")";
}

const firstMarks: ListMarks = { bullet: "-", after: "." };
const secondMarks: ListMarks = { bullet: "*", after: ")" };
const otherMarks = (marks: ListMarks): ListMarks => (marks === firstMarks ? secondMarks : firstMarks);

/** Those of its last list, given those of its first. */
const lastMarks = (block: Block, first: ListMarks): ListMarks =>
  block.kind !== "WRITTEN" ? first : endsWithFirstMarks(block.blocks, first === firstMarks) ? firstMarks : secondMarks;

const isList = (block: Block, edge: "FIRST" | "LAST"): boolean =>
  block.kind === "LIST" ||
  block.kind === "TABLE" ||
  (block.kind === "WRITTEN" && block.blocks.at(edge === "FIRST" ? 0 : -1)?.kind === "LIST");

function blockText(block: Block, marks: ListMarks): string {
  switch (block.kind) {
    case "HEADING":
      return `${"#".repeat(block.level)} ${markdownText(block.text)}`;
    case "PARAGRAPH":
      return linesText(block.lines, "");
    case "LIST":
      return block.items.map((item, at) => itemText(markOf(block.of, at, marks), item)).join("\n");
    case "WRITTEN":
      return writtenMarkdown(block.blocks, marks === firstMarks);
    case "TABLE":
      return block.rows.map((row) => rowText(row, block.head, marks)).join("\n");
  }
}

function markOf(of: ListKind, at: number, { bullet, after }: ListMarks): string {
  switch (of) {
    case "STEPS":
      return `${at + 1}${after} `;
    case "TICKS":
      return `${bullet} [ ] `;
    case "TICKED":
      return `${bullet} [x] `;
    case "ITEMS":
      return `${bullet} `;
  }
}

/** What hangs under an item is indented by the width of its mark. */
const itemText = (mark: string, lines: Lines): string =>
  `${mark}${linesText(lines, " ".repeat(mark.indexOf(" ") + 1))}`;

/** The first cell leads; each other follows under its heading, its lines side by side. */
function rowText(
  [first = [], ...others]: readonly Lines[],
  [, ...heads]: readonly string[],
  { bullet }: ListMarks,
): string {
  const under = others.flatMap((cell, at) => {
    const said = drawLines(cell, inlineText, "; ");
    return said === "" ? [] : [`  ${bullet} ${markdownText(heads[at] ?? "")}: ${said}`];
  });
  return [itemText(`${bullet} `, first), ...under].join("\n");
}

/** A backslash at the end of a line breaks it (6.7 hard line breaks). */
const linesText = (lines: Lines, indent: string): string => drawLines(lines, inlineText, `\\\n${indent}`);

function inlineText(inline: Inline): string {
  const said = markdownText(inline.text);
  if (said === "") return "";
  switch (inline.kind) {
    case "TEXT":
      return said;
    case "STRONG":
      return `**${said}**`;
    case "ASIDE":
      return `*${said}*`;
    case "LINK":
      return `[${said}](${markdownAddress(inline.address)})`;
  }
}
