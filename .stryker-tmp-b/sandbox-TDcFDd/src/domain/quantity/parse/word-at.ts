/** Characters that end a word: spaces, brackets, list marks, slash, plus, times, long dashes. */
// @ts-nocheck

const STOPS = new Set([..." \u00a0\u2009\u202f()[],;/|+=×–—"].map((stop) => stop.charCodeAt(0)));

/** Index after the word that begins at `start`. */
export const wordEnd = (text: string, start: number): number => {
  let at = start;
  while (at < text.length && !STOPS.has(text.charCodeAt(at))) at += 1;
  return at;
};

/** The word in lower case without its closing full stop. */
export const bareWord = (text: string, start: number, end: number): string => {
  const word = text.slice(start, text[end - 1] === "." ? end - 1 : end);
  return word.toLowerCase();
};
