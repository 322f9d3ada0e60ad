import { UploadedImagesDocument } from "./generated/operations.js";
import type { RemoteService } from "./remote-service.js";
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
  const fresh = images.filter(({ file, fileHash }) => known.get(file) !== fileHash);
  for (const { file, bytes } of fresh) {
    const address = `v1/publishers/${encodeURIComponent(publisher)}/images?${new URLSearchParams({ file })}`;
    await service.upload(address, new Blob([bytes]));
  }
  return fresh.length;
}

/** The names that the service knows, each with the hash of the file that was handed in under it last. */
export async function knownFiles(
  service: RemoteService,
  publisher: string,
  files: readonly string[],
): Promise<ReadonlyMap<string, string>> {
  const known = new Map<string, string>();
  for (let from = 0; from < files.length; from += 300) {
    const asked = files.slice(from, from + 300);
    const { uploadedImages } = await service.ask(UploadedImagesDocument, { publisher, files: asked });
    for (const { file, fileHash } of uploadedImages) known.set(file, fileHash);
  }
  return known;
}
