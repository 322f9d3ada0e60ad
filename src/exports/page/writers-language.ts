import type { NameBook } from "../words/name-book.js";
import { attributes, markup, type Content } from "./markup.js";

/** Words in a language; null: in that of the words around them. */
export const inLanguage = (text: Content, language: string | null): Content =>
  language === null ? text : markup`<span${attributes({ lang: language })}>${text}</span>`;

type Book = Pick<NameBook, "languageOf">;

/** The attribute for an element that holds nothing but one of the writer's texts: said where the page around it is in another language. */
export const writersLanguage = (text: string, { languageOf }: Book): Content => attributes({ lang: languageOf(text) });

/** One of the writer's texts among fixed words. */
export const inWritersLanguage = (text: string, { languageOf }: Book): Content => inLanguage(text, languageOf(text));
