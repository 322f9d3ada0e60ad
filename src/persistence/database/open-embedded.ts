import { PGlite } from "@electric-sql/pglite";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { PrismaPGlite } from "pglite-prisma-adapter";
import { embeddedBulk } from "../sql/bulk-sql.js";
import { createData } from "../create-data.js";
import { followEmbedded } from "./follow-embedded.js";
import { lockFolder } from "./folder-lock.js";
import { openClient } from "./open-client.js";
import { migrate, pendingMigrations } from "./migrate.js";
import { migrationsFolder, readMigrations } from "./migrations-folder.js";
import { makePrivateFolder, tightenFolder } from "./private-folder.js";
import type { OpenedDatabase, OpenOptions } from "./opened-database.js";
import type { Sql } from "../sql/plain-sql.js";

/**
 * Opens, or makes, the database in a folder, inside this process. One process at a time: two would lose each other's rows,
 * so a lock file keeps the second one out. It keeps no promise on power loss and has no statement timeout. Nobody but its owner may
 * read it.
 * @throws EmbeddedDatabaseBusy, FolderNotPrivate
 */
export async function openEmbedded(dataDir: string, options: OpenOptions = {}): Promise<OpenedDatabase> {
  makePrivateFolder(dataDir);
  const lock = await lockFolder(dataDir);
  try {
    const folder = join(dataDir, "database");
    // Before it is opened, so that Postgres sees a private folder and makes private files.
    if (existsSync(folder)) keepPrivate(folder);
    const pglite = await PGlite.create({ dataDir: folder, relaxedDurability: false });
    // What a new database is copied from is open to all.
    keepPrivate(folder);
    return await openPglite(pglite, options, () => lock.release());
  } catch (error) {
    await lock.release();
    throw error;
  }
}

function keepPrivate(folder: string): void {
  makePrivateFolder(folder);
  tightenFolder(folder);
}

/** The same on a database that the caller made: in memory, or from a dump. Closing it closes that database. */
export async function openPglite(
  pglite: PGlite,
  options: OpenOptions = {},
  afterClose: () => Promise<void> = async () => undefined,
): Promise<OpenedDatabase> {
  const sql = plainSql(pglite);
  // The adapter writes times without a zone and reads them as UTC.
  await sql.query("SET TIME ZONE 'UTC'");
  const migrations = await readMigrations(migrationsFolder());
  await migrate(sql, migrations, options.log);
  const client = openClient(new PrismaPGlite(pglite), options);
  let closing: Promise<void> | null = null;
  const close = () =>
    (closing ??= client
      .$disconnect()
      .then(() => pglite.close())
      .finally(afterClose));
  return {
    kind: "embedded",
    client,
    data: createData(client, embeddedBulk(pglite), close),
    sql,
    follow: followEmbedded(pglite),
    pendingMigrations: () => pendingMigrations(sql, migrations),
    replicas: null,
    poolFigures: () => null,
    close,
  };
}

function plainSql(pglite: PGlite): Sql {
  return {
    query: async (text, values) => {
      if (values !== undefined) return pglite.query<Record<string, unknown>>(text, [...values]);
      const answers = await pglite.exec(text);
      return { rows: answers.at(-1)?.rows ?? [] };
    },
  };
}
