import type { SignalFollower } from "../../persistence/database/change-signals.js";
import { BoundedCache } from "../../domain/bounded-cache.js";
import { Generations } from "./generations.js";

/** The parts of the cache, from rows of the database up to complete answers. */
export type CacheName = "documents" | "pointers" | "foods" | "restAnswers" | "graphqlAnswers";

interface Count {
  hits: number;
  misses: number;
}

/** The cache of one process. Any entry may be evicted at any time. */
export interface Cache {
  readonly generations: Generations;
  readonly store: BoundedCache<object>;
  readonly counts: Readonly<Record<CacheName, Count>>;
  /** Answers that are being computed, by key, with the generation in which each began. */
  readonly computing: Map<string, Computing>;
  /** Receives the changes of the database, which invalidate entries. */
  readonly follower: SignalFollower;
}

interface Computing {
  readonly since: number;
  readonly done: Promise<unknown>;
}

/** Bytes that an entry costs beside its value and its key. */
const overhead = 200;

/** The size of an entry of the store. @param bytes of its value, roughly */
export const entrySize = (key: string, bytes: number): { readonly size: number } => ({
  size: Math.ceil(bytes) + key.length * 2 + overhead,
});

const none = (): Count => ({ hits: 0, misses: 0 });

/** @param bytes the size limit. Nothing is cached until the follower is listening to changes. */
export function openCache(bytes: number): Cache {
  const generations = new Generations();
  return {
    generations,
    // An entry that would evict a tenth of all others is not stored.
    store: new BoundedCache("answers", { maxSize: bytes, maxEntrySize: Math.floor(bytes / 10) }),
    counts: { documents: none(), pointers: none(), foods: none(), restAnswers: none(), graphqlAnswers: none() },
    computing: new Map(),
    follower: generations,
  };
}

/** For metrics. Counts are of this process since its start. */
export interface CacheFigures {
  readonly entries: number;
  /** Estimated, with the overhead of each entry. */
  readonly bytes: number;
  readonly limit: number;
  /** Entries evicted to make room for others. */
  readonly evicted: number;
  /** Whether changes are heard; while they are not, only entries that never change are served. */
  readonly listening: boolean;
  readonly lookups: Readonly<Record<CacheName, Readonly<Count>>>;
}

export const cacheFigures = ({ store, generations, counts }: Cache): CacheFigures => ({
  entries: store.size,
  bytes: store.calculatedSize,
  limit: store.maxSize,
  evicted: store.evicted,
  listening: generations.isListening(),
  lookups: counts,
});
