import { andListParts } from "../words/and-list.js";
import type { Words } from "../words/words.js";
import { plainText, type Content } from "./markup.js";

/** Characters that stand for no character and are for use inside a program (Unicode, section 23.7): no text on a page holds one. */
const first = 0xfdd0;
const marks = /([\uFDD0-\uFDEF])/u;
const mark = (at: number): string => String.fromCharCode(first + at);

/** A sentence of the catalogue with markup where its names stand. @param say is given a mark in place of each name */
export const saidWith = (say: (...names: string[]) => string, ...names: readonly Content[]): Content =>
  say(...names.map((_name, at) => mark(at)))
    .split(marks)
    .map((piece) => (marks.test(piece) ? names[piece.charCodeAt(0) - first] : piece));

/** "barley, kale and dill", of markup; what stands between depends on the words themselves: "pera e higo". */
export function andListMarkup(things: readonly Content[], words: Pick<Words, "language">): Content {
  let at = 0;
  return andListParts(things.map(plainText), words).map(({ type, value }) =>
    type === "element" ? things[at++] : value,
  );
}
