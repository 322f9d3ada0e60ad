import { LRUCache } from "lru-cache";
import { addToCacheTable } from "./cache-table.js";

/** How much a cache may hold. Where there is a `maxSize`, its `set` takes the `size` of each entry. */
export interface CacheBounds {
  /** Entries. */
  readonly max?: number;
  /** Of all entries together, in a unit of the caller's. */
  readonly maxSize?: number;
  /** Of one entry; a larger one is not kept. Left out: `maxSize`. */
  readonly maxEntrySize?: number;
}

/** Values by key. Those that were not asked for longest are evicted. */
export class BoundedCache<Value extends NonNullable<unknown>> extends LRUCache<string, Value> {
  private readonly count: { readonly evicted: number };

  /** @param name what is cached, in the table of caches: one of few, written in the program */
  constructor(name: string, { max = 0, maxSize = 0, maxEntrySize = 0 }: CacheBounds) {
    const count = { evicted: 0 };
    super({
      max,
      maxSize,
      maxEntrySize,
      dispose: (_value, _key, reason) => {
        if (reason === "evict") count.evicted += 1;
      },
    });
    this.count = count;
    addToCacheTable(name, this, count);
  }

  get evicted(): number {
    return this.count.evicted;
  }
}
