import type { SignalFollower } from "../../persistence/database/signals.js";
import { ByteCache } from "./byte-cache.js";
import { Generations } from "./generations.js";

/** What is kept, from the database up to the ready answer. */
export type Shelf = "documents" | "pointers" | "foods" | "restAnswers" | "graphqlAnswers";

interface Count {
  hits: number;
  misses: number;
}

/** What a process keeps so as not to read or compute it again. It may all be lost at any time. */
export interface Memory {
  readonly generations: Generations;
  readonly cache: ByteCache;
  readonly counts: Readonly<Record<Shelf, Count>>;
  /** Answers that are being computed, by key, and since when. */
  readonly underWay: Map<string, UnderWay>;
  /** To be told of changes. */
  readonly follower: SignalFollower;
}

interface UnderWay {
  readonly since: number;
  readonly done: Promise<unknown>;
}

const none = (): Count => ({ hits: 0, misses: 0 });

/** @param bytes the most to keep; nothing is kept before the follower was told that changes are heard */
export function openMemory(bytes: number): Memory {
  const generations = new Generations();
  return {
    generations,
    cache: new ByteCache(bytes),
    counts: { documents: none(), pointers: none(), foods: none(), restAnswers: none(), graphqlAnswers: none() },
    underWay: new Map(),
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
  readonly gaveWay: number;
  /** Whether changes are heard; while they are not, only what never changes is taken from memory. */
  readonly listening: boolean;
  readonly shelves: Readonly<Record<Shelf, Readonly<Count>>>;
}

export const cacheFigures = ({ cache, generations, counts }: Memory): CacheFigures => ({
  ...cache.figures,
  listening: generations.isListening(),
  shelves: counts,
});
