import type { SignalFollower } from "../../persistence/database/signals.js";
import { ByteCache } from "./byte-cache.js";
import { Generations } from "./generations.js";

/** What is kept, from the database up to the ready answer. */
export type CacheName = "documents" | "pointers" | "foods" | "restAnswers" | "graphqlAnswers";

interface Count {
  hits: number;
  misses: number;
}

/** What a process keeps so as not to read or compute it again. It may all be lost at any time. */
export interface Cache {
  readonly generations: Generations;
  readonly store: ByteCache;
  readonly counts: Readonly<Record<CacheName, Count>>;
  /** Answers that are being computed, by key, and since when. */
  readonly computing: Map<string, Computing>;
  /** To be told of changes. */
  readonly follower: SignalFollower;
}

interface Computing {
  readonly since: number;
  readonly done: Promise<unknown>;
}

const none = (): Count => ({ hits: 0, misses: 0 });

/** @param bytes the most to keep; nothing is kept before the follower was told that changes are heard */
export function openCache(bytes: number): Cache {
  const generations = new Generations();
  return {
    generations,
    store: new ByteCache(bytes),
    counts: { documents: none(), pointers: none(), foods: none(), restAnswers: none(), graphqlAnswers: none() },
    computing: new Map(),
    follower: generations,
  };
}

/** For metrics. Counts are of this process since its start. */
export interface CacheFigures {
  readonly entries: number;
  /** Roughly, with what the entries themselves cost. */
  readonly bytes: number;
  readonly limit: number;
  /** Entries that gave way to others. */
  readonly evicted: number;
  /** Whether changes are heard; while they are not, only what never changes is taken from memory. */
  readonly listening: boolean;
  readonly lookups: Readonly<Record<CacheName, Readonly<Count>>>;
}

export const cacheFigures = ({ store, generations, counts }: Cache): CacheFigures => ({
  ...store.figures,
  listening: generations.isListening(),
  lookups: counts,
});
