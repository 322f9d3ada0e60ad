import pg from "pg";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { Data } from "../../../src/persistence/data.js";
import type { PageRequest } from "../../../src/persistence/sql/page.js";
import type { OpenedDatabase } from "../../../src/persistence/database/opened-database.js";
import { openServer } from "../../../src/persistence/database/open-server.js";
import { createTestDatabase, describeOnServer, dropTestDatabase } from "../../kit/databases.js";

const plans = 20_000;

/** Fifty publishers, each plan in two revisions with the second one in force; few use the same food. */
const manyPlans = `
INSERT INTO publishers (slug, name) SELECT 'p' || n, 'Publisher ' || n FROM generate_series(0, 49) n;
INSERT INTO plans (publisher_id, slug, last_revision)
  SELECT b.id, 'plan-' || n, 2 FROM generate_series(1, ${plans}) n JOIN publishers b ON b.slug = 'p' || n % 50;
INSERT INTO revisions (publisher_id, plan_id, revision, title, serves, locale, published_at, checksum, format, document)
  SELECT publisher_id, id, r, 'Plan ' || slug, 2, 'en', '2026-01-01'::timestamptz + random() * interval '90 days', '', 1, '{}'
  FROM plans, generate_series(1, 2) r;
UPDATE plans p SET newest_revision_id = r.id, newest_published_at = r.published_at FROM revisions r WHERE r.publisher_id = p.publisher_id AND r.plan_id = p.id AND r.revision = 2;
INSERT INTO revision_words
  SELECT DISTINCT publisher_id, id, unnest(string_to_array(replace(lower(title), '-', ' '), ' ')), published_at FROM revisions;
INSERT INTO revision_components SELECT publisher_id, id, 'component-' || abs(hashtext(id::text)) % 5000, published_at FROM revisions;
INSERT INTO revision_foods SELECT publisher_id, id, 'food-' || abs(hashtext(id::text)) % 5000, published_at FROM revisions;
INSERT INTO foods (slug, aisle, shopped_by, always_there, densities, measures, parts, edible, yields, allergens, diets, keeping, content_hash)
  SELECT 'food-' || n, 'aisle-' || n % 20, 'MASS', false, '[]', '[]', '[]', '[]', '[]', '[]', '[]', '[]', ''
  FROM generate_series(1, 8000) n;
INSERT INTO food_words SELECT id, 0, place, 'en', NULL, slug, slug FROM foods, generate_series(0, 1) place;
INSERT INTO packs SELECT id, place, 'pack', 'bag', '1', '1', 'kg', NULL, NULL, NULL, '2026-01-01', 'INVENTED', 'made up'
  FROM foods, generate_series(0, 1) place;
INSERT INTO feeds (owner, slug, kind, settings, zone) SELECT id, 'prices', 'PRICES', '{}', 'UTC' FROM publishers;
INSERT INTO listed_packs
  SELECT d.id, f.slug, 'pack', 'bag', '1', '1', 'kg', NULL, NULL, NULL, '2026-01-01', d.id, d.id
  FROM foods f, (SELECT id FROM feeds LIMIT 3) d;
INSERT INTO catalogue_editions (code, title, content_hash) VALUES ('e', 'E', '');
INSERT INTO catalogue_foods (ndb_no, edition, description, other_names, aisle, nutrients, weights, length, words)
  SELECT lpad(n::text, 5, '0'), 'e', 'Word-' || n || ', plain', '{}', 'other', '{}', '[]', 13, to_tsvector('simple', 'word ' || n || ' plain')
  FROM generate_series(1, 8000) n;`;

