import type { PGlite } from "@electric-sql/pglite";
import { readFile } from "node:fs/promises";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { migratedInMemory, schemaDrift } from "../../scripts/schema-engine.mjs";
import { migrationsFolder, readMigrations } from "../../src/persistence/database/migrations-folder.js";

const schema = await readFile("prisma/schema.prisma", "utf8");
let database: PGlite;
beforeAll(async () => {
  const migrations = await readMigrations(migrationsFolder());
  database = await migratedInMemory(migrations.map(({ script }) => script));
});
afterAll(() => database.close());

describe("the committed migrations", () => {
  it("make exactly the database that schema.prisma describes", async () => {
    expect(await schemaDrift(database, schema)).toBeNull();
  });

  it("are seen to differ from a schema with one column more, one index less, or another type", async () => {
    const changed = (from: string | RegExp, to: string) => {
      const other = schema.replace(from, to);
      expect(other).not.toBe(schema);
      return other;
    };
    expect(await schemaDrift(database, changed("ndbNo       String?", "extra Int?\n  ndbNo String?"))).toContain(
      'ADD COLUMN     "extra" INTEGER',
    );
    expect(await schemaDrift(database, changed("  @@index([aisle, slug])\n", ""))).toContain(
      'DROP INDEX "foods_aisle_slug_idx"',
    );
    expect(await schemaDrift(database, changed("always_there", "always_here"))).toContain("always_here");
  });

  it("are seen to differ from a database that somebody changed", async () => {
    await database.exec("ALTER TABLE packs ADD COLUMN stray TEXT");
    expect(await schemaDrift(database, schema)).toContain('DROP COLUMN "stray"');
    await database.exec("ALTER TABLE packs DROP COLUMN stray");
    expect(await schemaDrift(database, schema)).toBeNull();
  });

  // A column that may be null holds rows of the operator too: tokens and the audit trail stay on one server.
  it("begin every key of a publisher's table with the publisher, so that publishers can be spread over servers", async () => {
    const { rows } = await database.query<{ name: string; columns: string[] }>(`
      SELECT i.indexrelid::regclass::text AS name,
        (SELECT array_agg(a.attname::text ORDER BY k.place) FROM unnest(i.indkey) WITH ORDINALITY AS k(at, place)
          JOIN pg_attribute a ON a.attrelid = i.indrelid AND a.attnum = k.at) AS columns
      FROM pg_index i JOIN pg_class t ON t.oid = i.indrelid JOIN pg_namespace n ON n.oid = t.relnamespace
      WHERE i.indisunique AND n.nspname = 'public' AND EXISTS (
        SELECT FROM pg_attribute a WHERE a.attrelid = t.oid AND a.attname = 'publisher_id' AND a.attnotnull)`);
    expect(rows.length).toBeGreaterThan(10);
    for (const { name, columns } of rows) expect(columns[0], name).toBe("publisher_id");
  });

  it("keep no written amount or price in a floating-point column", async () => {
    const { rows } = await database.query<{ name: string }>(`
      SELECT table_name || '.' || column_name AS name FROM information_schema.columns
      WHERE table_schema = 'public' AND data_type IN ('double precision', 'real') ORDER BY 1`);
    expect(rows.map(({ name }) => name)).toEqual([
      "draft_lines.exponent",
      "draft_steps.heat_up_minutes",
      "draft_steps.max_wait",
      "draft_steps.min_wait",
      "draft_steps.minutes",
      "draft_steps.temperature_c",
      "draft_steps.wash_minutes",
      "plan_drafts.promised_minutes",
      // Worked out, and worked out again whenever what they are made of changes. (Nutrients are arrays.)
      "plan_facts.hands_on_minutes",
      "plan_facts.session_minutes",
    ]);
  });
});
