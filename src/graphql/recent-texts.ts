/** The most that is kept: texts, and characters of all together. A longer one than `longest` is not kept. */
export interface RecentLimits {
  readonly count: number;
  readonly characters: number;
  readonly longest: number;
}

/** What belongs to texts, by a key; those that were asked for last. */
export interface RecentTexts<T> {
  get(key: string): T | undefined;
  /** @param length of the text, in characters */
  keep(key: string, value: T, length: number): void;
}

export function recentTexts<T>({ count, characters, longest }: RecentLimits): RecentTexts<T> {
  // The last of a Map is what was put in last.
  const kept = new Map<string, { readonly value: T; readonly length: number }>();
  let held = 0;
  return {
    get: (key) => {
      const found = kept.get(key);
      if (found === undefined) return undefined;
      kept.delete(key);
      kept.set(key, found);
      return found.value;
    },
    keep: (key, value, length) => {
      if (length > longest || kept.has(key)) return;
      kept.set(key, { value, length });
      held += length;
      for (const [oldest, { length: gone }] of kept) {
        if (kept.size <= count && held <= characters) return;
        kept.delete(oldest);
        held -= gone;
      }
    },
  };
}
