import { readFile, realpath, stat } from "node:fs/promises";
import { CommandFailed, exitCodes } from "./outcome.js";

export interface TextFile {
  /** As it was named on the command line. */
  readonly name: string;
  readonly text: string;
}

/** The largest file that is read, in bytes: a service takes no more at once. */
const largestFile = 1024 * 1024;

/** Reads files as UTF-8, each once however often it is named. @throws CommandFailed that names every file at fault */
export async function readFiles(names: readonly string[]): Promise<readonly TextFile[]> {
  const faults: string[] = [];
  const seen = new Set<string>();
  const files: TextFile[] = [];
  for (const name of names) {
    try {
      const real = await realpath(name);
      if (seen.has(real)) continue;
      seen.add(real);
      files.push({ name, text: await readText(name) });
    } catch (error) {
      if (!(error instanceof Error)) throw error;
      faults.push(`${name}: ${faultOf(error)}`);
    }
  }
  if (faults.length > 0) throw new CommandFailed(exitCodes.usage, "CANNOT_READ", faults);
  return files;
}

class Unreadable extends Error {
  override readonly name = "Unreadable";
}

async function readText(name: string): Promise<string> {
  const { size } = await stat(name);
  if (size > largestFile) {
    throw new Unreadable(`it has ${size} bytes, and ${largestFile} are the most. Split it into several files.`);
  }
  const bytes = await readFile(name);
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch (error) {
    if (error instanceof TypeError) throw new Unreadable("it is not text in UTF-8. Save it as UTF-8.");
    throw error;
  }
}

function faultOf(error: Error): string {
  const code = "code" in error ? error.code : null;
  if (code === "ENOENT" || code === "ENOTDIR") return "there is no such file.";
  if (code === "EISDIR") return "it is a folder. Name the files in it, such as plans/*.yaml.";
  if (code === "EACCES") return "it may not be read by you.";
  if (error instanceof Unreadable || code !== null) return error.message;
  throw error;
}
