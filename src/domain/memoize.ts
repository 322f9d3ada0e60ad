import { BoundedCache } from "./bounded-cache.js";
import type { InSlices, Work } from "./counted-work.js";

/** The same function with a cache by object identity: one result per object, for as long as the object lives. Neither may be mutated. */
export function memoize<Thing extends object, Found>(find: (thing: Thing) => Found): (thing: Thing) => Found {
  const known = new WeakMap<Thing, { readonly found: Found }>();
  return (thing) => {
    const before = known.get(thing);
    if (before !== undefined) return before.found;
    const found = find(thing);
    known.set(thing, { found });
    return found;
  };
}

/** `memoize` for a computation in slices. A stopped one is not cached. */
export function memoizeInSlices<Thing extends object, Found>(
  find: (thing: Thing, work: Work) => InSlices<Found>,
): (thing: Thing, work: Work) => InSlices<Found> {
  const known = new WeakMap<Thing, { readonly found: Found }>();
  return function* (thing, work) {
    const before = known.get(thing);
    if (before !== undefined) return before.found;
    const found = yield* find(thing, work);
    known.set(thing, { found });
    return found;
  };
}

/**
 * The same function with a bounded cache of recent results.
 *
 * @param name of the cache, in the table of caches
 * @param most entries
 * @param keyOf equal for questions with equal answers
 * @param isWorthKeeping whether the same question is to be answered the same the next time; left out: always
 */
export function memoizeLatest<Question, Found>(
  name: string,
  most: number,
  keyOf: (question: Question) => string,
  find: (question: Question) => Found,
  isWorthKeeping: (found: Found) => boolean = () => true,
): (question: Question) => Found {
  const known = new BoundedCache<Entry<Found>>(name, { max: most });
  // One answer asks for the same locale and the same currency a hundred times in a row.
  let last: Entry<Found> | null = null;
  return (question) => {
    const key = keyOf(question);
    if (last?.key === key) return last.found;
    const before = known.get(key);
    const entry = before ?? { key, found: find(question) };
    if (before === undefined) {
      if (!isWorthKeeping(entry.found)) return entry.found;
      known.set(key, entry);
    }
    last = entry;
    return entry.found;
  };
}

interface Entry<Found> {
  readonly key: string;
  readonly found: Found;
}

/** `memoizeLatest` for a computation in slices. A stopped one is not cached. */
export function memoizeLatestInSlices<Question, Found>(
  name: string,
  most: number,
  keyOf: (question: Question) => string,
  find: (question: Question) => InSlices<Found>,
): (question: Question) => InSlices<Found> {
  const known = new BoundedCache<{ readonly found: Found }>(name, { max: most });
  return function* (question) {
    const key = keyOf(question);
    const before = known.get(key);
    if (before !== undefined) return before.found;
    const found = yield* find(question);
    known.set(key, { found });
    return found;
  };
}
