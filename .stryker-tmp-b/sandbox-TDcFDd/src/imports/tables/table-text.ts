// @ts-nocheck
import { TextDecoder } from "node:util";

/** A replacement character: bytes that were no text in the encoding of the file. */
export const unreadable = "\ufffd";

/**
 * Bytes to text, piece by piece. UTF-8, or UTF-16 where the file begins with its mark. Bytes that are neither become
 * `unreadable`, so that only their own row is refused.
 */
export async function* tableText(chunks: AsyncIterable<Uint8Array>): AsyncGenerator<string> {
  let decoder: TextDecoder | null = null;
  let held: Uint8Array = new Uint8Array();
  for await (const chunk of chunks) {
    if (decoder === null) {
      held = held.length === 0 ? chunk : Buffer.concat([held, chunk]);
      if (held.length < 3) continue;
      decoder = new TextDecoder(encodingOf(held));
      yield decoder.decode(held, { stream: true });
    } else yield decoder.decode(chunk, { stream: true });
  }
  decoder ??= new TextDecoder(encodingOf(held));
  yield decoder.decode(held.length < 3 ? held : undefined);
}

const encodingOf = (bytes: Uint8Array): string =>
  bytes[0] === 0xff && bytes[1] === 0xfe ? "utf-16le" : bytes[0] === 0xfe && bytes[1] === 0xff ? "utf-16be" : "utf-8";
