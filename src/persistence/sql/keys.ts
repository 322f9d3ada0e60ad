const uuid = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;

/** Ids come from callers; what is not one can be nobody's. */
export const isId = (text: string): boolean => uuid.test(text);

/** One answer a key, in the order of the keys. */
export function inOrder<K, V>(
  keys: readonly K[],
  found: readonly V[],
  keyOf: (value: V) => string,
  nameOf: (key: K) => string,
): readonly (V | null)[] {
  const byKey = new Map(found.map((value) => [keyOf(value), value]));
  return keys.map((key) => byKey.get(nameOf(key)) ?? null);
}
