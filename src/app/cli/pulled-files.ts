import { lstat, mkdir, readFile, realpath, writeFile } from "node:fs/promises";
import { dirname, join, sep } from "node:path";
import { hasCode } from "../../persistence/database/has-code.js";
import { CommandFailed, exitCodes } from "./outcome.js";

/** SAME: the file says this already. OTHER: it says something else. */
export type FileState = "NONE" | "SAME" | "OTHER";

/** What lies under a name below a folder, which need not be there. @throws CommandFailed for a way that leads out of the folder */
export async function stateBelow(folder: string, file: string, isSame: (bytes: Buffer) => boolean): Promise<FileState> {
  try {
    const place = await placeIn(folder, file, false);
    if (place === null) return "NONE";
    return isSame(await readFile(place)) ? "SAME" : "OTHER";
  } catch (error) {
    if (hasCode(error, "ENOENT")) return "NONE";
    throw error;
  }
}

/** Writes a file below a folder. One that was not there is never written over. @throws CommandFailed */
export async function writeBelow(
  folder: string,
  file: string,
  before: FileState,
  content: string | Uint8Array,
): Promise<void> {
  const path = join(folder, file);
  try {
    const place = await placeIn(folder, file, true);
    if (place === null) throw new Error(`${file} has no folder`);
    await writeFile(place, content, { flag: before === "NONE" ? "wx" : "w" });
  } catch (error) {
    if (hasCode(error, "EEXIST"))
      throw new CommandFailed(
        exitCodes.conflict,
        "FILE_DIFFERS",
        `${path} was written by another file of this pull, or by somebody else. Pull to another folder with --to.`,
      );
    throw cannotWrite(path, error);
  }
}

/** Makes the folder of a command unless it is there. @throws CommandFailed */
export async function makeFolder(folder: string): Promise<void> {
  try {
    await mkdir(folder, { recursive: true });
  } catch (error) {
    if (!hasCode(error, "EEXIST", "ENOTDIR")) throw cannotWrite(folder, error);
    throw new CommandFailed(exitCodes.usage, "CANNOT_WRITE", `${folder} is or leads through a file. Name a folder.`);
  }
}

/** A fault of the disk or the folder in words; anything else as it is. */
export const cannotWrite = (path: string, error: unknown): unknown =>
  error instanceof Error && "code" in error && "syscall" in error
    ? new CommandFailed(exitCodes.usage, "CANNOT_WRITE", `${path} cannot be written: ${String(error.code)}.`)
    : error;

/**
 * Where a file stands below a folder, never through a link that leads out of it. null: there is no such folder yet; `make`: it is made.
 * @throws CommandFailed for a way that leads out
 */
async function placeIn(folder: string, file: string, make: boolean): Promise<string | null> {
  const ways = dirname(file) === "." ? [] : dirname(file).split("/");
  try {
    const root = await realpath(folder);
    let at = root;
    for (const part of ways) {
      const next = join(at, part);
      if (make) await mkdir(next).catch((error: unknown) => passOver("EEXIST", error));
      at = await realpath(next);
      if (!at.startsWith(root.endsWith(sep) ? root : root + sep)) throw leadsOut(folder, file);
    }
    const place = join(at, file.slice(file.lastIndexOf("/") + 1));
    const found = await lstat(place).catch((error: unknown) => passOver("ENOENT", error));
    if (found === null) return make ? place : null;
    if (!found.isFile()) throw leadsOut(folder, file);
    return place;
  } catch (error) {
    // A file where a folder must be.
    throw hasCode(error, "ENOTDIR") ? leadsOut(folder, file) : error;
  }
}

function passOver(code: string, error: unknown): null {
  if (hasCode(error, code)) return null;
  throw error;
}

const leadsOut = (folder: string, file: string): CommandFailed =>
  new CommandFailed(
    exitCodes.conflict,
    "OUTSIDE_FOLDER",
    `${join(folder, file)} is, or lies behind, a link or something else that is no file or folder of its own.` +
      " Remove it, or pull to another folder with --to.",
  );
