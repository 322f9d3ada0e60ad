import { hash } from "node:crypto";

/** One file of an archive. */
export interface ArchiveEntry {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** Compressed already, as pictures are. */
  readonly packed?: true;
}

export const sha256 = (bytes: Uint8Array): string => hash("sha256", bytes);
