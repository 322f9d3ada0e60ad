import { PGlite } from "@electric-sql/pglite";
import { readFile } from "node:fs/promises";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { historyAsPrismaSeesIt } from "../../scripts/schema-engine.mjs";
import { migrationsFolder, readMigrations } from "../../src/persistence/database/migrations-folder.js";
import { openPglite } from "../../src/persistence/database/open-embedded.js";
import type { OpenedDatabase } from "../../src/persistence/database/opened-database.js";

const schema = await readFile("prisma/schema.prisma", "utf8");
const migrations = await readMigrations(migrationsFolder());

describe("a database that the program migrated", () => {
  let pglite: PGlite;
  let opened: OpenedDatabase;
  beforeAll(async () => {
    pglite = await PGlite.create();
    opened = await openPglite(pglite);
  });
  afterAll(() => opened.close());

  it("is up to date in the eyes of the ordinary command line", async () => {
    expect(await historyAsPrismaSeesIt(pglite, schema, migrations)).toMatchObject({
      hasMigrationsTable: true,
      editedMigrationNames: [],
      failedMigrationNames: [],
      history: null,
    });
  });

  it("is seen by it to be behind, or edited, where it is", async () => {
    const [first, ...others] = migrations;
    const next = { name: "20990101000000_next", script: "SELECT 1" };
    expect(await historyAsPrismaSeesIt(pglite, schema, [...migrations, next])).toMatchObject({
      history: { diagnostic: "databaseIsBehind", unappliedMigrationNames: [next.name] },
    });
    const edited = [{ name: first?.name ?? "", script: "SELECT 2" }, ...others];
    expect(await historyAsPrismaSeesIt(pglite, schema, edited)).toMatchObject({ editedMigrationNames: [first?.name] });
  });
});
