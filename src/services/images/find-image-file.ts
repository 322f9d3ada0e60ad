import { imageFormats, type ImageFormat } from "../../domain/model/image.js";
import type { Deps } from "../deps.js";
import { isStorable } from "../storable-text.js";

export interface AskedImageFile {
  /** Slug. */
  readonly publisher: string;
  readonly hash: string;
  readonly width: number;
  readonly format: ImageFormat;
}

export interface ImageFileFound {
  /** SHA-256, hex, of the bytes. */
  readonly sha256: string;
  readonly size: number;
  /** Both ends counted in. */
  bytes(from: number, to: number): Promise<Uint8Array>;
}

/** A picture as readers get it. NOTHING: it never was here. REMOVED: its publisher took it away. */
export async function findImageFile(
  { data }: Deps,
  { publisher, ...name }: AskedImageFile,
): Promise<ImageFileFound | "NOTHING" | "REMOVED"> {
  if (!isStorable(publisher) || name.width <= 0 || !imageFormats.includes(name.format)) return "NOTHING";
  const file = await data.images.file(publisher, name);
  if (file !== null) return { ...file, bytes: (from, to) => data.images.bytes(publisher, name, from, to) };
  const image = await data.images.byHash(publisher, name.hash);
  return image !== null && image.removedAt !== null ? "REMOVED" : "NOTHING";
}
