import { largestFile } from "../../../imports/recipes/read-recipes.js";

/** A file in one piece; of one that is too large only as much as tells the reader so. */
export async function readWholeFile(pieces: AsyncIterable<Uint8Array>): Promise<Uint8Array> {
  const held: Uint8Array[] = [];
  let size = 0;
  for await (const piece of pieces) {
    held.push(piece);
    size += piece.length;
    if (size > largestFile) break;
  }
  return Buffer.concat(held);
}
