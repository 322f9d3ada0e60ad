import type { Dependence, Place } from "./generations.js";
import type { Memory, Shelf } from "./cache.js";

interface Kept<Value> {
  readonly value: Value | null;
  /** What it hangs on; null: it never changes. */
  readonly places: readonly Place[] | null;
  readonly since: number;
}

export interface Reads<Key, Value> {
  readonly shelf: Shelf;
  /** Tells its keys from those of other reads. */
  readonly name: string;
  /** See `rememberData`. */
  readonly asOf: number | null;
  read(keys: readonly Key[]): Promise<readonly (Value | null)[]>;
  keyOf(key: Key): string;
  /** null: what is there never changes. */
  dependenceOf(key: Key): Dependence | null;
  bytesOf(value: Value): number;
  /**
   * That nothing was found is kept too: where it is asked for what is written in plans and foods. Left out: it is not, because whoever
   * asks for names that do not exist would push out those that do.
   */
  readonly keepsNone?: boolean;
}

/** What is kept of a read that found nothing takes about as much as its key. */
const bytesOfNone = 100;

/** A batched read that reads only what is not known. */
export function rememberReads<Key, Value>(
  { cache, generations, counts }: Memory,
  { shelf, name, asOf, read, keyOf, dependenceOf, bytesOf, keepsNone = false }: Reads<Key, Value>,
): (keys: readonly Key[]) => Promise<readonly (Value | null)[]> {
  const count = counts[shelf];
  const cacheKey = (key: Key): string => `${name} ${keyOf(key)}`;
  const known = (key: Key): Kept<Value> | null => {
    const kept = cache.get(cacheKey(key)) as Kept<Value> | undefined;
    return kept !== undefined && (kept.places === null || generations.hold(kept.places, kept.since)) ? kept : null;
  };
  return async (keys) => {
    const found = keys.map(known);
    const missing = keys.filter((_, at) => found[at] === null);
    count.hits += keys.length - missing.length;
    if (missing.length === 0) return found.map((kept) => kept?.value ?? null);
    count.misses += missing.length;
    const since = asOf ?? generations.now();
    const fresh = await read(missing);
    missing.forEach((key, at) => {
      const value = fresh[at] ?? null;
      if (value === null && !keepsNone) return;
      const dependence = dependenceOf(key);
      const places = dependence === null ? null : [generations.place(dependence)];
      if (places !== null && !generations.hold(places, since)) return;
      cache.set(
        cacheKey(key),
        { value, places, since } satisfies Kept<Value>,
        value === null ? bytesOfNone : bytesOf(value),
      );
    });
    let next = 0;
    return found.map((kept) => (kept === null ? (fresh[next++] ?? null) : kept.value));
  };
}