describeOnServer("with many plans", () => {
  let url: string;
  let opened: OpenedDatabase;
  let client: pg.Client;
  let sent: { readonly sql: string; readonly values: readonly unknown[] }[] = [];
  beforeAll(async () => {
    url = await createTestDatabase();
    opened = await openServer(url, { onStatement: (sql, values) => void sent.push({ sql, values }) });
    client = new pg.Client({ connectionString: url });
    await client.connect();
    await client.query(manyPlans);
    await client.query("VACUUM ANALYZE");
  });
  afterAll(async () => {
    await opened.close();
    await client.end();
    await dropTestDatabase(url);
  });

  const all = { publisher: null, search: null, usesFood: null, usesComponent: null };
  const first: PageRequest = { first: 20, after: null, last: null, before: null };

  /** Tables read from end to end by the statements of a read, apart from those that never hold many rows. */
  const scanned = async (read: (data: Data) => Promise<unknown>): Promise<readonly string[]> => {
    sent = [];
    await read(opened.data);
    const plansOfStatements = await Promise.all(
      sent.map(({ sql, values }) => client.query(`EXPLAIN (FORMAT JSON) ${sql}`, [...values])),
    );
    const text = JSON.stringify(plansOfStatements.map(({ rows }) => rows));
    return [...text.matchAll(/"Seq Scan"[^{}]*?"Relation Name":"(\w+)"/g)]
      .map(([, table]) => String(table))
      .filter((table) => !["publishers", "feeds", "catalogue_editions"].includes(table));
  };

  it("no read goes through a whole table", async () => {
    const middle = (await opened.data.revisions.page(all, { ...first, first: 100 })).items.at(-1);
    const ids = [middle?.item.id ?? ""];
    const after = middle?.cursor ?? null;
    const reads: Record<string, (data: Data) => Promise<unknown>> = {
      "first page": ({ revisions }) => revisions.page(all, first),
      "next page": ({ revisions }) => revisions.page(all, { ...first, after }),
      "page before": ({ revisions }) => revisions.page(all, { first: null, after: null, last: 20, before: after }),
      "last page": ({ revisions }) => revisions.page(all, { ...first, first: null, last: 20 }),
      "page of a publisher": ({ revisions }) => revisions.page({ ...all, publisher: "p7" }, { ...first, after }),
      "page of a search": ({ revisions }) => revisions.page({ ...all, search: "77" }, first),
      "page of two things": ({ revisions }) => revisions.page({ ...all, search: "77", usesFood: "food-7" }, first),
      "page of a food": ({ revisions }) => revisions.page({ ...all, usesFood: "food-7" }, first),
      "page of a component": ({ revisions }) => revisions.page({ ...all, usesComponent: "component-7" }, first),
      "newest by name": ({ revisions }) => revisions.summaries([{ publisher: "p7", slug: "plan-7", revision: null }]),
      "by number": ({ revisions }) => revisions.summaries([{ publisher: "p7", slug: "plan-7", revision: 1 }]),
      "by id": ({ revisions }) => revisions.summariesByIds(ids),
      documents: ({ revisions }) => revisions.bundles(ids),
      checksums: ({ revisions }) => revisions.checksums(ids[0] ?? null, 20),
      "holding a component": ({ revisions }) => revisions.holdingComponents([{ publisher: "p7", slug: "component-7" }]),
      "foods by slug": ({ foods }) => foods.bySlugs(["food-7", "food-8"]),
      currencies: ({ foods }) => foods.currencies(),
      "foods of an aisle": ({ foods }) => foods.page({ aisle: "aisle-7" }, first),
    };
    Object.assign(reads, {
      "open table by number": ({ catalogue }: Data) => catalogue.byNumbers(["00007", "00008"]),
      "open table by words": ({ catalogue }: Data) => catalogue.page("word-7 plain", first),
      "whole open table": ({ catalogue }: Data) => catalogue.page(null, first),
    });
    const found: Record<string, readonly string[]> = {};
    for (const [name, read] of Object.entries(reads)) {
      const tables = await scanned(read);
      if (tables.length > 0) found[name] = tables;
    }
    expect(found).toEqual({});
  });

  it("a read that does go through a whole table would be seen", async () => {
    expect(await scanned(() => opened.client.revision.findMany({ where: { title: "x" } }))).toEqual(["revisions"]);
  });
});
