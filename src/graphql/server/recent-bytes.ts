import { crc32 } from "node:zlib";
import { recentTexts, type RecentLimits } from "../../services/cache/recent-texts.js";

/** What belongs to sequences of bytes; those that were asked for last. */
interface RecentBytes<T> {
  get(bytes: Buffer): T | undefined;
  keep(bytes: Buffer, value: T): void;
}

/**
 * Found by a checksum and then compared byte by byte: a kilobyte as a key of a Map takes four times as long. Of two with the same
 * checksum, the first is kept.
 */
export function recentBytes<T>(name: string, limits: RecentLimits): RecentBytes<T> {
  const kept = recentTexts<{ readonly bytes: Uint8Array; readonly value: T }>(name, limits);
  const keyOf = (bytes: Buffer): string => `${crc32(bytes)} ${bytes.length}`;
  return {
    get: (bytes) => {
      const found = kept.get(keyOf(bytes));
      return found !== undefined && bytes.equals(found.bytes) ? found.value : undefined;
    },
    // A copy: a small buffer is part of a large one, which would be kept with it.
    keep: (bytes, value) => kept.keep(keyOf(bytes), { bytes: new Uint8Array(bytes), value }, bytes.length),
  };
}
