import { buffer } from "node:stream/consumers";
import { fromBufferPromise } from "yauzl";
import { ZipFile, type Options } from "yazl";
import { sha256 } from "../../../src/services/archive/archive-entry.js";

export type Files = Map<string, Buffer>;
export type Json = Record<string, unknown>;

/** What is in an archive. */
export async function unpacked(zip: Buffer): Promise<Files> {
  const files: Files = new Map();
  const read = await fromBufferPromise(zip, { lazyEntries: true });
  for await (const entry of read.eachEntry()) {
    files.set(entry.fileName, await buffer(await read.openReadStreamPromise(entry)));
  }
  return files;
}

export async function zipOf(files: Iterable<readonly [string, Buffer, Partial<Options>?]>): Promise<Buffer> {
  const zip = new ZipFile();
  for (const [name, bytes, options] of files) zip.addBuffer(bytes, name, options ?? {});
  zip.end();
  return buffer(zip.outputStream);
}

export const json = (value: unknown): Buffer => Buffer.from(JSON.stringify(value));
export const parsed = (files: Files, name: string): Json => JSON.parse(String(files.get(name))) as Json;

/** With a list that fits what is in it, so that only what was changed is wrong. */
export function relisted(files: Files): Files {
  const others = [...files].filter(([name]) => name !== "manifest.json");
  const list = others.map(([name, bytes]) => ({ name, bytes: bytes.length, sha256: sha256(bytes) }));
  return new Map([...others, ["manifest.json", json({ ...parsed(files, "manifest.json"), files: list })]]);
}
