import { createHash } from "node:crypto";
import { mkdir, mkdtemp, readdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, inject, it } from "vitest";
import { migrate } from "../../../src/persistence/database/migrate.js";
import { migrationsFolder, readMigrations } from "../../../src/persistence/database/migrations-folder.js";
import { openServer } from "../../../src/persistence/database/open-server.js";
import { createTestDatabase, describeOnBothDatabases } from "../../kit/databases.js";
import { runProcess } from "./run-process.js";

const migration = (name: string, script: string) => ({
  name,
  script,
  checksum: createHash("sha256").update(script).digest("hex"),
});

const good = migration("1_good", "CREATE TABLE good (n int); INSERT INTO good VALUES (1);");
const bad = migration("2_bad", "CREATE TABLE half (n int); SELECT 1 / 0;");

describeOnBothDatabases("migrating", (open) => {
  /** On one session, with no history yet. */
  const openEmpty = async () => {
    const database = await open();
    if (database.kind === "embedded") {
      await database.sql.query(`DROP TABLE "_prisma_migrations"`);
      return database.sql;
    }
    await database.sql.query(`DROP TABLE "_prisma_migrations"`);
    const { default: pg } = await import("pg");
    const client = new pg.Client({ connectionString: String(database.url) });
    await client.connect();
    // The database is dropped by force when the suite ends, which cuts this connection.
    client.on("error", () => undefined);
    return { query: (text: string, values?: readonly unknown[]) => client.query(text, values && [...values]) };
  };

  it("applies what is missing, once, in the order of names, and records it as the ordinary command line does", async () => {
    const sql = await openEmpty();
    const later = migration("3_later", "ALTER TABLE good ADD COLUMN m int");
    expect(await migrate(sql, [good])).toEqual(["1_good"]);
    expect(await migrate(sql, [good, later])).toEqual(["3_later"]);
    expect(await migrate(sql, [good, later])).toEqual([]);
    const { rows } = await sql.query(
      `SELECT migration_name, checksum, applied_steps_count, logs, rolled_back_at, finished_at >= started_at AS finished
       FROM "_prisma_migrations" ORDER BY started_at`,
      [],
    );
    const recorded = { applied_steps_count: 1, logs: null, rolled_back_at: null, finished: true };
    expect(rows).toEqual([
      { ...recorded, migration_name: "1_good", checksum: good.checksum },
      { ...recorded, migration_name: "3_later", checksum: later.checksum },
    ]);
  });

  it("leaves nothing of a migration that fails, and names it", async () => {
    const sql = await openEmpty();
    await expect(migrate(sql, [good, bad])).rejects.toMatchObject({
      name: "MigrationError",
      migration: "2_bad",
      message: expect.stringMatching(/division by zero/),
    });
    expect((await sql.query("SELECT to_regclass('good') AS good, to_regclass('half') AS half", [])).rows).toEqual([
      { good: "good", half: null },
    ]);
    // Repaired, it goes on from there.
    expect(await migrate(sql, [good, migration("2_bad", "CREATE TABLE half (n int)")])).toEqual(["2_bad"]);
  });

  it("refuses a database whose migrations are not those of the program", async () => {
    const sql = await openEmpty();
    await migrate(sql, [good]);
    await expect(migrate(sql, [migration("1_good", `${good.script} `)])).rejects.toThrow(
      "migration 1_good: its file is not the one that was applied",
    );
    await sql.query(`UPDATE "_prisma_migrations" SET finished_at = NULL`, []);
    await expect(migrate(sql, [good])).rejects.toThrow("migration 1_good: it failed half way");
    // Marked as rolled back by the ordinary command line, it is applied again.
    await sql.query(`UPDATE "_prisma_migrations" SET rolled_back_at = now()`, []);
    await sql.query("DROP TABLE good", []);
    expect(await migrate(sql, [good])).toEqual(["1_good"]);
  });

  it("lets an older program run on the database of a newer one, and says so", async () => {
    const sql = await openEmpty();
    const warned: object[] = [];
    await migrate(sql, [good, migration("9_newer", "SELECT 1")]);
    expect(await migrate(sql, [good], { info: () => undefined, warn: (facts) => void warned.push(facts) })).toEqual([]);
    expect(warned).toEqual([{ migration: "9_newer" }]);
  });
});

describe("migrations", () => {
  it("are found from the sources and from the build, which lie at different depths", async () => {
    const folder = migrationsFolder();
    expect(migrationsFolder(new URL("../../../dist/chunk.js", import.meta.url).href)).toBe(folder);
    const names = (await readMigrations(folder)).map(({ name }) => name);
    expect(names).toEqual((await readdir(folder)).filter((name) => !name.endsWith(".toml")).toSorted());
    expect(names.every((name) => /^\d{14}_[a-z0-9_]+$/.test(name))).toBe(true);
  });
});

describe("several processes that start at once on an empty server", () => {
  let folder: string;
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), "prepwright-migrations-"));
  });
  afterEach(() => rm(folder, { recursive: true }));

  it("migrate it once, and all of them then work", async () => {
    expect(inject("databaseTemplates")).toMatch(/^http/);
    const url = await createTestDatabase("empty");
    const slugs = ["first", "second", "third"];
    const all = await Promise.all(slugs.map((slug) => runProcess("open-server-once.ts", [url, slug]).ended));
    expect(all).toEqual(slugs.map((slug) => ({ code: 0, output: `saved ${slug}\n` })));
    const opened = await openServer(url);
    const { rows } = await opened.sql.query(`SELECT migration_name FROM "_prisma_migrations" ORDER BY started_at`, []);
    expect(rows.map((row) => row["migration_name"])).toEqual(
      (await readMigrations(migrationsFolder())).map(({ name }) => name),
    );
    expect((await opened.data.publishers.bySlugs(slugs)).map((each) => each?.slug)).toEqual(slugs);
    await opened.close();
  });

  it("are told which migration fails", async () => {
    await mkdir(join(folder, "1_bad"));
    await writeFile(join(folder, "1_bad/migration.sql"), "CREATE TABLE half (n int); SELECT nothing;");
    const url = await createTestDatabase("empty");
    await expect(openServer(url, { migrations: folder })).rejects.toMatchObject({
      name: "MigrationError",
      migration: "1_bad",
    });
  });
});
