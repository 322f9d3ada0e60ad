/** What one cache holds, as it counts it itself. */
interface Cache {
  readonly size: number;
  readonly calculatedSize: number;
  /** 0: it is bounded by the number of its entries alone. */
  readonly maxSize: number;
}

/** All caches of one name together: a plan or a food has some of its own. */
export interface NamedCaches {
  readonly name: string;
  /** How many there are. */
  readonly caches: number;
  readonly entries: number;
  /** In the unit of its bound: bytes, characters, or entries where that is the number of them. */
  readonly weight: number;
  /** Entries evicted to make room for others, since the start of the process. */
  readonly evicted: number;
}

interface Entry {
  /** Weak, so that a cache goes with what it belongs to. */
  readonly cache: WeakRef<Cache>;
  readonly count: { readonly evicted: number };
}

interface Living {
  readonly entries: Set<Entry>;
  /** Evictions of caches that are gone, so that the count only grows. */
  evictedBefore: number;
}

/** As many as the program has names for. */
const table = new Map<string, Living>();

const gone = new FinalizationRegistry<{ readonly living: Living; readonly entry: Entry }>(({ living, entry }) => {
  living.entries.delete(entry);
  living.evictedBefore += entry.count.evicted;
});

/** The cache is in the table as long as it lives; what it has evicted is counted beyond that. */
export function addToCacheTable(name: string, cache: Cache, count: Entry["count"]): void {
  const entry: Entry = { cache: new WeakRef(cache), count };
  const living = table.get(name) ?? { entries: new Set(), evictedBefore: 0 };
  table.set(name, living);
  living.entries.add(entry);
  gone.register(cache, { living, entry });
}

const sum = (numbers: readonly number[]): number => numbers.reduce((all, each) => all + each, 0);

/** Every cache of the process, for metrics. */
export const cacheTable = (): readonly NamedCaches[] =>
  [...table].map(([name, { entries, evictedBefore }]) => {
    const caches = [...entries].flatMap(({ cache }) => cache.deref() ?? []);
    return {
      name,
      caches: entries.size,
      entries: sum(caches.map(({ size }) => size)),
      weight: sum(caches.map(({ size, maxSize, calculatedSize }) => (maxSize > 0 ? calculatedSize : size))),
      evicted: evictedBefore + sum([...entries].map(({ count }) => count.evicted)),
    };
  });
