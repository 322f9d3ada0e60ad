import { legibleText } from "../words/legible-text.js";

/** Octets of a code point in UTF-8. */
const octets = (character: string): number => {
  const code = character.codePointAt(0) ?? 0;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x1_0000 ? 3 : 4;
};

const mostOctets = 75;

/** RFC 5545, 3.1: lines of at most 75 octets, continued after CRLF and a space; never inside a character. */
function folded(line: string): string {
  let [text, length] = ["", 0];
  for (const character of line) {
    const size = octets(character);
    if (length + size > mostOctets) {
      text += "\r\n ";
      length = 1;
    }
    text += character;
    length += size;
  }
  return text;
}

/** RFC 5545, 3.3.11: a value of type TEXT. */
export const calendarText = (text: string): string =>
  legibleText(text)
    .replace(/\r\n?/g, "\n")
    .replace(/[\\;,]/g, "\\$&")
    .replaceAll("\n", "\\n");

/** `["SUMMARY", "Soak"]`: a name with its parameters, and a value that is written out already. */
export type CalendarProperty = readonly [name: string, value: string];

/** Content lines, each ended by CRLF. */
export const calendarLines = (properties: readonly CalendarProperty[]): string =>
  properties.map(([name, value]) => `${folded(`${name}:${value}`)}\r\n`).join("");

/** `20260301T090000Z` of an ISO instant. */
export const calendarInstant = (instant: string): string => new Date(instant).toISOString().replace(/[-:]|\.\d+/g, "");

/** `20260301` of an ISO date. */
export const calendarDate = (date: string): string => date.replaceAll("-", "");
