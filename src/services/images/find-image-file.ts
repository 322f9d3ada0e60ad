import { imageFormats, type ImageFormat } from "../../domain/model/image.js";
import type { ImageFileName, KeptImage } from "../../persistence/images/image-data.js";
import { requireScope, type Actor } from "../access/actor.js";
import type { Data, Deps } from "../deps.js";
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
  if (name.width <= 0 || !imageFormats.includes(name.format)) return "NOTHING";
  return find(data, publisher, name);
}

interface AskedOriginal {
  /** Slug. */
  readonly publisher: string;
  readonly hash: string;
  readonly format: KeptImage["format"];
}

/** A picture as it is kept, for its publisher: to be handed in again, or elsewhere. @throws NotAllowed */
export async function findOriginalImage(
  { data }: Deps,
  actor: Actor,
  { publisher, ...name }: AskedOriginal,
): Promise<ImageFileFound | "NOTHING" | "REMOVED"> {
  requireScope(actor, "READ_DRAFTS", publisher);
  return find(data, publisher, { ...name, width: 0 });
}

async function find(
  data: Data,
  publisher: string,
  name: ImageFileName,
): Promise<ImageFileFound | "NOTHING" | "REMOVED"> {
  if (!isStorable(publisher)) return "NOTHING";
  const file = await data.images.file(publisher, name);
  if (file !== null) return { ...file, bytes: (from, to) => data.images.bytes(publisher, name, from, to) };
  const image = await data.images.byHash(publisher, name.hash);
  return image !== null && image.removedAt !== null ? "REMOVED" : "NOTHING";
}
