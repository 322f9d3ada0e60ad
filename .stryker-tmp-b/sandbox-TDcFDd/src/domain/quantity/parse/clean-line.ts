/** Tick boxes, bullets and list dashes before a line. A dash straight before a number is a sign and stays. */
// @ts-nocheck

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

/** The line without list marks, with ordinary digits and single spaces. */
export const cleanLine = (raw: string): string => {
  const bare = raw.replace(BULLETS, "").trimEnd();
  const plain = ODD_DIGITS.test(bare) ? plainDigits(bare) : bare;
  return /[\t\n\r]|\s\s/.test(plain) ? plain.replace(/[\t\n\r]|\s\s+/g, " ") : plain;
};
