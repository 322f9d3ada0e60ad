import { amountLanguages } from "../../domain/quantity/reader-locale.js";
import { ruleText } from "./rule-words.js";
import { wordsFor } from "./words-for.js";

/** What a pack of this name is called in each language of the fixed words: "bag", "Beutel", "sachet". */
export const packNamesOf = (name: string): readonly string[] => [
  ...new Set(amountLanguages.map((language) => ruleText("packNames", name, wordsFor(language)))),
];
