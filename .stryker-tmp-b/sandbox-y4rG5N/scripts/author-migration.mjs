// @ts-nocheck
import { mkdir, readdir, readFile, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { migratedInMemory, schemaDrift } from "./schema-engine.mjs";

/**
 * node scripts/author-migration.mjs <name>
 *
 * Applies the committed migrations to a database in memory, compares it with prisma/schema.prisma and writes the SQL
 * between them as the next migration. Read it before you commit it: the tool cannot see a renamed column.
 */

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const folder = join(root, "prisma/migrations");
const [name] = process.argv.slice(2);
if (!/^[a-z0-9]+(_[a-z0-9]+)*$/.test(name ?? "")) {
  console.error("usage: node scripts/author-migration.mjs <name>, the name in lower case with underscores");
  process.exit(2);
}

const committed = (await readdir(folder, { withFileTypes: true }))
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name)
  .sort();
const scripts = await Promise.all(committed.map((each) => readFile(join(folder, each, "migration.sql"), "utf8")));
const schema = await readFile(join(root, "prisma/schema.prisma"), "utf8");
const database = await migratedInMemory(scripts);
const sql = await schemaDrift(database, schema);
await database.close();

if (sql === null) {
  console.log("the committed migrations already say what the schema says; nothing written");
} else {
  const stamp = new Date().toISOString().replace(/\D/g, "").slice(0, 14);
  const made = join(folder, `${stamp}_${name}`);
  await mkdir(made, { recursive: true });
  await writeFile(join(made, "migration.sql"), sql);
  console.log(`wrote prisma/migrations/${stamp}_${name}/migration.sql`);
}
