/** Letters that Unicode does not take apart into a plain one and a mark. */
const plainLetters: Readonly<Record<string, string>> = { ß: "ss", ł: "l", œ: "oe", æ: "ae", ø: "o", đ: "d" };

/** "d'ail", "l’oignon": the elided word stands by itself. Other apostrophes part nothing. */
const elision = /(?<!\p{L})(d|l|qu)['’ʼ`´](?=\p{L})/gu;

/** Case, spacing, hyphens, accents and apostrophes do not tell foods apart; nothing else is taken away. */
export const plainWords = (words: string): string => (isPlain.test(words) ? words : foldedWords(words));

/** Most words of most names: nothing is to be done for them. */
const isPlain = /^(?:[a-z0-9%]+(?: [a-z0-9%]+)*)?$/;

const foldedWords = (words: string): string =>
  words
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[ßłœæøđ]/g, (letter) => plainLetters[letter] ?? letter)
    .replace(elision, "$1 ")
    .replace(/(?<=\p{L})['’ʼ`´](?=\p{L}|\s|$)/gu, "")
    .replace(/[\s\-‐-―_,]+/gu, " ")
    .trim();

/** Case and spacing alone: "mąki" and "maki" stay two words. */
export const accentedWords = (words: string): string =>
  words
    .normalize("NFC")
    .toLowerCase()
    .replace(/[\s\-‐-―_,]+/gu, " ")
    .trim();

/** Whether a word is written with more than the letters from a to z. */
export const hasAccents = (words: string): boolean => /[^\p{ASCII}]/u.test(words);
