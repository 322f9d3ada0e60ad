import { createHash } from "node:crypto";
import { lstat, mkdir, readFile, realpath, writeFile } from "node:fs/promises";
import { dirname, join, sep } from "node:path";
import { isImageFile } from "../../domain/model/image.js";
import { readDocuments } from "../../imports/documents/read-documents.js";
import { CommandFailed, exitCodes } from "./outcome.js";
import { imageUsesIn } from "./read-images.js";
import type { RemoteService } from "./remote-service.js";
import { isSame, knownFiles, type KnownImage } from "./upload-images.js";

/** SAME: the file is this picture already. OTHER: it is something else. */
type FileState = "NONE" | "SAME" | "OTHER";

interface PicturesToPull {
  readonly images: readonly { readonly image: KnownImage; readonly path: string; readonly state: FileState }[];
  /** Named by documents and never handed in. */
  readonly missing: readonly string[];
}

/** The pictures that documents name, and what lies in the folder under their names. Nothing is fetched. */
export async function findPictures(
  service: RemoteService,
  publisher: string,
  texts: readonly string[],
  folder: string,
): Promise<PicturesToPull> {
  const uses = texts.flatMap((text) => readDocuments(text, "draft").documents.map(({ document }) => document));
  const files = [...new Set(uses.flatMap((document) => imageUsesIn(document).map(({ use }) => use.file)))];
  // A name from a service that is none of ours could lead out of the folder.
  const known =
    files.length === 0
      ? new Map<string, KnownImage>()
      : await knownFiles(service, publisher, files.filter(isImageFile));
  const images = await Promise.all(
    [...known.values()].map(async (image) => {
      if (!files.includes(image.file)) throw notOurs("a picture that nobody asked for");
      const path = join(folder, image.file);
      return { image, path, state: await stateOf(folder, image) };
    }),
  );
  return { images, missing: files.filter((file) => !known.has(file)) };
}

async function stateOf(folder: string, image: KnownImage): Promise<FileState> {
  try {
    const place = await placeIn(folder, image.file, false);
    if (place === null) return "NONE";
    const fileHash = createHash("sha256")
      .update(await readFile(place))
      .digest("hex");
    return isSame(image, fileHash) ? "SAME" : "OTHER";
  } catch (error) {
    if (isCode(error, "ENOENT")) return "NONE";
    throw error;
  }
}

/** Fetches a picture as it is kept, looks whether it is the one, and writes it below the folder. */
export async function pullPicture(
  service: RemoteService,
  publisher: string,
  folder: string,
  { file, hash, original }: KnownImage,
): Promise<void> {
  const expected = `/images/${encodeURIComponent(publisher)}/${hash}/original.`;
  if (!original.startsWith(expected)) throw notOurs("an address of a picture that is none");
  const pieces: Uint8Array[] = [];
  let size = 0;
  for await (const piece of await service.download(original.slice(1))) {
    size += piece.length;
    if (size > mostBytes) throw notOurs(`a picture of more than ${mostBytes} bytes`);
    pieces.push(piece);
  }
  const bytes = Buffer.concat(pieces);
  if (createHash("sha256").update(bytes).digest("hex") !== hash) throw notOurs(`another picture than ${file}`);
  const place = await placeIn(folder, file, true);
  if (place === null) throw new Error(`${file} has no folder`);
  await writeFile(place, bytes);
}

/** What 2,560 x 2,560 pixels take at most, and something. */
const mostBytes = 32 * 1024 * 1024;

/**
 * Where a file stands below a folder, never through a link that leads out of it. null: there is no such folder yet; `make`: it is made.
 * @throws CommandFailed for a way that leads out
 */
async function placeIn(folder: string, file: string, make: boolean): Promise<string | null> {
  const root = await realpath(folder);
  let at = root;
  for (const part of dirname(file) === "." ? [] : dirname(file).split("/")) {
    const next = join(at, part);
    if (make) await mkdir(next).catch((error: unknown) => (isCode(error, "EEXIST") ? undefined : rethrow(error)));
    at = await realpath(next);
    if (!at.startsWith(root.endsWith(sep) ? root : root + sep)) throw leadsOut(folder, file);
  }
  const place = join(at, file.slice(file.lastIndexOf("/") + 1));
  const found = await lstat(place).catch((error: unknown) => (isCode(error, "ENOENT") ? null : rethrow(error)));
  if (found === null) return make ? place : null;
  if (!found.isFile()) throw leadsOut(folder, file);
  return place;
}

const leadsOut = (folder: string, file: string): CommandFailed =>
  new CommandFailed(
    exitCodes.conflict,
    "OUTSIDE_FOLDER",
    `${join(folder, file)} is a link or a folder, not a file of its own. Remove it, or pull to another folder with --to.`,
  );

const notOurs = (what: string): CommandFailed =>
  new CommandFailed(exitCodes.unreachable, "NOT_A_SERVICE", `The service sent ${what}. Is --server right?`);

const isCode = (error: unknown, code: string): boolean =>
  error instanceof Error && "code" in error && error.code === code;

function rethrow(error: unknown): never {
  throw error;
}
