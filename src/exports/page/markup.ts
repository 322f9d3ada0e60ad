import { writtenBlocks } from "../document/written-blocks.js";
import { writtenHtml } from "../document/written-html.js";
import { markupText } from "../document/markup-text.js";

/** Markup that may be sent as it is. Only `markup` makes it, and it escapes whatever is put into it. */
export class Html {
  constructor(readonly text: string) {}
}

/** What can stand in markup. null, undefined and false leave nothing behind; a list is written one after the other. */
export type Content = string | number | Html | null | undefined | false | readonly Content[];

function written(content: Content): string {
  if (content === null || content === undefined || content === false) return "";
  if (content instanceof Html) return content.text;
  if (typeof content === "string" || typeof content === "number") return markupText(String(content));
  return content.map(written).join("");
}

/** A template of HTML. Everything in `${}` is text, escaped for elements and for quoted attributes, unless it is `Html`. */
export const markup = (parts: TemplateStringsArray, ...contents: readonly Content[]): Html =>
  new Html(parts.reduce((all, part, at) => all + written(contents[at - 1]) + part));

/** A text of the writer's: paragraphs, lists, emphasis and links, with every word escaped. */
export const writing = (source: string): Html => new Html(writtenHtml(writtenBlocks(source)));

/** Attributes with a space before each: true is one without a value, null and false leave it out. */
export const attributes = (given: Readonly<Record<string, string | number | boolean | null>>): Html =>
  new Html(
    Object.entries(given)
      .map(([name, value]) =>
        value === null || value === false
          ? ""
          : value === true
            ? ` ${name}`
            : ` ${name}="${markupText(String(value))}"`,
      )
      .join(""),
  );

/**
 * JSON for programs inside a page. A browser runs no script of this type.
 *
 * @param json in which nothing can end the element: `<` is written as an escape
 */
export function jsonData(json: string): Html {
  if (json.includes("<")) throw new Error("JSON inside a page holds a `<`");
  return new Html(`<script type="application/ld+json">${json.replace(/\n */g, "")}</script>\n`);
}

/** The words of a content, as a reader sees them: for what depends on how they sound. */
export const plainText = (content: Content): string => written(content).replace(/<(?:"[^"]*"|[^">])*>/g, "");

/** Contents with something between them. */
export const between = (contents: readonly Content[], separator: Content): Content =>
  contents.map((content, at) => (at === 0 ? content : [separator, content]));
