/** Temperatures in words as they were published ("41 F (5 C)"), with their degree signs. */
export const degreeText = (words: string): string =>
  words.replace(/(?<![\p{L}\d])(-?\d+) ([CF])(?![\p{L}\d])/gu, "$1 °$2");
