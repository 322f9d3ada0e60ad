import type { InSlices } from "../../domain/counted-work.js";
import { legibleText, oneLine } from "../words/legible-text.js";
import type { Block, Inline, Lines, ListKind } from "./document.js";
import { drawLines } from "./draw-lines.js";
import { blocksText } from "./written-text.js";

/** Blocks as plain text for people: nothing is marked up, and nothing is escaped. A turn for each block. Lines end in \n. */
export function* renderTextInSlices(blocks: readonly Block[]): InSlices<string> {
  const drawn: string[] = [];
  for (const block of blocks) {
    yield;
    drawn.push(blockText(block));
  }
  return `${drawn.join("\n\n")}\n`;
}

function blockText(block: Block): string {
  switch (block.kind) {
    case "HEADING":
      return headingText(oneLine(block.text), block.level);
    case "PARAGRAPH":
      return drawLines(block.lines, inlineText, "\n");
    case "LIST":
      return block.items.map((item, at) => itemText(markOf(block.of, at), item)).join("\n");
    case "WRITTEN":
      return legibleText(blocksText(block.blocks));
    case "TABLE":
      return block.rows.map((row) => rowText(row, block.head)).join("\n");
  }
}

/** The greater ones are underlined. */
function headingText(said: string, level: 1 | 2 | 3): string {
  const rule = { 1: "=", 2: "-", 3: "" }[level];
  return rule === "" ? said : `${said}\n${rule.repeat(Math.min(72, [...said].length))}`;
}

function markOf(of: ListKind, at: number): string {
  switch (of) {
    case "STEPS":
      return `${String(at + 1)}. `;
    case "TICKS":
      return "[ ] ";
    case "TICKED":
      return "[x] ";
    case "ITEMS":
      return "- ";
  }
}

const itemText = (mark: string, lines: Lines): string =>
  mark + drawLines(lines, inlineText, `\n${" ".repeat(mark.length)}`);

/** The first cell leads; each other follows under its heading, its lines side by side. */
function rowText([first = [], ...others]: readonly Lines[], [, ...heads]: readonly string[]): string {
  const under = others.flatMap((cell, at) => {
    const said = drawLines(cell, inlineText, "; ");
    return said === "" ? [] : [`  ${oneLine(heads[at] ?? "")}: ${said}`];
  });
  return [itemText("- ", first), ...under].join("\n");
}

function inlineText(inline: Inline): string {
  const said = oneLine(inline.text);
  if (inline.kind !== "LINK") return said;
  const address = oneLine(inline.address);
  return said === "" || said === address ? address : `${said}: ${address}`;
}
