import { SecondChance } from "../../domain/second-chance.js";

/** The most that is kept: texts, and characters of all together. A longer one than `longest` is not kept. */
export interface RecentLimits {
  readonly count: number;
  readonly characters: number;
  readonly longest: number;
}

/** What belongs to texts, by a key; those that were not asked for give way. */
interface RecentTexts<T> {
  get(key: string): T | undefined;
  /** @param length of the text, in characters */
  keep(key: string, value: T, length: number): void;
}

export function recentTexts<T>(name: string, { count, characters, longest }: RecentLimits): RecentTexts<T> {
  const kept = new SecondChance<T>(name, { count, weight: characters });
  return {
    get: (key) => kept.get(key),
    keep: (key, value, length) => {
      if (length <= longest && !kept.has(key)) kept.set(key, value, length);
    },
  };
}
