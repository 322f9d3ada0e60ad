import { HtmlValidate } from "html-validate";
import { parse, type DefaultTreeAdapterTypes } from "parse5";

/** Faults that a parser of the HTML standard finds (https://html.spec.whatwg.org/#parse-errors), by parse5. */
export function parseErrors(html: string): readonly string[] {
  const errors: string[] = [];
  parse(html, {
    sourceCodeLocationInfo: true,
    onParseError: ({ code, startLine, startCol }) => void errors.push(`${code} at ${startLine}:${startCol}`),
  });
  return errors;
}

const validator = new HtmlValidate({
  root: true,
  extends: ["html-validate:standard", "html-validate:a11y"],
  // A form of ticks is reset and never sent.
  // A list stays a list for screen readers although its marks are taken away by style.
  rules: { "no-redundant-role": "off", "wcag/h32": "off" },
});

/** Breaches of the HTML standard's content models and of common rules for access, by html-validate. */
export async function markupFaults(html: string): Promise<readonly string[]> {
  const { results } = await validator.validateString(html);
  return results.flatMap(({ messages }) =>
    messages.map(({ ruleId, message, line, column }) => `${ruleId} at ${line}:${column}: ${message}`),
  );
}

type Node = DefaultTreeAdapterTypes.Node;

export type Element = DefaultTreeAdapterTypes.Element;

const isElement = (node: Node): node is Element => "tagName" in node;

/** Elements of a document, in its order. */
export function elementsOf(html: string): readonly Element[] {
  const found: Element[] = [];
  const walk = (node: Node): void => {
    if (isElement(node)) found.push(node);
    if ("childNodes" in node) node.childNodes.forEach(walk);
  };
  walk(parse(html));
  return found;
}

export const attributeOf = (element: Element, name: string): string | null =>
  element.attrs.find((each) => each.name === name)?.value ?? null;

/** What an element says, white space as it stands. */
export function textOf(node: Node): string {
  if ("value" in node && node.nodeName === "#text") return node.value;
  return "childNodes" in node ? node.childNodes.map(textOf).join("") : "";
}

/** The element of that id. */
export function byId(html: string, id: string): Element {
  const found = elementsOf(html).find((element) => attributeOf(element, "id") === id);
  if (found === undefined) throw new Error(`there is no element with the id ${id}`);
  return found;
}

const linesOf = new Set(
  "li p td th dt dd h1 h2 h3 h4 label legend option caption summary figcaption time title text".split(" "),
);

const holdsLines = (node: Node): boolean =>
  "childNodes" in node &&
  node.childNodes.some((child) => (isElement(child) && linesOf.has(child.tagName)) || holdsLines(child));

/** What an element says outside of the lines that it holds. */
const ownText = (node: Node): string =>
  "childNodes" in node
    ? node.childNodes
        .filter((child) => !(isElement(child) && linesOf.has(child.tagName)))
        .map(ownText)
        .join("")
    : textOf(node);

/** What a reader sees, a line for every element that says something itself; a break parts lines. */
export const htmlLines = (html: string): readonly string[] =>
  elementsOf(html.replaceAll("<br>", " | "))
    .filter((element) => linesOf.has(element.tagName))
    .map((element) => ({ isLast: !holdsLines(element), line: ownText(element).replace(/\s+/g, " ").trim() }))
    .filter(({ isLast, line }) => isLast || line !== "")
    .map(({ line }) => line);
