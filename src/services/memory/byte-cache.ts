interface Entry {
  readonly value: unknown;
  readonly bytes: number;
  /** It was asked for since it was last its turn to give way. */
  isAskedFor: boolean;
}

/** Bytes that an entry costs beside its value and its key. */
const overhead = 200;

/**
 * Values by key up to a number of bytes in all; those not asked for give way, oldest first. One that was asked for goes to the end
 * of the line when its turn comes, which costs less than to move it each time it is asked for.
 */
export class ByteCache {
  private readonly entries = new Map<string, Entry>();
  private held = 0;
  private gaveWay = 0;

  constructor(private readonly limit: number) {}

  get(key: string): unknown {
    const entry = this.entries.get(key);
    if (entry === undefined) return undefined;
    entry.isAskedFor = true;
    return entry.value;
  }

  /** A value that would push out a tenth of all is not kept. @param bytes of the value, roughly */
  set(key: string, value: unknown, bytes: number): void {
    this.delete(key);
    const entry = { value, bytes: bytes + key.length * 2 + overhead, isAskedFor: false };
    if (entry.bytes * 10 > this.limit) return;
    // Before it comes in: else it would be the first to go where all others were asked for.
    for (const [oldest, each] of this.entries) {
      if (this.held + entry.bytes <= this.limit) break;
      if (each.isAskedFor) {
        each.isAskedFor = false;
        // The last of a Map is what was put in last.
        this.entries.delete(oldest);
        this.entries.set(oldest, each);
      } else {
        this.delete(oldest);
        this.gaveWay += 1;
      }
    }
    this.entries.set(key, entry);
    this.held += entry.bytes;
  }

  delete(key: string): void {
    const entry = this.entries.get(key);
    if (entry === undefined) return;
    this.entries.delete(key);
    this.held -= entry.bytes;
  }

  get figures(): {
    readonly entries: number;
    readonly bytes: number;
    readonly limit: number;
    readonly gaveWay: number;
  } {
    return { entries: this.entries.size, bytes: this.held, limit: this.limit, gaveWay: this.gaveWay };
  }
}
