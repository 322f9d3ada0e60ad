import { beforeAll, expect, it } from "vitest";
import { describeOnServer, type TestDatabase } from "../../kit/databases.js";

/**
 * Where rows would live on several databases (docs/scaling.md): what belongs to a publisher beside that publisher, so that its key is part
 * of every key, as distributed engines want it; what all share on each of them; the rest on one, each with the reason why.
 */
const shared: Readonly<Record<string, string>> = {
  publishers: "what all others refer to, and hardly ever changed",
  foods: "one list for all publishers",
  food_words: "of foods",
  packs: "of foods",
  base_food_editions: "the foods that come with the program",
  catalogue_editions: "the open food table",
  catalogue_foods: "the open food table",
  rule_sets: "published rules are the same for all",
};

const central: Readonly<Record<string, string>> = {
  access_tokens: "found by the id in their text, before it is known whose they are; the operator's have no publisher",
  token_usage: "of tokens",
  audit_entries: "read over all publishers by the operator; numbered in one row",
  idempotency_keys: "the owner of a key is a token, which may act for several publishers",
  feeds: "the operator's have no publisher; their number is small",
  import_files: "of feeds",
  import_file_pieces: "of feeds",
  import_runs: "of feeds; they are the queue of all workers",
  quarantined_rows: "of feeds",
  import_changes: "of feeds",
  staged_prices: "of feeds, and only while an import goes on",
  listed_packs: "of feeds; price lists belong to foods, which all share",
  fact_sources: "of foods, rules and publishers, which all share; jobs alone read it",
  _prisma_migrations: "of the database itself",
};

describeOnServer("the tables", (open) => {
  let database: TestDatabase;
  beforeAll(async () => {
    database = await open();
  });

  const rows = async (query: string): Promise<readonly Readonly<Record<string, unknown>>[]> =>
    (await database.sql.query(query)).rows;
  const ofPublishers = async (): Promise<readonly string[]> =>
    (
      await rows(`SELECT table_name AS name FROM information_schema.columns
        WHERE table_schema = 'public' AND column_name = 'publisher_id' AND is_nullable = 'NO' ORDER BY 1`)
    ).map(({ name }) => String(name));

  it("each have a place: with a publisher, on every database, or on one of them for a reason", async () => {
    const all = await rows(`SELECT relname AS name FROM pg_class
      WHERE relkind IN ('r', 'p') AND relnamespace = 'public'::regnamespace ORDER BY 1`);
    const placed = [...(await ofPublishers()), ...Object.keys(shared), ...Object.keys(central)];
    expect(placed.toSorted()).toEqual(all.map(({ name }) => String(name)).toSorted());
    expect(new Set(placed).size).toBe(placed.length);
  });

  it("of publishers have the publisher first in every key", async () => {
    const names = await ofPublishers();
    expect(names).toContain("revisions");
    const keys = await rows(`SELECT c.relname AS table, i.indexrelid::regclass::text AS key,
        (SELECT attname FROM pg_attribute WHERE attrelid = c.oid AND attnum = i.indkey[0]) AS first
      FROM pg_index i JOIN pg_class c ON c.oid = i.indrelid
      WHERE i.indisunique AND c.relnamespace = 'public'::regnamespace`);
    const wrong = keys.filter(({ table, first }) => names.includes(String(table)) && first !== "publisher_id");
    expect(wrong).toEqual([]);
  });

  it("of publishers refer to each other by the publisher too", async () => {
    const names = await ofPublishers();
    const references =
      await rows(`SELECT conname AS name, conrelid::regclass::text AS "from", confrelid::regclass::text AS "to",
        (SELECT bool_or(attname = 'publisher_id') FROM pg_attribute WHERE attrelid = conrelid AND attnum = ANY(conkey)) AS keyed
      FROM pg_constraint WHERE contype = 'f' AND connamespace = 'public'::regnamespace`);
    const between = references.filter(({ from, to }) => names.includes(String(from)) && names.includes(String(to)));
    expect(between.length).toBeGreaterThan(10);
    expect(between.filter(({ keyed }) => keyed !== true)).toEqual([]);
  });

  it("of publishers refer to nothing that is on one database only, but for what is listed", async () => {
    const names = await ofPublishers();
    const references = await rows(`SELECT conrelid::regclass::text AS "from", confrelid::regclass::text AS "to"
      FROM pg_constraint WHERE contype = 'f' AND connamespace = 'public'::regnamespace`);
    const out = references
      .filter(({ from, to }) => names.includes(String(from)) && String(to) in central)
      .map(({ from, to }) => `${String(from)} -> ${String(to)}`);
    // A delivery that tells of an import: the reference would be kept by the program there.
    expect(out.toSorted()).toEqual(["webhook_deliveries -> import_runs"]);
  });
});
