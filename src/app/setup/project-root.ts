import { existsSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** The folder that holds package.json: the sources and the build lie at different depths below it. */
export function projectRoot(from: string = import.meta.url): string {
  let folder = dirname(fileURLToPath(from));
  while (!existsSync(join(folder, "package.json"))) {
    const parent = dirname(folder);
    if (parent === folder) throw new Error("no package.json above the program");
    folder = parent;
  }
  return folder;
}
