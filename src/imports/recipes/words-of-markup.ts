import { readHtmlTokens } from "./html-tokens.js";

/** The most characters of one text that are kept. */
const longestText = 10_000;
/** Of one text with its markup. */
const longestMarkup = 100_000;

const breaks = new Set(["br", "p", "li", "div", "h1", "h2", "h3", "h4", "tr"]);
const silent = new Set(["script", "style"]);

/** Text without markup and entities; white space is one space. Publishers put both into fields that should be plain. */
export function wordsOfMarkup(text: string): string {
  const once = withoutMarkup(text.slice(0, longestMarkup));
  // Some publishers encode twice: "&amp;frac12; cup". Nobody encodes three times.
  return tidy(/&(?:[a-z]+\d*|#\d+|#x[\da-f]+);/i.test(once) ? withoutMarkup(once) : once);
}

/** Elements of HTML (WHATWG, "HTML elements", index of elements) that hold or break text; of others the mark is text. */
const elements =
  "a|abbr|address|article|aside|b|bdi|bdo|blockquote|body|br|button|caption|center|cite|code|col|colgroup|data|dd|del|details|dfn|div|dl|dt|" +
  "em|fieldset|figcaption|figure|font|footer|form|h[1-6]|head|header|hr|html|i|iframe|img|input|ins|kbd|label|legend|li|link|main|mark|" +
  "meta|nav|noscript|ol|option|p|path|picture|pre|q|s|samp|script|section|select|small|source|span|strike|strong|style|sub|summary|sup|svg|" +
  "table|tbody|td|template|textarea|tfoot|th|thead|time|title|tr|tt|u|ul|var|video|wbr";

const attribute = `\\s+[a-z][\\w:.-]*\\s*=\\s*(?:"[^"]*"|'[^']*'|[^\\s"'<>]+)|\\s+(?:checked|disabled|hidden|itemscope|selected)`;

/** A `<` that begins no tag: "until x<y", "a < b". A parser would eat what follows it. */
const sign = new RegExp(`<(?!/?(?:${elements})(?:${attribute})*\\s*/?>)`, "gi");

/** Comments go; of one that is not closed the mark is text. */
function withoutComments(text: string): string {
  let kept = "";
  let from = 0;
  for (let begin = text.indexOf("<!--"); begin >= 0; begin = text.indexOf("<!--", from)) {
    const end = text.indexOf("-->", begin + 4);
    if (end < 0) break;
    kept += text.slice(from, begin);
    from = end + 3;
  }
  return kept + text.slice(from);
}

function withoutMarkup(written: string): string {
  if (!/[<&]/.test(written)) return written;
  const text = withoutComments(written).replace(sign, "&lt;");
  let words = "";
  let quiet = 0;
  readHtmlTokens(text, {
    open: (name) => {
      if (silent.has(name)) quiet += 1;
      if (breaks.has(name)) words += " ";
    },
    text: (part) => {
      if (quiet === 0) words += part;
    },
    close: (name) => {
      if (silent.has(name)) quiet = Math.max(0, quiet - 1);
      if (breaks.has(name)) words += " ";
    },
  });
  return words;
}

const tidy = (text: string): string => text.replace(/\s+/gu, " ").trim().slice(0, longestText);
