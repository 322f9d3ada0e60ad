import { chmodSync, lstatSync, mkdirSync, readdirSync, realpathSync, type Stats } from "node:fs";
import { join } from "node:path";
import { FolderNotPrivate } from "../errors.js";

/** Nobody but the owner: the secrets of webhooks and the hashes of tokens are in it. */
const folderMode = 0o700;
const fileMode = 0o600;

/**
 * Makes a folder that only its owner may enter, whatever the umask, or tightens one that is there. The folder itself may be a link, as where
 * data lie on another disk: then what it leads to is tightened.
 * @throws FolderNotPrivate
 */
export function makePrivateFolder(folder: string): void {
  // A umask that takes from the owner itself would keep Postgres out of its own files.
  const umask = process.umask();
  if ((umask & 0o700) !== 0) process.umask(umask & 0o077);
  mkdirSync(folder, { recursive: true, mode: folderMode });
  tighten(realpathSync(folder), true);
}

/**
 * Tightens all that is below a folder: other programs may have copied it there. Links below it are not followed, since what they lead to is
 * somebody else's to tighten.
 * @throws FolderNotPrivate
 */
export function tightenFolder(folder: string): void {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isSymbolicLink()) {
      throw new FolderNotPrivate(path, "is a link. Put what it leads to in its place");
    }
    tighten(path, entry.isDirectory());
    if (entry.isDirectory()) tightenFolder(path);
  }
}

function tighten(path: string, isFolder: boolean): void {
  // Where modes mean nothing there is nothing to tighten.
  if (process.platform === "win32") return;
  const wanted = isFolder ? folderMode : fileMode;
  const found = lookedAt(path);
  if (found === null || (found.mode & 0o777) === wanted) return;
  try {
    chmodSync(path, wanted);
  } catch (error) {
    if (!isOpen(found)) return;
    const why = error instanceof Error && "code" in error ? String(error.code) : "unknown";
    throw new FolderNotPrivate(
      path,
      `belongs to user ${found.uid} and cannot be tightened (${why}). ${remedy(isFolder)}`,
    );
  }
  // Some file systems take a mode and forget it.
  const after = lookedAt(path);
  if (after !== null && isOpen(after)) {
    throw new FolderNotPrivate(path, `stays open on its file system. Name a DATA_DIR on another one`);
  }
}

const remedy = (isFolder: boolean): string =>
  isFolder
    ? "Make it this user's own with mode 0700, or name a folder below it in DATA_DIR"
    : "Make it this user's own with mode 0600";

/** null: it went meanwhile. */
function lookedAt(path: string): Stats | null {
  return lstatSync(path, { throwIfNoEntry: false }) ?? null;
}

const isOpen = ({ mode }: Stats): boolean => (mode & 0o077) !== 0;
