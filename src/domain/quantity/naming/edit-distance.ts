/**
 * Edits (insert, delete, replace one letter, swap two neighbours) that turn one word into the other; `most + 1` where there are more than
 * `most`.
 */
export function editDistance(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  const beyond = most + 1;
  let before: number[] = [];
  let last: number[] = Array.from({ length: b.length + 1 }, (_, column) => Math.min(column, beyond));
  for (let row = 1; row <= a.length; row++) {
    const current: number[] = Array.from({ length: b.length + 1 }, () => beyond);
    if (row <= most) current[0] = row;
    let least = current[0] ?? beyond;
    // Farther from the diagonal there are more edits than that.
    const to = Math.min(b.length, row + most);
    for (let column = Math.max(1, row - most); column <= to; column++) {
      const same = a[row - 1] === b[column - 1];
      const swapped = row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1];
      let best = Math.min(
        (last[column] ?? 0) + 1,
        (current[column - 1] ?? 0) + 1,
        (last[column - 1] ?? 0) + (same ? 0 : 1),
      );
      if (swapped) best = Math.min(best, (before[column - 2] ?? 0) + 1);
      current[column] = Math.min(best, beyond);
      if (best < least) least = best;
    }
    // A swap may still come of the row before, at one edit more.
    if (least > most && Math.min(...last) + 1 > most) return beyond;
    before = last;
    last = current;
  }
  return Math.min(last[b.length] ?? 0, beyond);
}
