import type { WrittenBlock, WrittenInline } from "../../domain/writing/writing.js";
import { markupText } from "./markup-text.js";

/** Attributes of an element, from a leading space on; empty where it has none. */
type Attributes = (element: "p" | "ul" | "ol" | "li" | "a") => string;

const none: Attributes = () => "";

/** A text of the writer's as HTML: its own paragraphs, lists, emphasis and links are the only elements; every word is escaped. */
export const writtenHtml = (blocks: readonly WrittenBlock[], attributes: Attributes = none): string =>
  blocks.map((block) => blockHtml(block, attributes)).join("\n");

function blockHtml(block: WrittenBlock, attributes: Attributes): string {
  if (block.kind === "PARAGRAPH") return `<p${attributes("p")}>${inlinesHtml(block.content, attributes)}</p>`;
  const element = block.start === null ? "ul" : "ol";
  const start = block.start === null || block.start === 1 ? "" : ` start="${block.start}"`;
  const items = block.items.map((item) => `<li${attributes("li")}>${itemHtml(item, attributes)}</li>`);
  return `<${element}${start}${attributes(element)}>\n${items.join("\n")}\n</${element}>`;
}

/** A paragraph that begins an item needs no element of its own. */
function itemHtml([first, ...others]: readonly WrittenBlock[], attributes: Attributes): string {
  if (first === undefined) return "";
  if (first.kind !== "PARAGRAPH" || others.some(({ kind }) => kind === "PARAGRAPH"))
    return writtenHtml([first, ...others], attributes);
  return [inlinesHtml(first.content, attributes), ...others.map((each) => blockHtml(each, attributes))].join("\n");
}

const inlinesHtml = (inlines: readonly WrittenInline[], attributes: Attributes): string =>
  inlines.map((inline) => inlineHtml(inline, attributes)).join("");

function inlineHtml(inline: WrittenInline, attributes: Attributes): string {
  switch (inline.kind) {
    case "TEXT":
      return markupText(inline.text);
    case "BREAK":
      return "<br>\n";
    case "EMPHASIS":
      return `<em>${inlinesHtml(inline.content, attributes)}</em>`;
    case "STRONG":
      return `<strong>${inlinesHtml(inline.content, attributes)}</strong>`;
    case "LINK":
      return `<a href="${markupText(inline.address)}" rel="noopener nofollow"${attributes("a")}>${inlinesHtml(inline.content, attributes)}</a>`;
  }
}
