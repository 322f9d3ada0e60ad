import { plainWords } from "../../domain/quantity/food-name.js";
import { spellingsOf } from "../../domain/quantity/naming/word-variants.js";
import type { InSlices, Work } from "../../domain/counted-work.js";

/** Letters of a name's longest word that every form of it has: "Möhr" of "Möhren". */
const stemLength = 4;

const shortestStem = 3;

/** Letters of a line that are looked at in one step. */
const lettersInStep = 4;

/** The first letters of a name's longest word; fewer of a short one, whose endings change: "jaj" of "jajko" and "jajek". */
export function stemOf(name: string): string {
  const longest = plainWords(name)
    .split(" ")
    .reduce((found, word) => (word.length > found.length ? word : found), "");
  return longest.slice(0, Math.max(shortestStem, Math.min(stemLength, longest.length - 2)));
}

/** Whether some lines may hold a name with this stem. */
type MayHold = (stem: string) => boolean;

/** Takes some lines apart once, so that each of many names is looked up and not searched for in all of the text. */
export function* partsOfLines(lines: readonly string[], work: Work): InSlices<MayHold> {
  const words = new Set<string>();
  // A name without a letter might be anywhere.
  const parts = new Set<string>([""]);
  for (const line of lines) {
    work.step(1 + line.length / lettersInStep);
    yield;
    for (const word of spellingsOf(plainWords(line))) {
      if (words.has(word)) continue;
      words.add(word);
      for (let at = 0; at < word.length; at++)
        for (let length = 1; length <= stemLength; length++) parts.add(word.slice(at, at + length));
    }
  }
  return (stem) => parts.has(stem);
}
