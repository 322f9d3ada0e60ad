/** Tick boxes, bullets and list dashes before a line. A dash straight before a number is a sign and stays. */
const BULLETS = /^(?:[\s\u200b\ufeff]|[▢☐☑☒□■▪▫◻◼●○•·‣⁃✓✔*]|[-–—](?=\s)|\[[ xX]?\])+/u;

const RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
const LOWERED = "₀₁₂₃₄₅₆₇₈₉";
const ODD_DIGITS = /[⁰¹²³⁴-⁹₀-₉⅟]/u;

/** `1¹⁄₂` as `1 1⁄2`, `⅟3` as `1/3`. */
const plainDigits = (text: string): string =>
  text
    .replace(/(\d)([⁰¹²³⁴-⁹⅟])/gu, "$1 $2")
    .replace(/[⁰¹²³⁴-⁹]/gu, (digit) => String(RAISED.indexOf(digit)))
    .replace(/[₀-₉]/gu, (digit) => String(LOWERED.indexOf(digit)))
    .replaceAll("⅟", "1/");

/** Marks of a footnote behind the last word: "flour*", "flour¹", "flour [1]". */
const FOOTNOTE = /(?<=\p{L})(?: ?(?:[*†‡§]|\[\d{1,2}\])|[¹²³⁴-⁹])+$/u;

/** Spaces without width, soft hyphens and the like. */
const UNSEEN = /[\u00ad\u200b-\u200d\u2060\ufeff]/g;

const FOOTNOTE_END = /[*†‡§\]¹²³⁴-⁹]$/u;
/** Most lines hold nothing that needs a second look. */
const PLAIN = /^[\t -~]*$/;

/** Digits, letters and marks of double width as ordinary ones; nothing that cannot be seen. */
const narrow = (text: string): string =>
  text
    .replace(/[\uff01-\uff5e]/g, (wide) => String.fromCharCode(wide.charCodeAt(0) - 0xfee0))
    .replace(/\u3000/g, " ")
    .replace(UNSEEN, "");

/** The line without list marks and footnotes, with ordinary digits and single spaces. */
export const cleanLine = (raw: string): string => {
  const shown = PLAIN.test(raw) ? raw : narrow(raw);
  const whole = shown.replace(BULLETS, "").trimEnd();
  const bare = FOOTNOTE_END.test(whole) ? whole.replace(FOOTNOTE, "") : whole;
  const plain = ODD_DIGITS.test(bare) ? plainDigits(bare) : bare;
  return /[\t\n\r]|\s\s/.test(plain) ? plain.replace(/[\t\n\r]|\s\s+/g, " ") : plain;
};
