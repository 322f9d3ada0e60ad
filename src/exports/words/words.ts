import type { AmountLanguage } from "../../domain/quantity/reader-locale.js";
import type { Spoken } from "./message.js";
import type { english } from "./messages/english.js";

/** Every fixed word of every way out, for one reader. The catalogues are in `messages`, a folder a language. */
export interface Words extends Spoken<typeof english> {
  /** BCP 47 language of the words. */
  readonly language: AmountLanguage;
}

/** Those of the pages alone. */
export type PageWords = Words["page"];

/** Column names of the shopping list as a table. */
export type CsvColumn = keyof Words["csv"];
