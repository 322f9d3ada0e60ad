import { editDistance } from "./edit-distance.js";

/** Up to three codes that an unknown one may have meant: the nearest, else those that have a part of it in common. */
export function nearestCodes(written: string, known: readonly string[]): readonly string[] {
  const near = nearestWords(written, known);
  if (near.length > 0) return near;
  const parts = new Set(
    written
      .slice(0, 80)
      .toLowerCase()
      .split(/[^\p{L}\p{N}]+/u),
  );
  return known.filter((code) => code.split("-").some((part) => part.length > 2 && parts.has(part))).slice(0, 3);
}

/** Up to three known words that a slip of the finger could have meant, nearest first. */
export function nearestWords(written: string, known: readonly string[]): readonly string[] {
  const allowed = Math.max(1, Math.floor(written.length / 3));
  // Each letter that one has more of is an edit.
  const isFar = (word: string): boolean => written.length > 40 || Math.abs(word.length - written.length) > allowed;
  return known
    .map((word) => ({
      word,
      edits: isFar(word) ? Infinity : editDistance(written.toLowerCase(), word.toLowerCase(), allowed),
    }))
    .filter(({ edits }) => edits <= allowed)
    .sort((a, b) => a.edits - b.edits)
    .slice(0, 3)
    .map(({ word }) => word);
}
