// @ts-nocheck
import type { PGlite } from "@electric-sql/pglite";

/** SQL that turns the database into what the schema says; null where they already agree. */
export function schemaDrift(pglite: PGlite, schema: string): Promise<string | null>;

/** A database in memory with these scripts run in order. */
export function migratedInMemory(scripts: readonly string[]): Promise<PGlite>;

/** What the ordinary command line would say about a database and a folder of migrations. */
export function historyAsPrismaSeesIt(
  pglite: PGlite,
  schema: string,
  migrations: readonly { readonly name: string; readonly script: string }[],
): Promise<{
  readonly editedMigrationNames: readonly string[];
  readonly failedMigrationNames: readonly string[];
  readonly hasMigrationsTable: boolean;
  readonly history: unknown;
}>;
