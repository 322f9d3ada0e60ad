import { singularWord } from "../singular.js";

/** Endings of Polish cases and genders, the longest first. */
const polishEndings =
  /(?:iami|ami|iach|ach|iego|ego|iej|ej|ich|ych|imi|ymi|iem|em|iom|om|ow|ów|ie|ia|ią|ię|iu|a|ą|e|ę|i|o|u|y)$/u;
/** "czosnek", "cukier": the vowel that falls out where an ending follows. */
const fleeting = /(?<=[^aeiouyąęó])(?:ie|e)(?=[krcwłń]$)/u;

function polishStem(word: string): string {
  if (word.length < 3) return word;
  const bare = word.replace(polishEndings, (ending, at: number) => (at < 3 ? ending : ""));
  const short = bare.length < 3 ? word : bare;
  return short.replace(fleeting, "").replace(/ó/gu, "o");
}

/**
 * What forms of a word have in common, so far as it is certain that no other food has it too: English plurals, German datives,
 * French and Spanish plurals, Polish cases. Polish is read with its accents: "mąki" (of flour) is not "maku" (of poppy seed).
 */
export function wordStem(word: string, language: string): string {
  switch (language) {
    case "en":
      return singularWord(word);
    case "de":
      return word.length > 4 ? word.replace(/(?<=e[rl]?)n$/u, "") : word;
    case "fr":
      return word.length > 3 ? word.replace(/[sx]$/u, "") : word;
    case "es":
      return word.length > 3 ? word.replace(/(?<=[aeiou])s$/u, "") : word;
    case "pl":
      return polishStem(word);
    default:
      return word;
  }
}
