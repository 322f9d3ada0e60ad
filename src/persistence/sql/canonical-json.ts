import { createHash } from "node:crypto";
import type { InSlices } from "../../domain/counted-work.js";

/** One text for one value: keys in the order of their code units, no spaces. Survives a round trip through JSONB. */
export function canonicalJson(value: unknown): string {
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(",")}]`;
  return `{${membersOf(value)
    .map(([key, inner]) => `${JSON.stringify(key)}:${canonicalJson(inner)}`)
    .join(",")}}`;
}

/** How deep a value is written in slices: a plan's document, its components, one of them, its lines. */
const slicedDepth = 4;

/** The same text, written in slices: a document of many lines takes a tenth of a second. */
export function* canonicalJsonInSlices(value: unknown, depth = slicedDepth): InSlices<string> {
  yield;
  if (depth === 0 || typeof value !== "object" || value === null) return canonicalJson(value);
  const written: string[] = [];
  if (Array.isArray(value)) {
    for (const inner of value) written.push(yield* canonicalJsonInSlices(inner, depth - 1));
    return `[${written.join(",")}]`;
  }
  for (const [key, inner] of membersOf(value)) {
    written.push(`${JSON.stringify(key)}:${yield* canonicalJsonInSlices(inner, depth - 1)}`);
  }
  return `{${written.join(",")}}`;
}

const membersOf = (value: object): readonly (readonly [string, unknown])[] =>
  Object.keys(value)
    .sort()
    .flatMap((key) => {
      const inner: unknown = (value as Readonly<Record<string, unknown>>)[key];
      return inner === undefined ? [] : [[key, inner] as const];
    });

/** SHA-256, hex, of the canonical text. */
export const checksumOf = (value: unknown): string => checksumOfText(canonicalJson(value));

/** The same of a text that `canonicalJson` wrote. */
export const checksumOfText = (text: string): string => createHash("sha256").update(text).digest("hex");
