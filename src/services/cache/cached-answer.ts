import type { Deps } from "../deps.js";
import type { Slot } from "./generations.js";
import { entrySize, type Cache } from "./cache.js";
import { trackDeps } from "./tracked-deps.js";

type AnswerCacheName = "restAnswers" | "graphqlAnswers";

/** A computed answer, and whether it may be shared with other callers. */
export interface Computed<Answer> {
  readonly answer: Answer;
  /** Estimated size of the entry; null: the answer is private and not cached. */
  readonly bytes: number | null;
}

interface Entry {
  readonly answer: unknown;
  /** Estimated size. */
  readonly bytes: number;
  readonly places: readonly Slot[];
  readonly since: number;
  /** From when until when it is valid, in milliseconds; null: it did not read the clock. */
  readonly day: { readonly from: number; readonly until: number } | null;
}

const day = 86_400_000;

/** The key of a cached answer. Build it once per request: building it costs as much as the look-up. */
export interface AnswerKey {
  readonly cacheName: AnswerCacheName;
  readonly key: string;
}

/** @param question everything the answer depends on, except who asks */
export const answerKey = (cacheName: AnswerCacheName, question: string): AnswerKey => ({
  cacheName,
  key: `${cacheName} ${question}`,
});

/** A cached answer that is still valid, or undefined. */
export function findCachedAnswer(cache: Cache, { cacheName, key }: AnswerKey, deps: Pick<Deps, "clock">): unknown {
  const entry = cache.store.get(key) as Entry | undefined;
  if (entry === undefined || !cache.generations.areUnchanged(entry.places, entry.since)) return undefined;
  if (entry.day !== null) {
    const now = deps.clock().getTime();
    if (now < entry.day.from || now >= entry.day.until) return undefined;
  }
  cache.counts[cacheName].hits += 1;
  return entry.answer;
}

/** Counts what was made from a cached answer and is held as long as it is: its compressed bytes. */
export function addToCachedAnswer({ store }: Cache, { key }: AnswerKey, answer: unknown, bytes: number): void {
  const entry = store.peek(key) as Entry | undefined;
  if (entry === undefined || entry.answer !== answer) return;
  const grown: Entry = { ...entry, bytes: entry.bytes + bytes };
  const size = entrySize(key, grown.bytes);
  // Too large an entry would be evicted, and computed again for each request.
  if (size.size <= store.maxEntrySize) store.set(key, grown, size);
}

/**
 * A public answer from the cache, or computed and then cached until something it was computed from changes.
 * Everything must be read through the `deps` that `compute` is given. Concurrent requests for the same answer share one computation.
 */
export async function cachedAnswer<Answer>(
  cache: Cache,
  address: AnswerKey,
  deps: Deps,
  compute: (deps: Deps) => Promise<Computed<Answer>>,
): Promise<Answer> {
  const known = findCachedAnswer(cache, address, deps);
  if (known !== undefined) return known as Answer;
  const { generations, computing } = cache;
  const { cacheName, key } = address;
  const since = generations.now();
  const other = computing.get(key);
  if (other?.since === since && generations.isListening()) {
    const computed = (await other.done) as Computed<Answer>;
    if (computed.bytes !== null) {
      cache.counts[cacheName].hits += 1;
      return computed.answer;
    }
  }
  cache.counts[cacheName].misses += 1;
  const done = computeAndStore(cache, key, since, deps, compute);
  computing.set(key, { since, done });
  try {
    return (await done).answer;
  } finally {
    if (computing.get(key)?.done === done) computing.delete(key);
  }
}

async function computeAndStore<Answer>(
  { store, generations }: Cache,
  key: string,
  since: number,
  deps: Deps,
  compute: (deps: Deps) => Promise<Computed<Answer>>,
): Promise<Computed<Answer>> {
  const watched = trackDeps(deps, generations);
  const begun = deps.clock().getTime();
  const computed = await compute(watched.deps);
  const { places, usedClock, isPrivate } = watched.noted;
  if (isPrivate) return { ...computed, bytes: null };
  if (computed.bytes === null) return computed;
  const from = begun - (((begun % day) + day) % day);
  const isOneDay = deps.clock().getTime() < from + day;
  const entry: Entry = {
    answer: computed.answer,
    bytes: computed.bytes,
    places: [...places],
    since,
    day: usedClock ? { from, until: from + day } : null,
  };
  if (generations.areUnchanged(entry.places, since) && (isOneDay || !usedClock))
    store.set(key, entry, entrySize(key, computed.bytes));
  return computed;
}
