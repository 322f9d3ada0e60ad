// @ts-nocheck
import { parse, parseFragment, type DefaultTreeAdapterTypes } from "parse5";

type Node = DefaultTreeAdapterTypes.Node;

/** What an HTML parser that we did not write (parse5, the WHATWG algorithm) makes of a text. */
export interface HtmlTree {
  /** Names of the parse errors of the standard. */
  readonly errors: readonly string[];
  /** Every element, in document order. */
  readonly elements: readonly HtmlElement[];
  readonly comments: number;
}

export interface HtmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** All text below it. */
  readonly text: string;
}

export function htmlTree(html: string): HtmlTree {
  const errors: string[] = [];
  const read = html.startsWith("<!doctype") ? parse : parseFragment;
  const root = read(html, { onParseError: ({ code }) => errors.push(code) });
  const elements: HtmlElement[] = [];
  let comments = 0;
  const walk = (node: Node): void => {
    if (node.nodeName === "#comment") comments++;
    if ("tagName" in node) {
      const attributes = Object.fromEntries(node.attrs.map(({ name, value }) => [name, value]));
      elements.push({ name: node.tagName, attributes, text: textOf(node) });
    }
    if ("childNodes" in node) node.childNodes.forEach(walk);
  };
  walk(root);
  return { errors, elements, comments };
}

const textOf = (node: Node): string =>
  "value" in node ? node.value : "childNodes" in node ? node.childNodes.map(textOf).join("") : "";
