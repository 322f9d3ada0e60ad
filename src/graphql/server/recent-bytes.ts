import { crc32 } from "node:zlib";
import { BoundedCache, type CacheBounds } from "../../domain/bounded-cache.js";

/** What belongs to sequences of bytes; those that were asked for last. */
interface RecentBytes<T> {
  get(bytes: Buffer): T | undefined;
  keep(bytes: Buffer, value: T): void;
}

/**
 * Found by a checksum and then compared byte by byte: a kilobyte as a key of a Map takes four times as long. Of two with the same
 * checksum, the first is kept.
 *
 * @param bounds sizes in bytes
 */
export function recentBytes<T>(name: string, bounds: CacheBounds): RecentBytes<T> {
  const kept = new BoundedCache<{ readonly bytes: Uint8Array; readonly value: T }>(name, bounds);
  const keyOf = (bytes: Buffer): string => `${crc32(bytes)} ${bytes.length}`;
  return {
    get: (bytes) => {
      const found = kept.get(keyOf(bytes));
      return found !== undefined && bytes.equals(found.bytes) ? found.value : undefined;
    },
    keep: (bytes, value) => {
      const key = keyOf(bytes);
      if (kept.has(key)) return;
      // A copy: a small buffer is part of a large one, which would be kept with it.
      kept.set(key, { bytes: new Uint8Array(bytes), value }, { size: Math.max(1, bytes.length) });
    },
  };
}
