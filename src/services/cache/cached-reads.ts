import type { Dependency, Slot } from "./generations.js";
import { entrySize, type Cache, type CacheName } from "./cache.js";

interface Entry<Value> {
  readonly value: Value | null;
  /** What it depends on; null: it never changes. */
  readonly places: readonly Slot[] | null;
  readonly since: number;
}

export interface CachedReadsOptions<Key, Value> {
  readonly cacheName: CacheName;
  /** Prefix of its keys. */
  readonly name: string;
  /** See `cachedData`. */
  readonly asOf: number | null;
  read(keys: readonly Key[]): Promise<readonly (Value | null)[]>;
  keyOf(key: Key): string;
  /** null: an entry never changes. */
  dependenceOf(key: Key): Dependency | null;
  bytesOf(value: Value): number;
  /**
   * Whether misses are cached too, for keys that come from plans and foods. Left out: no, because callers who ask for names that do
   * not exist would evict those that do.
   */
  readonly cachesMissing?: boolean;
}

/** A cached miss takes about as much as its key. */
const bytesOfMissing = 100;

/** A batched read that reads only what is not in the cache. */
export function cachedReads<Key, Value>(
  { store, generations, counts }: Cache,
  { cacheName, name, asOf, read, keyOf, dependenceOf, bytesOf, cachesMissing = false }: CachedReadsOptions<Key, Value>,
): (keys: readonly Key[]) => Promise<readonly (Value | null)[]> {
  const count = counts[cacheName];
  const cacheKey = (key: Key): string => `${name} ${keyOf(key)}`;
  const known = (key: Key): Entry<Value> | null => {
    const entry = store.get(cacheKey(key)) as Entry<Value> | undefined;
    return entry !== undefined && (entry.places === null || generations.areUnchanged(entry.places, entry.since))
      ? entry
      : null;
  };
  return async (keys) => {
    const found = keys.map(known);
    const missing = keys.filter((_, at) => found[at] === null);
    count.hits += keys.length - missing.length;
    if (missing.length === 0) return found.map((entry) => entry?.value ?? null);
    count.misses += missing.length;
    const since = asOf ?? generations.now();
    const fresh = await read(missing);
    missing.forEach((key, at) => {
      const value = fresh[at] ?? null;
      if (value === null && !cachesMissing) return;
      const dependence = dependenceOf(key);
      const places = dependence === null ? null : [generations.slot(dependence)];
      if (places !== null && !generations.areUnchanged(places, since)) return;
      const entry: Entry<Value> = { value, places, since };
      const entryKey = cacheKey(key);
      store.set(entryKey, entry, entrySize(entryKey, value === null ? bytesOfMissing : bytesOf(value)));
    });
    let next = 0;
    return found.map((entry) => (entry === null ? (fresh[next++] ?? null) : entry.value));
  };
}
