import { isScalar, visit } from "yaml";
import type { Document } from "yaml";

/** Offsets of keys that their map has already. The library looks through the whole map for each; this goes through it once. */
export function repeatedKeys(document: Document.Parsed): readonly number[] {
  const found: number[] = [];
  visit(document, {
    Map: (_, { items }) => {
      const seen = new Set<unknown>();
      for (const { key } of items) {
        if (!isScalar(key)) continue;
        if (seen.has(key.value)) found.push(key.range?.[0] ?? 0);
        seen.add(key.value);
      }
    },
  });
  return found;
}
