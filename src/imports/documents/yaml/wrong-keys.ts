import { isScalar, visit } from "yaml";
import type { Document } from "yaml";

interface WrongKey {
  readonly offset: number;
  /** What was found there. */
  readonly fault: string;
}

/**
 * Keys that their map has already, and `__proto__`, which no value keeps under that name. The library looks through the whole map for each key;
 * this goes through it once.
 */
export function wrongKeys(document: Document.Parsed): readonly WrongKey[] {
  const found: WrongKey[] = [];
  visit(document, {
    Map: (_, { items }) => {
      const seen = new Set<unknown>();
      for (const { key } of items) {
        if (!isScalar(key)) continue;
        const note = (fault: string) => found.push({ offset: key.range?.[0] ?? 0, fault });
        if (seen.has(key.value)) note("the same key twice");
        else if (key.value === "__proto__") note("the key __proto__, which is not allowed");
        seen.add(key.value);
      }
    },
  });
  return found;
}
