import { isStorable } from "../persistence/sql/storable-text.js";

export { isStorable };

/**
 * A batched read that is only asked for keys it could know: the answers stand in the order of the keys, null for those
 * with a text that no database holds.
 */
export async function readStorable<Key, Value>(
  keys: readonly Key[],
  textsOf: (key: Key) => readonly string[],
  read: (keys: readonly Key[]) => Promise<readonly (Value | null)[]>,
): Promise<readonly (Value | null)[]> {
  const possible = keys.map((key) => textsOf(key).every(isStorable));
  if (possible.every(Boolean)) return read(keys);
  const asked = keys.filter((_, index) => possible[index]);
  const found = asked.length === 0 ? [] : await read(asked);
  const places = new Map(asked.map((key, index) => [key, found[index] ?? null]));
  return keys.map((key) => places.get(key) ?? null);
}
