const first = "a".charCodeAt(0);
const digit = "0".charCodeAt(0);
const [digits, others] = [26, 27];

/** Which letters a plain text has, a bit for each from a to z; all digits have one together, and so has everything else. */
export function letterSet(text: string): number {
  let set = 0;
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    const letter = code - first;
    if (letter >= 0 && letter < 26) set |= 1 << letter;
    else set |= 1 << (code >= digit && code < digit + 10 ? digits : others);
  }
  return set;
}

/** Bits of a set. */
function sizeOf(set: number): number {
  let left = set;
  let size = 0;
  while (left !== 0) {
    left &= left - 1;
    size += 1;
  }
  return size;
}

/** Whether so many edits may turn a text with one set into a text with the other: an edit takes one letter away at most, and adds one at most. */
export const mayBeWithin = (a: number, b: number, edits: number): boolean =>
  sizeOf(a & ~b) <= edits && sizeOf(b & ~a) <= edits;
