/** The most that is kept: texts, and characters of all together. A longer one than `longest` is not kept. */
export interface RecentLimits {
  readonly count: number;
  readonly characters: number;
  readonly longest: number;
}

/** What belongs to texts, by a key; those that were not asked for give way, oldest first. */
export interface RecentTexts<T> {
  get(key: string): T | undefined;
  /** @param length of the text, in characters */
  keep(key: string, value: T, length: number): void;
}

interface Kept<T> {
  readonly value: T;
  readonly length: number;
  /** It was asked for since it was last its turn to give way. */
  isAskedFor: boolean;
}

/**
 * What was asked for goes to the end of the line when its turn to give way comes, and not each time. To move it each time has the
 * engine write the table of the Map anew every few requests, each new one held by the last, so that they all live until the whole
 * heap is swept.
 */
export function recentTexts<T>({ count, characters, longest }: RecentLimits): RecentTexts<T> {
  const kept = new Map<string, Kept<T>>();
  let held = 0;
  return {
    get: (key) => {
      const found = kept.get(key);
      if (found === undefined) return undefined;
      found.isAskedFor = true;
      return found.value;
    },
    keep: (key, value, length) => {
      if (length > longest || kept.has(key)) return;
      // Before it comes in: else it would be the first to go where all others were asked for.
      for (const [oldest, each] of kept) {
        if (kept.size < count && held + length <= characters) break;
        kept.delete(oldest);
        if (each.isAskedFor) {
          each.isAskedFor = false;
          kept.set(oldest, each);
        } else held -= each.length;
      }
      kept.set(key, { value, length, isAskedFor: false });
      held += length;
    },
  };
}
