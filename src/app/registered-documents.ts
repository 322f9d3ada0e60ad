import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import * as commands from "./cli/generated/operations.js";

/**
 * Every `.graphql` file of a folder, byte for byte, and what the command line asks, which needs a token wherever it matters. A
 * folder without any is a fault: nothing could be asked.
 */
export async function readRegisteredDocuments(folder: string): Promise<readonly string[]> {
  const names = (await readdir(folder)).filter((name) => name.endsWith(".graphql")).sort();
  if (names.length === 0) throw new Error(`there is no .graphql file in ${folder} (PREPWRIGHT_OPERATIONS_DIR)`);
  const texts = await Promise.all(names.map((name) => readFile(join(folder, name), "utf8")));
  // The others are fragments, which the operations hold already.
  const own = Object.entries(commands).filter(([name]) => name.endsWith("Document"));
  return [...texts, ...own.map(([, operation]) => operation.toString())];
}
