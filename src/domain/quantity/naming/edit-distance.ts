/**
 * Edits (insert, delete, replace one letter, swap two neighbours) that turn one word into the other; `most + 1` where there are more than
 * `most`.
 */
export function editDistance(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let before: number[] = [];
  let last: number[] = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row++) {
    const current = [row];
    let least = row;
    for (let column = 1; column <= b.length; column++) {
      const same = a[row - 1] === b[column - 1];
      const swapped = row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1];
      let best = Math.min(
        (last[column] ?? 0) + 1,
        (current[column - 1] ?? 0) + 1,
        (last[column - 1] ?? 0) + (same ? 0 : 1),
      );
      if (swapped) best = Math.min(best, (before[column - 2] ?? 0) + 1);
      current.push(best);
      if (best < least) least = best;
    }
    // A swap may still come of the row before, at one edit more.
    if (least > most && Math.min(...last) + 1 > most) return most + 1;
    before = last;
    last = current;
  }
  return Math.min(last[b.length] ?? 0, most + 1);
}
