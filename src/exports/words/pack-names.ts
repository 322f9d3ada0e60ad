import { amountLanguages } from "../../domain/quantity/reader-locale.js";
import { ruleText } from "./rule-words.js";
import { wordsFor } from "./words-for.js";

/** What a reader calls a pack of this name: "Beutel" of a bag; in the writer's word where it is none of the fixed ones. */
export const packName = (name: string, locale: string): string => ruleText("packNames", name, wordsFor(locale));

/** What a pack of this name is called in each language of the fixed words: "bag", "Beutel", "sachet". */
export const packNamesOf = (name: string): readonly string[] => [
  ...new Set(amountLanguages.map((language) => packName(name, language))),
];
