import type { NameBook } from "../words/name-book.js";
import type { Words } from "../words/words.js";
import { attributes, markup, type Content } from "./markup.js";

/** The tag of a language (BCP 47) where it is another than that of the fixed words around it; else null. */
export const otherLanguage = (locale: string, { language }: Pick<Words, "language">): string | null =>
  locale.toLowerCase().split("-")[0] === language ? null : locale;

/** Words in a language; null: in that of the words around them. */
export const inLanguage = (text: Content, language: string | null): Content =>
  language === null ? text : markup`<span${attributes({ lang: language })}>${text}</span>`;

type Book = Pick<NameBook, "languageOf">;

/** The attribute for an element that holds nothing but one of the writer's texts: said where the page around it is in another language. */
export const writersLanguage = (text: string, { languageOf }: Book): Content => attributes({ lang: languageOf(text) });

/** One of the writer's texts among fixed words. */
export const inWritersLanguage = (text: string, { languageOf }: Book): Content => inLanguage(text, languageOf(text));
