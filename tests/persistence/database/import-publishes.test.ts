import pg from "pg";
import { describe, expect, it } from "vitest";
import { migrate } from "../../../src/persistence/database/migrate.js";
import { migrationsFolder, readMigrations } from "../../../src/persistence/database/migrations-folder.js";
import { createTestDatabase, dropTestDatabase } from "../../kit/databases.js";

describe("the migration that marks what IMPORT alone publishes", () => {
  it("marks the tokens and feeds that are there, and none that comes after it", async () => {
    const url = await createTestDatabase("empty");
    const client = new pg.Client({ connectionString: url });
    await client.connect();
    try {
      const sql = { query: (text: string, values?: readonly unknown[]) => client.query(text, values && [...values]) };
      const all = await readMigrations(migrationsFolder());
      const at = all.findIndex(({ name }) => name.endsWith("mark_what_import_alone_publishes"));
      expect(at).toBeGreaterThan(0);
      // As a process of 0.1.0 writes them, which does not know the column.
      const add = async (name: string): Promise<void> => {
        await client.query(
          `INSERT INTO access_tokens (id, name, scopes, secret_hash, created_at, created_by_program)
           VALUES ($1, $1, '{IMPORT}', repeat('0', 64), now(), 'test')`,
          [name],
        );
        await client.query(
          `INSERT INTO feeds (owner, slug, kind, settings, zone) VALUES (gen_random_uuid(), $1, 'DOCUMENTS', '{}', 'UTC')`,
          [name],
        );
      };
      await migrate(sql, all.slice(0, at));
      await add("before");
      await migrate(sql, all);
      await add("after");
      for (const table of ["access_tokens", "feeds"]) {
        const named = table === "feeds" ? "slug" : "name";
        const { rows } = await client.query(
          `SELECT ${named} AS name, import_publishes AS marked FROM ${table} ORDER BY 1`,
        );
        expect(rows).toEqual([
          { name: "after", marked: false },
          { name: "before", marked: true },
        ]);
      }
    } finally {
      await client.end();
      await dropTestDatabase(url);
    }
  });
});
