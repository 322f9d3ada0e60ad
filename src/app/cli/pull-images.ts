import { hash as hashOf } from "node:crypto";
import { isImageFile } from "../../domain/model/image.js";
import { readDocuments } from "../../imports/documents/read-documents.js";
import { fileKind } from "../../imports/images/image-signature.js";
import { collect, FileTooLarge, upTo } from "../../services/byte-stream.js";
import { wrongAnswer } from "./outcome.js";
import { stateBelow, type FileState } from "./pulled-files.js";
import { imageUsesIn } from "./read-images.js";
import type { RemoteService } from "./remote-service.js";
import { isSame, knownFiles, type KnownImage } from "./upload-images.js";

/** A picture and what lies in the folder under its name. */
export interface PictureToPull {
  readonly image: KnownImage;
  readonly state: FileState;
}

interface PicturesToPull {
  readonly images: readonly PictureToPull[];
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
      if (!files.includes(image.file)) throw wrongAnswer("a picture that nobody asked for");
      return { image, state: await stateBelow(folder, image.file, (bytes) => isSame(image, hashOf("sha256", bytes))) };
    }),
  );
  return { images, missing: files.filter((file) => !known.has(file)) };
}

/** Fetches a picture as it is kept, and looks whether it is the one, and a picture. @throws CommandFailed */
export async function fetchPicture(
  service: RemoteService,
  publisher: string,
  { file, hash, original }: KnownImage,
): Promise<Uint8Array> {
  const expected = `/images/${encodeURIComponent(publisher)}/${hash}/original.`;
  if (!original.startsWith(expected)) throw wrongAnswer("an address of a picture that is none");
  const bytes = await collect(upTo(mostBytes, await service.download(original.slice(1)))).catch((error: unknown) => {
    throw error instanceof FileTooLarge ? wrongAnswer(`a picture of more than ${mostBytes} bytes`) : error;
  });
  if (hashOf("sha256", bytes) !== hash) throw wrongAnswer(`another picture than ${file}`);
  if (typeof fileKind(bytes) !== "string") throw wrongAnswer(`something that is no picture as ${file}`);
  return bytes;
}

/** What 2,560 x 2,560 pixels take at most, and something. */
const mostBytes = 32 * 1024 * 1024;
