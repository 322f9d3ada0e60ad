// @ts-nocheck
import { Parser } from "htmlparser2";

/** The most characters of one text that are kept. */
export const longestText = 10_000;

const breaks = new Set(["br", "p", "li", "div", "h1", "h2", "h3", "h4", "tr"]);
const silent = new Set(["script", "style"]);

/** Text without markup and entities; white space is one space. Publishers put both into fields that should be plain. */
export function plainWords(text: string): string {
  if (!/[<&]/.test(text)) return tidy(text);
  let words = "";
  let quiet = 0;
  const parser = new Parser({
    onopentag: (name) => {
      if (silent.has(name)) quiet += 1;
      if (breaks.has(name)) words += " ";
    },
    ontext: (part) => {
      if (quiet === 0) words += part;
    },
    onclosetag: (name) => {
      if (silent.has(name)) quiet -= 1;
      if (breaks.has(name)) words += " ";
    },
  });
  parser.end(text);
  // Some publishers encode twice: "&amp;frac12; cup".
  return tidy(/&(?:[a-z]+\d*|#\d+|#x[\da-f]+);/i.test(words) ? plainWords(words) : words);
}

const tidy = (text: string): string => text.replace(/\s+/gu, " ").trim().slice(0, longestText);
