import type { FileTags } from "../../../persistence/imports/import-data.js";

/** A file that is being read from where it is kept. */
export interface FoundFile {
  readonly name: string;
  readonly bytes: AsyncIterable<Uint8Array>;
  readonly tags: FileTags;
}

/** Where files are come by. Only processes that run imports reach out. @throws FileNotHad, also while the bytes are read */
export interface FileSources {
  /** Below the folder for imports; of a publisher below the folder of its slug there. */
  fromFolder(publisher: string | null, path: string): Promise<FoundFile>;
  /** null: it is as it was when it had these tags. */
  fromAddress(url: string, hosts: readonly string[], known: FileTags | null): Promise<FoundFile | null>;
}
