import { Readable } from "node:stream";
import { ZipFile } from "yazl";
import type { ArchiveEntry } from "./archive-entry.js";

/** The same content is the same file, so every entry has the first date that a zip file can say. */
const firstDate = new Date(1980, 0, 1);
const ordinaryFile = 0o100644;

/** Whether anybody still reads, and how to end the wait for an entry that nobody will read. */
interface Feeding {
  stopped: boolean;
  release(): void;
}

/**
 * A zip file of these entries as it is made. One entry at a time is in memory; the next is asked for once it was read.
 * A failure of the entries ends the stream before the directory of the zip file, so that nobody takes it for a whole one.
 */
export async function* packZip(entries: AsyncIterable<ArchiveEntry>): AsyncGenerator<Uint8Array> {
  const zip = new ZipFile();
  const output = zip.outputStream as Readable;
  const state: Feeding = { stopped: false, release: () => undefined };
  const feeding = feed(zip, entries, state).catch((error: unknown) => {
    output.destroy(error instanceof Error ? error : new Error(String(error)));
  });
  try {
    for await (const piece of output) yield piece as Uint8Array;
  } finally {
    state.stopped = true;
    state.release();
    await feeding;
  }
}

async function feed(zip: ZipFile, entries: AsyncIterable<ArchiveEntry>, state: Feeding): Promise<void> {
  for await (const { name, bytes, packed } of entries) {
    if (state.stopped) return;
    const same = { mtime: firstDate, forceDosTimestamp: true, mode: ordinaryFile };
    const options = { ...same, size: bytes.length, compress: packed !== true };
    await new Promise<void>((read) => {
      state.release = read;
      zip.addReadStreamLazy(name, options, (give) => {
        const source = Readable.from([bytes], { objectMode: false });
        source.once("close", read);
        give(null, source);
      });
    });
  }
  zip.end();
}
