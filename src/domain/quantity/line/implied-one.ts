import { countWords } from "../parse/words/count-words.js";
import { unitWords } from "../units/unit-words.js";

/** Household measures written out, in the singular: beside an abbreviation ("EL Öl", "ml Milch") a number was lost. */
const spoonsAndCups: Readonly<Record<string, readonly string[]>> = {
  en: ["cup", "tablespoon", "teaspoon"],
  de: ["tasse", "esslöffel", "eßlöffel", "teelöffel", "kaffeelöffel"],
  fr: ["tasse", "cuillère à soupe", "cuillère à café", "cuillerée à soupe", "cuillerée à café"],
  es: ["taza", "cucharada", "cucharadita", "cucharada sopera", "cucharada de café"],
  pl: ["szklanka", "łyżka", "łyżeczka", "litr", "kilogram"],
};

/** What joins a measure to its food. Where it is missing the words may be a name: "cup mushrooms", "stem ginger". */
const joints: Readonly<Record<string, RegExp>> = {
  en: /^\sof\s/,
  de: /^\s/,
  fr: /^\s(?:de\s|d['’])/,
  es: /^\sde\s/,
  pl: /^\s/,
};

/** Counting words whose plural is no other word. */
const eitherNumber: ReadonlySet<string> = new Set(["würfel", "beutel", "becher", "noix"]);

const isSingular = (word: string, language: string): boolean => countWords[language]?.get(word)?.one === word;

/** "szklanka mąki", "bunch of parsley": a line that begins with one of a measure. */
function beginsWithOne(words: string, language: string): boolean {
  const joint = joints[language] ?? /^\sof\s/;
  const spoons = (spoonsAndCups[language] ?? []).filter((each) => unitWords[language]?.has(each) === true);
  const [first = ""] = words.split(" ");
  const counted = isSingular(first, language) ? [first] : [];
  return [...spoons, ...counted].some((each) => words.startsWith(each) && joint.test(words.slice(each.length)));
}

/** "Zimtstange", "cinnamon stick": a line whose last word is one of a measure. */
function endsWithOne(words: string, language: string): boolean {
  const last = words.slice(words.lastIndexOf(" ") + 1);
  if (language === "en") return last !== words && isSingular(last, language);
  if (language !== "de" || last !== words) return false;
  return [...(countWords["de"]?.keys() ?? [])].some(
    (each) => each.length < last.length - 2 && last.endsWith(each) && isSingular(each, "de") && !eitherNumber.has(each),
  );
}

/** Whether a line without a number names one of a household measure or of a counted piece. */
export function impliesOne(line: string, language: string): boolean {
  const words = line.toLowerCase();
  return beginsWithOne(words, language) || endsWithOne(words, language);
}
