import type { ImageFormat, StoredImage } from "../../domain/model/image.js";

/** Formats that pictures are kept in as they came. */
type KeptFormat = ImageFormat | "PNG";

/** A picture of a publisher, without its bytes. */
export interface KeptImage extends StoredImage {
  readonly format: KeptFormat;
  /** SHA-256, hex, of the file that was handed in. */
  readonly fileHash: string;
  readonly createdAt: Date;
  /** A token's id or the name of a program. */
  readonly createdBy: string;
  /** null: it can be had. */
  readonly removedAt: Date | null;
}

/** One file of a picture; `width` 0: the picture as it is kept, which is not handed out to readers. */
export interface ImageFileName {
  readonly hash: string;
  readonly width: number;
  readonly format: KeptFormat;
}

interface FoundImageFile {
  /** SHA-256, hex, of its bytes. */
  readonly sha256: string;
  readonly size: number;
}

export interface NewImage extends Omit<KeptImage, "removedAt"> {
  readonly files: readonly { readonly width: number; readonly format: KeptFormat; readonly bytes: Uint8Array }[];
}

/** Pictures of publishers. Every function is about one publisher, by its slug; nobody's pictures are another's. */
export interface ImageData {
  /** The one that such a file made, removed ones too. */
  byFileHash(publisher: string, fileHash: string): Promise<KeptImage | null>;
  byHash(publisher: string, hash: string): Promise<KeptImage | null>;
  /** What documents mean by these names now; null: nothing, or it was removed. */
  byNames(publisher: string, names: readonly string[]): Promise<readonly (KeptImage | null)[]>;
  /** How many it has, without removed ones. */
  count(publisher: string): Promise<number>;
  /** Inside a transaction. Nothing is done where there is one of that hash. @throws UnknownPublisher */
  add(publisher: string, image: NewImage): Promise<void>;
  /** From now on documents mean this picture by the name, and so does what the publisher says of itself. */
  name(publisher: string, name: string, image: StoredImage, at: Date): Promise<void>;
  /** Inside a transaction: its bytes and names go. false: there is none, or it was removed before. */
  remove(publisher: string, hash: string, at: Date): Promise<boolean>;
  /** Hashes of those that were removed. */
  removed(publisher: string): Promise<readonly string[]>;
  file(publisher: string, name: ImageFileName): Promise<FoundImageFile | null>;
  /** Bytes of a file, both ends counted in. */
  bytes(publisher: string, name: ImageFileName, from: number, to: number): Promise<Uint8Array>;
}
