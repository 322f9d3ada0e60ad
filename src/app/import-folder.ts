import { constants } from "node:fs";
import { lstat, open } from "node:fs/promises";
import { basename, join } from "node:path";
import { FileNotHad, type FoundFile } from "../services/collect-file.js";

/**
 * A file below the folder for imports. No step of the way may be a link, so that nothing outside of the folder can be read by a
 * feed; of a publisher the way begins at the folder of its slug.
 */
export async function fileInFolder(root: string | null, publisher: string | null, path: string): Promise<FoundFile> {
  if (root === null) throw new FileNotHad("no folder for imports is set: PREPWRIGHT_IMPORT_DIR");
  const steps = [...(publisher === null ? [] : [publisher]), ...path.split("/")].filter(
    (step) => step !== "" && step !== ".",
  );
  if (steps.length === 0 || steps.some((step) => step === ".." || /[\\\0]/.test(step))) {
    throw new FileNotHad("the path leads out of the folder for imports");
  }
  let way = root;
  for (const [at, step] of steps.entries()) {
    way = join(way, step);
    const found = await lstat(way).catch((error: unknown) => {
      throw notThere(error, steps);
    });
    const isLast = at === steps.length - 1;
    if (found.isSymbolicLink()) throw new FileNotHad("the path leads over a link, which is not followed");
    if (isLast ? !found.isFile() : !found.isDirectory()) throw new FileNotHad(`there is no file ${steps.join("/")}`);
  }
  // Also not followed if somebody puts a link there meanwhile.
  const handle = await open(way, constants.O_RDONLY | constants.O_NOFOLLOW).catch((error: unknown) => {
    throw notThere(error, steps);
  });
  return { name: basename(way), bytes: handle.createReadStream(), tags: { etag: null, lastModified: null } };
}

/** The file is not there yet, or whatever the folder lies on does not answer. */
const passingCodes: ReadonlySet<string> = new Set(["ENOENT", "EBUSY", "EIO", "ESTALE", "EMFILE", "ENFILE"]);

const notThere = (error: unknown, steps: readonly string[]): FileNotHad => {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  const passing = passingCodes.has(code) ? { retryAfter: null } : null;
  return new FileNotHad(`the file ${steps.join("/")} cannot be read${code === "" ? "" : ` (${code})`}`, passing);
};
