import type { NameBook } from "../words/name-book.js";
import { attributes, markup, type Content } from "./markup.js";

/** The attribute for an element that holds nothing but the writer's words: said where the page around it is in another language. */
export const writersLanguage = ({ textLanguage }: Pick<NameBook, "textLanguage">): Content =>
  attributes({ lang: textLanguage });

/** Words of the writer among fixed words. */
export const inWritersLanguage = (text: Content, book: Pick<NameBook, "textLanguage">): Content =>
  book.textLanguage === null ? text : markup`<span${writersLanguage(book)}>${text}</span>`;
