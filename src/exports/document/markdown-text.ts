import { oneLine } from "../words/legible-text.js";

/** Characters that mean something inside a line, in CommonMark and in the extensions and templates newsletters use. */
const marks = /[\\`*_[\]<>&~|#{}]/g;

/** What a reader's program may turn into a link by itself. */
const autolinks = /(:)(?=\/\/)|(?<=\bwww)(\.)|(@)/gi;

/**
 * Any text as one line of CommonMark that says exactly that text: marks are escaped, white space is folded (CommonMark 0.31,
 * 2.4 backslash escapes; 6 inlines). Safe wherever a line of text may stand, also at its beginning.
 */
export const markdownText = (text: string): string =>
  unlikeBlock(oneLine(text).replace(marks, "\\$&").replace(autolinks, "\\$&"));

/** A line that does not begin like a list, a heading or a rule. */
export const unlikeBlock = (line: string): string =>
  line.replace(/^([-+=])/, "\\$1").replace(/^(\d{1,9})([.)])(?=\s|$)/, "$1\\$2");

/** An address between angle brackets (6.3 links): nothing in it can end it. */
export const markdownAddress = (address: string): string =>
  `<${oneLine(address).replace(/[<>\\ "]/g, (mark) => encodeURIComponent(mark))}>`;
