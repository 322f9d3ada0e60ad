/** What one cache holds, as it counts it itself. */
export interface CacheCount {
  entries: number;
  /** In the unit of its bound: bytes, characters, or entries where that is the number of them. */
  weight: number;
  /** Entries evicted to make room for others, since the start of the process. */
  evicted: number;
}

/** All caches of one name together: a plan or a food has some of its own. */
export interface NamedCaches extends Readonly<CacheCount> {
  readonly name: string;
  /** How many there are. */
  readonly caches: number;
}

interface Living {
  readonly counts: Set<CacheCount>;
  /** Evictions of caches that are gone, so that the count only grows. */
  evictedBefore: number;
}

/** As many as the program has names for. */
const table = new Map<string, Living>();

const gone = new FinalizationRegistry<{ readonly living: Living; readonly count: CacheCount }>(({ living, count }) => {
  living.counts.delete(count);
  living.evictedBefore += count.evicted;
});

/** A count that is in the table of caches as long as its cache lives. @param name one of few, written in the program */
export function countedCache(name: string, cache: object): CacheCount {
  const count = { entries: 0, weight: 0, evicted: 0 };
  const living = table.get(name) ?? { counts: new Set(), evictedBefore: 0 };
  table.set(name, living);
  living.counts.add(count);
  gone.register(cache, { living, count });
  return count;
}

/** Every cache of the process, for metrics. */
export const cacheTable = (): readonly NamedCaches[] =>
  [...table].map(([name, { counts, evictedBefore }]) => {
    const sum = (figure: keyof CacheCount): number => [...counts].reduce((all, count) => all + count[figure], 0);
    const evicted = evictedBefore + sum("evicted");
    return { name, caches: counts.size, entries: sum("entries"), weight: sum("weight"), evicted };
  });
