import { Tokenizer } from "htmlparser2";
import { runToEnd, type InSlices } from "../../domain/counted-work.js";

/** What is told of a page while it is gone through. Places are offsets in its text. */
interface HtmlReader {
  /** A tag that opens, its name in small letters; `type` is what that attribute says, "" where there is none. */
  open(name: string, type: string, end: number): void;
  text(part: string): void;
  close(name: string): void;
}

/** The longest value of an attribute that is looked at. */
const longestType = 200;

/**
 * Goes through a page, or a text with markup, once. By tokens and without the elements that are open: a parser looks for the
 * beginning of an element at each of its ends, which in a page of nothing but tags takes as long as the square of its length.
 */
export const readHtmlTokens = (html: string, reader: HtmlReader): void =>
  runToEnd(readHtmlTokensInSlices(html, reader));

/** Characters of a page in one turn. */
const charactersInTurn = 100_000;

/** The same turn by turn. */
export function* readHtmlTokensInSlices(html: string, { open, text, close }: HtmlReader): InSlices<void> {
  let name = "";
  let attribute = "";
  let type: string | null = null;
  const opened = (end: number): void => {
    open(name, (type ?? "").trim(), end);
    type = null;
  };
  // The first of two attributes of a name counts (WHATWG, HTML, 13.2.5.33).
  const valued = (part: string): void => {
    if (attribute === "type" && (type ?? "").length < longestType) type = (type ?? "") + part.slice(0, longestType);
  };
  const nothing = (): void => undefined;
  const tokens = new Tokenizer(
    { decodeEntities: true },
    {
      onopentagname: (start, end) => {
        name = html.slice(start, end).toLowerCase();
        attribute = "";
        type = null;
      },
      onattribname: (start, end) => {
        const written = html.slice(start, Math.min(end, start + longestType)).toLowerCase();
        attribute = written === "type" && type !== null ? "" : written;
      },
      onattribdata: (start, end) => valued(html.slice(start, Math.min(end, start + longestType))),
      onattribentity: (code) => valued(String.fromCodePoint(code)),
      onattribend: () => {
        if (attribute === "type") type ??= "";
        attribute = "";
      },
      onopentagend: opened,
      onselfclosingtag: opened,
      onclosetag: (start, end) => close(html.slice(start, end).toLowerCase()),
      ontext: (start, end) => text(html.slice(start, end)),
      ontextentity: (code) => text(String.fromCodePoint(code)),
      oncdata: nothing,
      oncomment: nothing,
      ondeclaration: nothing,
      onend: nothing,
      onprocessinginstruction: nothing,
    },
  );
  for (let from = 0; from < html.length; from += charactersInTurn) {
    tokens.write(html.slice(from, from + charactersInTurn));
    yield;
  }
  tokens.end();
}
