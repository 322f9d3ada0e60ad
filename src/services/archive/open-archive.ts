import { openPromise, type Entry, type ZipFile } from "yauzl";
import type { ArchiveFault } from "../../domain/archive-fault.js";
import { sha256 } from "./archive-entry.js";
import { archiveVersion, fileNames, isKnownName, manifestSchema } from "./archive-format.js";
import type { z } from "zod";
import { collect } from "../byte-stream.js";
import { isStorable } from "../storable-text.js";

/** The largest archive that is taken, in bytes, and what may come out of it. */
export const largestArchive = 1024 * 1024 * 1024;
const mostEntries = 50_000;
const largestFile = 32 * 1024 * 1024;
/** Of text as this program writes it, deflate leaves more than a hundredth; a bomb leaves less. */
const mostGrowth = 200;
const smallestBound = 1024 * 1024;

/** Something about an archive that keeps it from being imported. */
export class BadArchive extends Error {
  override readonly name = "BadArchive";

  constructor(
    readonly fault: ArchiveFault,
    /** Name of the file in the archive; null: the archive itself. */
    readonly file: string | null,
  ) {
    super(`bad archive: ${fault.kind}`);
  }
}

type Listed = z.output<typeof manifestSchema>["files"][number];

/** An archive whose names are known and whose list fits what is in it. */
export interface OpenArchive {
  readonly publisher: string;
  readonly leftOut: readonly string[];
  readonly names: ReadonlySet<string>;
  /** The whole file, which is what the list says. @throws BadArchive */
  read(name: string): Promise<Buffer>;
}

/** @throws BadArchive before anything is unpacked, where it is not what an export writes */
export async function withArchive<T>(
  path: string,
  bytes: number,
  work: (archive: OpenArchive) => Promise<T>,
): Promise<T> {
  const zip = await openPromise(path, { lazyEntries: true, autoClose: false, strictFileNames: true }).catch(
    (error: unknown) => notAZip(error),
  );
  try {
    return await work(await readList(zip, bytes));
  } finally {
    zip.close();
  }
}

function notAZip(error: unknown, file: string | null = null): never {
  throw new BadArchive({ kind: "NOT_A_ZIP", detail: error instanceof Error ? error.message : String(error) }, file);
}

async function readList(zip: ZipFile, bytes: number): Promise<OpenArchive> {
  if (zip.entryCount > mostEntries) {
    throw new BadArchive({ kind: "TOO_MUCH", of: "files", size: zip.entryCount, limit: mostEntries }, null);
  }
  const entries = new Map<string, Entry>();
  let total = 0;
  try {
    for await (const entry of zip.eachEntry()) {
      checkEntry(entry, entries);
      entries.set(entry.fileName, entry);
      total += entry.uncompressedSize;
    }
  } catch (error) {
    if (error instanceof BadArchive) throw error;
    notAZip(error);
  }
  const limit = Math.max(smallestBound, bytes * mostGrowth);
  if (total > limit) throw new BadArchive({ kind: "TOO_MUCH", of: "unpacked bytes", size: total, limit }, null);

  const manifest = await readManifest(zip, entries.get(fileNames.manifest));
  const listed = new Map(manifest.files.map((file) => [file.name, file]));
  if (listed.size < manifest.files.length) throw new BadArchive({ kind: "TWICE" }, fileNames.manifest);
  for (const name of listed.keys()) if (!entries.has(name)) throw new BadArchive({ kind: "MISSING" }, name);
  for (const name of entries.keys()) {
    if (name !== fileNames.manifest && !listed.has(name)) throw new BadArchive({ kind: "NOT_LISTED" }, name);
  }
  return {
    publisher: manifest.publisher,
    leftOut: manifest.leftOut,
    names: new Set(listed.keys()),
    read: async (name) => {
      const entry = entries.get(name);
      const file = listed.get(name);
      if (entry === undefined || file === undefined) throw new BadArchive({ kind: "MISSING" }, name);
      return checked(file, await unpack(zip, entry));
    },
  };
}

const kindOfFile = 0o170000;
const ordinary = 0o100000;

function checkEntry(entry: Entry, before: ReadonlyMap<string, Entry>): void {
  const { fileName: name, uncompressedSize: size } = entry;
  const shown = name.slice(0, 200);
  if (!isKnownName(name)) throw new BadArchive({ kind: "NAME_NOT_KNOWN" }, shown);
  const mode = (entry.externalFileAttributes >>> 16) & kindOfFile;
  // Links, devices. Zip files of systems without modes say nothing.
  if (mode !== 0 && mode !== ordinary) throw new BadArchive({ kind: "NOT_A_FILE" }, shown);
  if (entry.isEncrypted()) throw new BadArchive({ kind: "ENCRYPTED" }, shown);
  if (before.has(name)) throw new BadArchive({ kind: "TWICE" }, shown);
  if (size > largestFile) throw new BadArchive({ kind: "TOO_MUCH", of: "bytes", size, limit: largestFile }, shown);
}

async function readManifest(zip: ZipFile, entry: Entry | undefined): Promise<z.output<typeof manifestSchema>> {
  if (entry === undefined) throw new BadArchive({ kind: "NO_MANIFEST" }, null);
  const value = parseFile(fileNames.manifest, await unpack(zip, entry));
  const version: unknown = typeof value === "object" && value !== null && "version" in value ? value.version : null;
  if (typeof version === "number" && version > archiveVersion) {
    throw new BadArchive({ kind: "OTHER_VERSION", version, known: archiveVersion }, fileNames.manifest);
  }
  return shaped(fileNames.manifest, manifestSchema, value);
}

/** yauzl ends the stream where more comes out than the directory says, so that memory is bounded. */
async function unpack(zip: ZipFile, entry: Entry): Promise<Buffer> {
  try {
    return await collect(await zip.openReadStreamPromise(entry));
  } catch (error) {
    return notAZip(error, entry.fileName);
  }
}

function checked(file: Listed, bytes: Buffer): Buffer {
  if (bytes.length !== file.bytes || sha256(bytes) !== file.sha256) {
    throw new BadArchive({ kind: "ALTERED" }, file.name);
  }
  return bytes;
}

/** @throws BadArchive */
export function parseFile(name: string, bytes: Buffer): unknown {
  const text = bytes.toString("utf8");
  let isStored = true;
  const look = (key: string, value: unknown): unknown => {
    isStored &&= isStorable(key) && (typeof value !== "string" || isStorable(value));
    return value;
  };
  try {
    // Looking at every text takes its time, and few files have such an escape at all.
    const value: unknown = /\\u(?:0000|d[89a-f])/i.test(text) ? JSON.parse(text, look) : JSON.parse(text);
    if (isStored) return value;
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    throw new BadArchive({ kind: "CONTENT", detail: `it is not JSON (${error.message})` }, name);
  }
  throw new BadArchive({ kind: "CONTENT", detail: "a text in it has a NUL or half a character" }, name);
}

/** The value, of that shape. @throws BadArchive that names the first place that is not */
export function shaped<Schema extends z.ZodType>(name: string, schema: Schema, value: unknown): z.output<Schema> {
  const read = schema.safeParse(value);
  if (read.success) return read.data;
  const [issue] = read.error.issues;
  const place = issue === undefined || issue.path.length === 0 ? "" : ` at ${issue.path.map(String).join(".")}`;
  throw new BadArchive({ kind: "CONTENT", detail: `${issue?.message ?? "it has another shape"}${place}` }, name);
}
