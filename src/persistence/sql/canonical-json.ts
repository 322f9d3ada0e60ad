import { createHash } from "node:crypto";

/** One text for one value: keys in the order of their code units, no spaces. Survives a round trip through JSONB. */
export function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(",")}]`;
  if (typeof value === "object" && value !== null) {
    const entries = Object.entries(value)
      .filter(([, inner]) => inner !== undefined)
      .toSorted(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, inner]) => `${JSON.stringify(key)}:${canonicalJson(inner)}`);
    return `{${entries.join(",")}}`;
  }
  return JSON.stringify(value);
}

/** SHA-256, hex, of the canonical text. */
export const checksumOf = (value: unknown): string => createHash("sha256").update(canonicalJson(value)).digest("hex");
