import { SecondChance } from "../../domain/second-chance.js";

/** Bytes that an entry costs beside its value and its key. */
const overhead = 200;

/** Values by key up to a number of bytes in all; those not asked for give way. */
export class ByteCache {
  private readonly kept: SecondChance<unknown>;

  constructor(private readonly limit: number) {
    this.kept = new SecondChance("answers", { count: Infinity, weight: limit });
  }

  get(key: string): unknown {
    return this.kept.get(key);
  }

  /** A value that would push out a tenth of all is not kept. @param bytes of the value, roughly */
  set(key: string, value: unknown, bytes: number): void {
    const weight = bytes + key.length * 2 + overhead;
    if (weight * 10 > this.limit) this.kept.delete(key);
    else this.kept.set(key, value, weight);
  }

  delete(key: string): void {
    this.kept.delete(key);
  }

  get figures(): {
    readonly entries: number;
    readonly bytes: number;
    readonly limit: number;
    readonly evicted: number;
  } {
    const { entries, weight: bytes, evicted } = this.kept.figures;
    return { entries, bytes, limit: this.limit, evicted };
  }
}
