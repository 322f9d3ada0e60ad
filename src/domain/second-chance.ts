import { countedCache, type CacheCount } from "./cache-table.js";

interface Entry<Value> {
  readonly value: Value;
  readonly weight: number;
  /** It was asked for since it was last its turn to give way. */
  isAskedFor: boolean;
}

/**
 * Values by key up to a number and a weight in all; those that were not asked for give way, oldest first. What was asked for goes to the
 * end of the line when its turn comes, and not each time: that would have the engine write the table of the Map anew every few
 * look-ups, each new one held by the last, so that they all live until the whole heap is swept.
 */
export class SecondChance<Value> {
  private readonly entries = new Map<string, Entry<Value>>();
  private readonly count: CacheCount;

  /** @param name what is kept, in the table of caches */
  constructor(
    name: string,
    private readonly most: { readonly count: number; readonly weight: number },
  ) {
    this.count = countedCache(name, this);
  }

  get(key: string): Value | undefined {
    const entry = this.entries.get(key);
    if (entry === undefined) return undefined;
    entry.isAskedFor = true;
    return entry.value;
  }

  has(key: string): boolean {
    return this.entries.has(key);
  }

  set(key: string, value: Value, weight: number): void {
    this.delete(key);
    // Before it comes in: else it would be the first to go where all others were asked for.
    for (const [oldest, each] of this.entries) {
      if (this.entries.size < this.most.count && this.count.weight + weight <= this.most.weight) break;
      if (each.isAskedFor) {
        each.isAskedFor = false;
        // The last of a Map is what was put in last.
        this.entries.delete(oldest);
        this.entries.set(oldest, each);
      } else {
        this.delete(oldest);
        this.count.evicted += 1;
      }
    }
    this.entries.set(key, { value, weight, isAskedFor: false });
    this.count.entries = this.entries.size;
    this.count.weight += weight;
  }

  delete(key: string): void {
    const entry = this.entries.get(key);
    if (entry === undefined) return;
    this.entries.delete(key);
    this.count.entries = this.entries.size;
    this.count.weight -= entry.weight;
  }

  get figures(): Readonly<CacheCount> {
    return this.count;
  }
}
