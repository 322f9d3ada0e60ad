import { createWriteStream } from "node:fs";
import { mkdtemp, rm, stat } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pipeline } from "node:stream/promises";
import { upTo } from "../byte-stream.js";

/**
 * Keeps what comes in in a file of its own while it is worked on: a zip file is read from its end. The file is gone afterwards.
 * @throws FileTooLarge
 */
export async function spoolFile<T>(
  bytes: AsyncIterable<Uint8Array>,
  limit: number,
  work: (path: string, bytes: number) => Promise<T>,
): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), "prepwright-archive-"));
  try {
    const path = join(folder, "archive.zip");
    await pipeline(upTo(limit, bytes), createWriteStream(path, { mode: 0o600 }));
    return await work(path, (await stat(path)).size);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
