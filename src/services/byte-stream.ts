/** What came in grew beyond what is taken; nothing of it was kept. */
export class FileTooLarge extends Error {
  override readonly name = "FileTooLarge";

  constructor(readonly limit: number) {
    super(`more than ${limit} bytes`);
  }
}

/** Nobody knows the length of a stream before its end, so it is counted. @throws FileTooLarge */
export async function* upTo(limit: number, bytes: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  let size = 0;
  for await (const piece of bytes) {
    size += piece.length;
    if (size > limit) throw new FileTooLarge(limit);
    yield piece;
  }
}

/** All of it in one piece. */
export async function collect(bytes: AsyncIterable<Uint8Array>): Promise<Buffer> {
  const pieces: Uint8Array[] = [];
  for await (const piece of bytes) pieces.push(piece);
  return Buffer.concat(pieces);
}
