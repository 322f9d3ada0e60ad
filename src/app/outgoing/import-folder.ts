import { constants } from "node:fs";
import { lstat, open, realpath, type FileHandle } from "node:fs/promises";
import { join } from "node:path";
import { FileNotHad } from "../../services/imports/files/collect-file.js";
import type { FoundFile } from "../../services/imports/files/file-sources.js";

/**
 * A file below the folder for imports. No step of the way may be a link, so that nothing outside of the folder can be read by a
 * feed; of a publisher the way begins at the folder of its slug. What is looked at is what is read, whoever changes the folder meanwhile.
 */
export async function fileInFolder(root: string | null, publisher: string | null, path: string): Promise<FoundFile> {
  if (root === null) throw new FileNotHad("PREPWRIGHT_IMPORT_DIR is not set, so no folder can be read");
  const steps = [...(publisher === null ? [] : [publisher]), ...path.split("/")].filter(
    (step) => step !== "" && step !== ".",
  );
  if (steps.length === 0 || steps.some((step) => step === ".." || /[\\\0]/.test(step))) {
    throw new FileNotHad("the path leads out of PREPWRIGHT_IMPORT_DIR");
  }
  const handle = await openBelow(root, steps).catch((error: unknown) => {
    throw error instanceof FileNotHad ? error : notThere(error, steps);
  });
  try {
    const { nlink } = await handle.stat();
    // Another name of it may be one that this folder's keeper could not read; who may write here could have linked it.
    if (nlink > 1) throw new FileNotHad(`the file ${steps.join("/")} has several hard links: put a copy there`);
  } catch (error) {
    await handle.close();
    throw error;
  }
  return { name: steps.at(-1) ?? "", bytes: handle.createReadStream(), tags: { etag: null, lastModified: null } };
}

const { O_DIRECTORY, O_NOFOLLOW, O_NONBLOCK, O_RDONLY } = constants;

/** Step by step from one open folder to the next: each step is taken from the folder that was looked at, not from its name. */
async function openBelow(root: string, steps: readonly string[]): Promise<FileHandle> {
  // The operator's own folder may be a link.
  let here = await open(await realpath(root), O_RDONLY | O_DIRECTORY);
  let way = root;
  for (const [at, step] of steps.entries()) {
    const isLast = at === steps.length - 1;
    way = join(way, step);
    const from = here;
    try {
      here = await openStep(from, step, way, isLast, steps);
    } finally {
      await from.close();
    }
  }
  return here;
}

/**
 * Node has no `openat`. On Linux the name of an open folder below /proc is that folder, whatever became of its path; elsewhere the path is looked at again
 * once it is open, and must then lead to what was opened.
 */
async function openStep(
  from: FileHandle,
  step: string,
  way: string,
  isLast: boolean,
  steps: readonly string[],
): Promise<FileHandle> {
  const path = process.platform === "linux" ? `/proc/self/fd/${from.fd}/${step}` : way;
  const wrong = (): FileNotHad => new FileNotHad(`there is no file ${steps.join("/")}`);
  const found = await lstat(path);
  if (found.isSymbolicLink()) throw new FileNotHad("the path contains a symbolic link, which is not followed");
  if (isLast ? !found.isFile() : !found.isDirectory()) throw wrong();
  // A pipe that somebody puts there meanwhile must not keep the import waiting.
  const handle = await open(path, O_RDONLY | O_NOFOLLOW | O_NONBLOCK | (isLast ? 0 : O_DIRECTORY));
  try {
    const opened = await handle.stat();
    if (isLast ? !opened.isFile() : !opened.isDirectory()) throw wrong();
    const isSame = opened.dev === found.dev && opened.ino === found.ino;
    // A file that was replaced between the two looks is as good as the one before: it was opened as no link, from the right folder.
    if (path === way && (!isSame || (await realpath(way)) !== join(await realpath(join(way, "..")), step)))
      throw wrong();
    return handle;
  } catch (error) {
    await handle.close();
    throw error;
  }
}

/** The file is not there yet, or whatever the folder lies on does not answer. */
const passingCodes: ReadonlySet<string> = new Set(["ENOENT", "EBUSY", "EIO", "ESTALE", "EMFILE", "ENFILE"]);

const notThere = (error: unknown, steps: readonly string[]): FileNotHad => {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  const passing = passingCodes.has(code) ? { retryAfter: null } : null;
  return new FileNotHad(`the file ${steps.join("/")} cannot be read${code === "" ? "" : ` (${code})`}`, passing);
};
