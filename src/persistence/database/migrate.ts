import { randomUUID } from "node:crypto";
import { MigrationError } from "../errors.js";
import type { Migration } from "./migrations-folder.js";
import type { PersistenceLog } from "./persistence-log.js";
import type { Sql } from "../sql/plain-sql.js";

interface Applied {
  readonly name: string;
  readonly checksum: string;
  readonly finished: boolean;
}

/** The table the ordinary command line of Prisma keeps, column for column. */
const historyTable = `
CREATE TABLE IF NOT EXISTS "_prisma_migrations" (
  "id" VARCHAR(36) PRIMARY KEY NOT NULL,
  "checksum" VARCHAR(64) NOT NULL,
  "finished_at" TIMESTAMPTZ,
  "migration_name" VARCHAR(255) NOT NULL,
  "logs" TEXT,
  "rolled_back_at" TIMESTAMPTZ,
  "started_at" TIMESTAMPTZ NOT NULL DEFAULT now(),
  "applied_steps_count" INTEGER NOT NULL DEFAULT 0
)`;

/**
 * Applies what is missing, in order, each in a transaction of its own. `sql` is one session, and the caller holds a lock
 * that keeps other processes out.
 * @returns names of the migrations that were applied now.
 * @throws MigrationError where history and program differ, or one fails; that one then left nothing behind.
 */
export async function migrate(
  sql: Sql,
  migrations: readonly Migration[],
  log?: PersistenceLog,
): Promise<readonly string[]> {
  const history = await readHistory(sql);
  if (history === null) await sql.query(historyTable, []);
  const applied = history ?? [];
  const missing = missingMigrations(migrations, applied, log);
  for (const migration of missing) {
    await apply(sql, migration);
    log?.info({ migration: migration.name }, "migration applied");
  }
  return missing.map(({ name }) => name);
}

/** Names of those that are not applied, whoever was to apply them. */
export async function pendingMigrations(sql: Sql, migrations: readonly Migration[]): Promise<readonly string[]> {
  const done = new Set(((await readHistory(sql)) ?? []).flatMap(({ name, finished }) => (finished ? [name] : [])));
  return migrations.flatMap(({ name }) => (done.has(name) ? [] : [name]));
}

/** null: nothing was ever applied. */
async function readHistory(sql: Sql): Promise<readonly Applied[] | null> {
  const { rows: found } = await sql.query(`SELECT to_regclass('_prisma_migrations') IS NOT NULL AS "known"`, []);
  if (found[0]?.["known"] !== true) return null;
  const { rows } = await sql.query(
    `SELECT "migration_name", "checksum", "finished_at" IS NOT NULL AS "finished"
     FROM "_prisma_migrations" WHERE "rolled_back_at" IS NULL ORDER BY "started_at"`,
    [],
  );
  return rows.map((row) => ({
    name: String(row["migration_name"]),
    checksum: String(row["checksum"]),
    finished: row["finished"] === true,
  }));
}

function missingMigrations(
  migrations: readonly Migration[],
  applied: readonly Applied[],
  log: PersistenceLog | undefined,
): readonly Migration[] {
  const known = new Map(migrations.map((migration) => [migration.name, migration]));
  for (const { name, checksum, finished } of applied) {
    if (!finished) {
      throw new MigrationError(
        name,
        "it failed half way when another tool applied it; repair and resolve it there first",
      );
    }
    const here = known.get(name);
    if (here === undefined) {
      // A newer program migrated already, and this one still runs beside it: migrations only add.
      log?.warn({ migration: name }, "the database knows a migration that this program does not");
    } else if (here.checksum !== checksum) {
      throw new MigrationError(
        name,
        "its file is not the one that was applied; undo the edit and write a new migration",
      );
    }
  }
  const done = new Set(applied.map(({ name }) => name));
  return migrations.filter(({ name }) => !done.has(name));
}

async function apply(sql: Sql, { name, script, checksum }: Migration): Promise<void> {
  try {
    await sql.query("BEGIN");
    await sql.query(script);
    await sql.query(
      `INSERT INTO "_prisma_migrations"
         ("id", "checksum", "finished_at", "migration_name", "started_at", "applied_steps_count")
       VALUES ($1, $2, clock_timestamp(), $3, now(), 1)`,
      [randomUUID(), checksum, name],
    );
    await sql.query("COMMIT");
  } catch (error) {
    await sql.query("ROLLBACK");
    const why = error instanceof Error ? error.message : String(error);
    const isOwners = error instanceof Error && "code" in error && error.code === "42501";
    const remedy = isOwners ? ". This role owns no tables: run `prepwright migrate` as the one that does, first" : "";
    throw new MigrationError(name, `not applied, and nothing of it is left: ${why}${remedy}`, { cause: error });
  }
}
