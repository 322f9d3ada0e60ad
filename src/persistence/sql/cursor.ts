import type { z } from "zod";
import { BadCursor } from "../errors.js";

/** Opaque: base64url of the keys of one row. */
export const encodeCursor = (keys: readonly string[]): string =>
  Buffer.from(JSON.stringify(keys)).toString("base64url");

/** @throws BadCursor unless `encodeCursor` made it from keys of that shape. */
export function decodeCursor<K extends readonly string[]>(cursor: string, shape: z.ZodType<K>): K {
  const parsed = shape.safeParse(parse(Buffer.from(cursor, "base64url").toString("utf8")));
  // Decoding base64 forgives much, so only text that encodes to itself is one of ours.
  if (!parsed.success || encodeCursor(parsed.data) !== cursor) throw new BadCursor();
  return parsed.data;
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
}
