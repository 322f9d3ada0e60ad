import { Parser } from "htmlparser2";

/** The most characters of one text that are kept. */
export const longestText = 10_000;
/** Of one text with its markup. */
const longestMarkup = 100_000;

const breaks = new Set(["br", "p", "li", "div", "h1", "h2", "h3", "h4", "tr"]);
const silent = new Set(["script", "style"]);

/** Text without markup and entities; white space is one space. Publishers put both into fields that should be plain. */
export function plainWords(text: string): string {
  const once = withoutMarkup(text.slice(0, longestMarkup));
  // Some publishers encode twice: "&amp;frac12; cup". Nobody encodes three times.
  return tidy(/&(?:[a-z]+\d*|#\d+|#x[\da-f]+);/i.test(once) ? withoutMarkup(once) : once);
}

function withoutMarkup(text: string): string {
  if (!/[<&]/.test(text)) return text;
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
  return words;
}

const tidy = (text: string): string => text.replace(/\s+/gu, " ").trim().slice(0, longestText);
