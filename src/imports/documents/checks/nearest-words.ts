/** Edits (insert, delete, replace one letter, swap two neighbours) that turn one word into the other. */
function distance(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, column) => column)];
  const cell = (row: number, column: number): number => rows[row]?.[column] ?? 0;
  for (let row = 1; row <= a.length; row++) {
    const current = [row];
    rows.push(current);
    for (let column = 1; column <= b.length; column++) {
      const same = a[row - 1] === b[column - 1];
      const swapped = row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1];
      const changed = cell(row - 1, column - 1) + (same ? 0 : 1);
      const best = Math.min(cell(row - 1, column) + 1, cell(row, column - 1) + 1, changed);
      current.push(swapped ? Math.min(best, cell(row - 2, column - 2) + 1) : best);
    }
  }
  return cell(a.length, b.length);
}

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
      edits: isFar(word) ? Infinity : distance(written.toLowerCase(), word.toLowerCase()),
    }))
    .filter(({ edits }) => edits <= allowed)
    .sort((a, b) => a.edits - b.edits)
    .slice(0, 3)
    .map(({ word }) => word);
}
