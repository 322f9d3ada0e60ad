import { IntlMessageFormat } from "intl-messageformat";
import { isMessage, type Catalogue } from "../../../src/exports/words/message.js";
import { english } from "../../../src/exports/words/messages/english.js";
import { polish } from "../../../src/exports/words/messages/polish.js";

type Elements = ReturnType<IntlMessageFormat["getAst"]>;

/** English in full-width letters (Unicode, U+FF21 to U+FF5A): still legible, with capitals, and no letter of it is met elsewhere. */
const wide = (text: string): string =>
  text.replace(/[A-Za-z]/g, (letter) => String.fromCodePoint((letter.codePointAt(0) ?? 0) + 0xfee0));

const optionsOf = (options: object): string =>
  Object.entries(options as Readonly<Record<string, { readonly value: Elements }>>)
    .map(([form, { value }]) => `${form} {${messageOf(value)}}`)
    .join(" ");

/** A message of that syntax tree, in ICU MessageFormat, with its own words in wide letters and its arguments as they are. */
const messageOf = (elements: Elements): string =>
  elements
    .map((element) => {
      if (element.type === 0) return wide(element.value.replaceAll("'", "’"));
      if (element.type === 1) return `{${element.value}}`;
      if (element.type === 5) return `{${element.value}, select, ${optionsOf(element.options)}}`;
      if (element.type === 6) return `{${element.value}, plural, ${optionsOf(element.options)}}`;
      if (element.type === 7) return "#";
      throw new Error(`a fixed word has something new: ${JSON.stringify(element)}`);
    })
    .join("");

const widened = (catalogue: Catalogue): Catalogue =>
  Object.fromEntries(
    Object.entries(catalogue).map(([key, entry]) => {
      if (typeof entry === "string") return [key, wide(entry.replaceAll("'", "’"))];
      if (!isMessage(entry)) return [key, widened(entry)];
      return [key, messageOf(new IntlMessageFormat(entry.text, "en", undefined, { ignoreTag: true }).getAst())];
    }),
  );

/**
 * Speaks the fixed words in wide letters to readers of Polish, from now on and in this file alone. Polish, because nothing falls
 * back to it.
 */
export function speakWide(): void {
  Object.assign(polish, widened(english));
}

/** Letters that stand for a writer's words: Cyrillic ones, which no fixed word has. */
const asWriter = (text: string): string =>
  text
    .split(/(https?:\/\/\S+?(?=[)\s]|$))/)
    .map((piece, at) =>
      at % 2 === 1
        ? piece
        : piece.replace(/[A-Za-zÀ-ɏ]/g, (letter) =>
            String.fromCodePoint(0x430 + ((letter.toLowerCase().codePointAt(0) ?? 0) % 32)),
          ),
    )
    .join("");

/** Everything in a document that a writer words, and nothing that the service reads. */
export function inWritersLetters<T>(document: T, written: ReadonlySet<string>): T {
  const walk = (each: unknown, key: string): unknown => {
    if (typeof each === "string") return written.has(key) ? asWriter(each) : each;
    if (Array.isArray(each)) return each.map((item) => walk(item, key));
    if (typeof each !== "object" || each === null || Object.getPrototypeOf(each) !== Object.prototype) return each;
    return Object.fromEntries(Object.entries(each).map(([name, item]) => [name, walk(item, name)]));
  };
  return walk(document, "") as T;
}
