import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import * as commands from "../cli/generated/operations.js";

/**
 * Every `.graphql` file of a folder, byte for byte, and what the command line asks, which needs a token wherever it matters. A
 * folder without any is a fault: nothing could be asked. @throws NoRegisteredDocuments
 */
export async function readRegisteredDocuments(folder: string): Promise<readonly string[]> {
  const names = (await filesOf(folder)).filter((name) => name.endsWith(".graphql")).sort();
  if (names.length === 0) {
    throw new NoRegisteredDocuments(`PREPWRIGHT_OPERATIONS_DIR: there is no .graphql file in ${folder}`);
  }
  const texts = await Promise.all(names.map((name) => readFile(join(folder, name), "utf8")));
  // The others are fragments, which the operations hold already.
  const own = Object.entries(commands).filter(([name]) => name.endsWith("Document"));
  return [...texts, ...own.map(([, operation]) => operation.toString())];
}

/** The folder is not there, or has none. */
export class NoRegisteredDocuments extends Error {
  override readonly name = "NoRegisteredDocuments";
}

function filesOf(folder: string): Promise<readonly string[]> {
  return readdir(folder).catch((cause: unknown) => {
    throw new NoRegisteredDocuments(`PREPWRIGHT_OPERATIONS_DIR must name a folder that can be read: ${String(cause)}`, {
      cause,
    });
  });
}
