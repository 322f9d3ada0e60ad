import { PGlite } from "@electric-sql/pglite";
import { afterAll, beforeAll, expect, it } from "vitest";
import { migrate } from "../../src/persistence/database/migrate.js";
import { migrationsFolder, readMigrations } from "../../src/persistence/database/migrations-folder.js";
import { openPglite } from "../../src/persistence/database/open-embedded.js";

const migrations = await readMigrations(migrationsFolder());
const at = migrations.findIndex(({ name }) => name.endsWith("_order_links"));
let pglite: PGlite;
beforeAll(async () => {
  pglite = await PGlite.create();
});
afterAll(async () => {
  if (!pglite.closed) await pglite.close();
});

it("the migration order_links finds what was published before it by food and by the words of its title", async () => {
  const sql = {
    query: async (text: string, values?: readonly unknown[]) => {
      if (values !== undefined) return pglite.query<Record<string, unknown>>(text, [...values]);
      await pglite.exec(text);
      return { rows: [] };
    },
  };
  await migrate(sql, migrations.slice(0, at));
  await pglite.exec(`
    INSERT INTO publishers (slug, name) VALUES ('north', 'North');
    INSERT INTO plans (publisher_id, slug, last_revision) SELECT id, 'roots', 2 FROM publishers;
    INSERT INTO revisions (publisher_id, plan_id, revision, title, serves, locale, published_at, checksum, format, document)
      SELECT publisher_id, id, r, title, 2, 'en', '2026-03-01T00:00:00Z', '', 1, '{}'
      FROM plans, (VALUES (1, 'Old Roots, old roots!'), (2, 'Crème of roots')) given(r, title);
    INSERT INTO revision_foods SELECT publisher_id, id, 'salt' FROM revisions;
    UPDATE plans SET newest_revision_id = r.id, newest_published_at = r.published_at,
      newest_title_words = '{creme,of,roots}' FROM revisions r WHERE r.revision = 2;`);

  const { data, close } = await openPglite(pglite);
  const found = async (search: string | null, usesFood: string | null) => {
    const filter = { publisher: null, search, usesFood, usesComponent: null };
    const page = await data.revisions.page(filter, { first: 9, after: null, last: null, before: null });
    return page.items.map(({ item }) => item.revision);
  };
  expect(await found("creme", null)).toEqual([2]);
  expect(await found("old", null)).toEqual([]);
  expect(await found(null, "salt")).toEqual([2]);
  await data.revisions.withdraw({ publisher: "north", slug: "roots", revision: 2 }, new Date("2026-03-02T00:00:00Z"));
  expect(await found("roots old", "salt")).toEqual([1]);
  await close();
});
