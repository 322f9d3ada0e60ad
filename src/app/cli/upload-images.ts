import { UploadedImagesDocument, type UploadedImagesQuery } from "./generated/operations.js";
import type { RemoteService } from "./remote-service.js";
import type { Service } from "./service.js";
import type { LocalImage } from "./read-images.js";

/** Hands in the pictures that the service does not have by their names yet; counts them. */
export async function uploadImages(
  service: RemoteService,
  publisher: string,
  images: readonly LocalImage[],
): Promise<number> {
  const known = await knownFiles(
    service,
    publisher,
    images.map(({ file }) => file),
  );
  const fresh = images.filter(({ file, fileHash }) => !isSame(known.get(file), fileHash));
  for (const { file, bytes } of fresh) {
    const address = `v1/publishers/${encodeURIComponent(publisher)}/images?${new URLSearchParams({ file })}`;
    await service.upload(address, new Blob([bytes]));
  }
  return fresh.length;
}

/** A picture that the service has under a name. */
export type KnownImage = UploadedImagesQuery["uploadedImages"][number];

/** Whether a file of that SHA-256 is what the service has: as it was handed in, or as it is kept. */
export const isSame = (known: KnownImage | undefined, fileHash: string): boolean =>
  known !== undefined && (known.fileHash === fileHash || known.hash === fileHash);

/** The names that the service knows, each with the picture that it means now. */
export async function knownFiles(
  service: Service,
  publisher: string,
  files: readonly string[],
): Promise<ReadonlyMap<string, KnownImage>> {
  const known = new Map<string, KnownImage>();
  for (let from = 0; from < files.length; from += 300) {
    const asked = files.slice(from, from + 300);
    const { uploadedImages } = await service.ask(UploadedImagesDocument, { publisher, files: asked });
    for (const image of uploadedImages) known.set(image.file, image);
  }
  return known;
}
