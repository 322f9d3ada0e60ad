import { runToEnd, type InSlices } from "../../domain/counted-work.js";
import type { Block, Inline, Lines } from "./document.js";
import { drawLines } from "./draw-lines.js";
import { writtenHtml } from "./written-html.js";
import { markupText } from "./markup-text.js";

/** How a way out wants its HTML. */
export interface HtmlSkin {
  /** Attributes of an element, from a leading space on; empty where it has none. */
  readonly attributes: (element: HtmlElement) => string;
  /** A thing to tick off, or one that is ticked already; `label` is escaped already. */
  readonly tick: (label: string, done: boolean) => string;
  /** Added to the level of every heading. */
  readonly headingsBelow: number;
}

export type HtmlElement =
  "h1" | "h2" | "h3" | "h4" | "p" | "ul" | "ol" | "li" | "table" | "th" | "row-th" | "td" | "a" | "em";

/** Blocks as HTML, every text escaped: nothing of it is markup but what this draws. */
export const renderHtml = (blocks: readonly Block[], skin: HtmlSkin): string =>
  runToEnd(renderHtmlInSlices(blocks, skin));

/** The same, a turn for each block. */
export function* renderHtmlInSlices(blocks: readonly Block[], skin: HtmlSkin): InSlices<string> {
  const drawn: string[] = [];
  for (const block of blocks) {
    yield;
    drawn.push(blockHtml(block, skin));
  }
  return drawn.join("\n");
}

function blockHtml(block: Block, skin: HtmlSkin): string {
  const attributes = skin.attributes;
  switch (block.kind) {
    case "HEADING": {
      const element = `h${Math.min(4, block.level + skin.headingsBelow)}` as "h1" | "h2" | "h3" | "h4";
      return `<${element}${languageOf(block)}${attributes(element)}>${markupText(block.text)}</${element}>`;
    }
    case "PARAGRAPH":
      return `<p${attributes("p")}>${linesHtml(block.lines, skin)}</p>`;
    case "LIST": {
      const element = block.of === "STEPS" ? "ol" : "ul";
      const items = block.items.map((item) => {
        const said = linesHtml(item, skin);
        return `<li${attributes("li")}>${block.of === "TICKS" || block.of === "TICKED" ? skin.tick(said, block.of === "TICKED") : said}</li>`;
      });
      return `<${element}${attributes(element)}>\n${items.join("\n")}\n</${element}>`;
    }
    case "TABLE":
      return tableHtml(block, skin);
    case "WRITTEN":
      return writtenHtml(block.blocks, (element) =>
        element === "a" ? attributes(element) : languageOf(block) + attributes(element),
      );
  }
}

const languageOf = ({ language }: { readonly language?: string }): string =>
  language === undefined ? "" : ` lang="${markupText(language)}"`;

function tableHtml({ head, rows }: Extract<Block, { kind: "TABLE" }>, skin: HtmlSkin): string {
  const { attributes } = skin;
  const heads = head.map((each) => `<th scope="col"${attributes("th")}>${markupText(each)}</th>`).join("");
  const body = rows.map(([first = [], ...others]) => {
    const name = `<th scope="row"${attributes("row-th")}>${linesHtml(first, skin)}</th>`;
    return `<tr>${name}${others.map((cell) => `<td${attributes("td")}>${linesHtml(cell, skin)}</td>`).join("")}</tr>`;
  });
  return `<table${attributes("table")}>\n<thead><tr>${heads}</tr></thead>\n<tbody>\n${body.join("\n")}\n</tbody>\n</table>`;
}

const linesHtml = (lines: Lines, skin: HtmlSkin): string =>
  drawLines(lines, (inline) => (inline.text === "" ? "" : inlineHtml(inline, skin)), "<br>");

function inlineHtml(inline: Inline, { attributes }: HtmlSkin): string {
  const said = markupText(inline.text);
  switch (inline.kind) {
    case "TEXT":
      return inline.language === undefined ? said : `<span${languageOf(inline)}>${said}</span>`;
    case "STRONG":
      return `<strong${languageOf(inline)}>${said}</strong>`;
    case "ASIDE":
      return `<em${attributes("em")}>${said}</em>`;
    case "LINK":
      return `<a href="${markupText(inline.address)}"${attributes("a")}>${said}</a>`;
  }
}
