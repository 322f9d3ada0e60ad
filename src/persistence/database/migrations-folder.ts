import { hash } from "node:crypto";
import { existsSync } from "node:fs";
import { readdir, readFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

export interface Migration {
  readonly name: string;
  readonly script: string;
  /** SHA-256 of the file, hex: what the ordinary command line records, so that both understand each other. */
  readonly checksum: string;
}

/** prisma/migrations of this program: the sources and the build lie at different depths below the same folder. */
export function migrationsFolder(from: string = import.meta.url): string {
  let folder = dirname(fileURLToPath(from));
  for (;;) {
    const candidate = join(folder, "prisma/migrations");
    if (existsSync(candidate)) return candidate;
    const parent = dirname(folder);
    if (parent === folder) throw new Error("no prisma/migrations above the program");
    folder = parent;
  }
}

/** Every migration of a folder, in the order they are applied. */
export async function readMigrations(folder: string): Promise<readonly Migration[]> {
  const entries = await readdir(folder, { withFileTypes: true });
  const names = entries.filter((entry) => entry.isDirectory()).map((entry) => entry.name);
  return Promise.all(
    names.toSorted().map(async (name) => {
      const script = await readFile(join(folder, name, "migration.sql"), "utf8");
      return { name, script, checksum: hash("sha256", script) };
    }),
  );
}
