import { readFile } from "node:fs/promises";
import { setTimeout as wait } from "node:timers/promises";
import pg from "pg";
import { pino } from "pino";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startBackgroundWork, type BackgroundWork } from "../../../src/app/processes/background-work.js";
import { readEnvironment, type Environment } from "../../../src/app/setup/environment.js";
import { migrateDatabase } from "../../../src/app/setup/migrate-database.js";
import { openDatabase, type OpenDatabase } from "../../../src/app/setup/open-database.js";
import { jobs } from "../../../src/jobs/jobs.js";
import { tablesWrittenOnce } from "../../../src/persistence/database/grant-runtime.js";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { runImports } from "../../../src/services/imports/run-imports.js";
import { demo, openTestApp, type TestApp } from "../../graphql/open-test-app.js";
import { createTestDatabase, dropTestDatabase } from "../../kit/databases.js";
import { bytesOf } from "../../services/imports/open-feed.js";
import { receiveFile } from "../../../src/services/imports/files/receive-file.js";
import { saveFeed } from "../../../src/services/imports/feeds/save-feed.js";
import { undoImport } from "../../../src/services/imports/start-import.js";

const publisher = "third-gate-allotments";
const password = "for-tests-only";
const owner = "prepwright_test_owner";
const program = { actor: { kind: "PROGRAM", name: "test" }, requestId: null } as const;

describe("a service whose role owns nothing (examples/postgres-roles.sql)", () => {
  let admin: string;
  let settings: Environment;
  let database: OpenDatabase;
  let work: BackgroundWork;
  let app: TestApp;
  const logged: string[] = [];

  const as = (role: string): string => Object.assign(new URL(admin), { username: role, password }).href;
  const settingsOf = (url: string): Environment => {
    const read = readEnvironment({ DATABASE_URL: url, LOG_LEVEL: "warn" });
    if (!read.ok) throw new Error(read.faults.join());
    return read.value;
  };
  const log = pino({ level: "warn" }, { write: (line: string) => void logged.push(line) });
  const withClient = async <T>(url: string, ask: (client: pg.Client) => Promise<T>): Promise<T> => {
    const client = new pg.Client({ connectionString: url });
    await client.connect();
    return ask(client).finally(() => client.end());
  };
  const onServer = (url: string, sql: string) => withClient(url, (client) => client.query(sql));

  beforeAll(async () => {
    admin = await createTestDatabase("empty");
    const name = new URL(admin).pathname.slice(1);
    await onServer(
      admin,
      `DO $$ BEGIN CREATE ROLE ${owner} LOGIN PASSWORD '${password}'; EXCEPTION WHEN duplicate_object THEN NULL; END $$;
       ALTER DATABASE ${name} OWNER TO ${owner}`,
    );
    const roles = await readFile("examples/postgres-roles.sql", "utf8");
    // What psql puts in place of its variable. Twice: it says that it may be run as often as one likes.
    for (let n = 0; n < 2; n += 1) await onServer(admin, roles.replace(/:'service_password'/g, `'${password}'`));
    await migrateDatabase(settingsOf(as(owner)), "prepwright_service", log);
    settings = settingsOf(as("prepwright_service"));
    database = await openDatabase(settings, log);
    work = await startBackgroundWork(database, settings, log);
    app = await openTestApp(database.deps.data);
  });
  afterAll(async () => {
    await work.close();
    await app.close();
    await database.close();
    await dropTestDatabase(admin);
  });

  /** By this worker, or by the one of the background work. */
  const ended = async (run: string) => {
    for (;;) {
      await runImports(database.deps, "worker-1");
      const state = (await database.deps.data.importRuns.byId(run))?.state;
      if (state !== "QUEUED" && state !== "RUNNING") return state;
      await wait(20);
    }
  };

  it("loads what is shipped, publishes, computes, withdraws, and gives and takes tokens and webhooks", async () => {
    const loaded = await loadSeeds(database.deps, demo);
    expect(loaded.ok).toBe(true);
    const query = `{ plan(publisher: "${publisher}", slug: "bean-night") { scaled(servings: 7) { shoppingList { lines { food { slug } } } } } }`;
    const answer = await app.ask(query);
    expect([answer.errors, JSON.stringify(answer.data).includes("slug")]).toEqual([[], true]);
    const token = await app.tokenFor(publisher, ["ADMIN", "WRITE", "PUBLISH", "READ_DRAFTS"]);
    const change = async (name: string, input: string, shape = "") => {
      const { data, errors } = await app.ask(
        `mutation { a: ${name}(input: ${input}) { ${shape} problems { code } } }`,
        {},
        token,
      );
      expect([name, errors, (data?.["a"] as { problems: unknown } | undefined)?.problems]).toEqual([name, [], []]);
    };
    const text = JSON.stringify(`kind: plan
publisher: ${publisher}
slug: carrots
title: Carrots raw
locale: en-GB
measured-in: metric
serves: 4
meals:
  - slug: carrots
    title: Carrots
    day: 0
    lines:
      - { food: carrot, amount: 300 g }
    steps:
      - { do: Grate the carrots., time: 5 min, uses: [carrot] }
`);
    await change(
      "saveDocuments",
      `{ publisher: "${publisher}", texts: [{ name: "a", text: ${text} }], idempotencyKey: "k" }`,
    );
    await change("publishPlan", `{ publisher: "${publisher}", slug: "carrots", expectedVersion: 1 }`);
    await change("withdrawPlan", `{ publisher: "${publisher}", slug: "carrots", revision: 1, reason: "A test." }`);
    await change("createWebhook", `{ publisher: "${publisher}", url: "https://receiver.example/" }`);
    await change("createToken", `{ publisher: "${publisher}", name: "more", scopes: [WRITE] }`);
    await change("revokeToken", `{ id: "${token.slice(11, 19)}" }`);
  });

  it("imports prices, foods and documents, and takes them back", async () => {
    const feeds = [
      ["PRICES", null, "food,pack,content,price\negg,box,6 piece,1.50\n", { currency: "XTS", locale: "en" }],
      ["FOODS", null, "slug,name,protein-g\nown-carrot,Carrot,1\n", { locale: "en" }],
      ["RECIPES", publisher, JSON.stringify({ "@type": "Recipe", name: "Egg pot", recipeIngredient: ["4 eggs"] }), {}],
    ] as const;
    for (const [kind, whose, text, more] of feeds) {
      const slug = kind.toLowerCase();
      const limits = { changed: 1, quarantined: 1 };
      const saved = await saveFeed(database.deps, program, {
        ...{ publisher: whose, slug, kind },
        settings: { source: "A test", limits, ...more },
      });
      expect([kind, saved]).toMatchObject([kind, { ok: true }]);
      const file = { publisher: whose, slug, name: "f", bytes: bytesOf(text), dryRun: false, force: false };
      const received = await receiveFile(database.deps, program, file);
      if (!received.ok) throw new Error(JSON.stringify(received.problems));
      expect([kind, await ended(received.value.run)]).toEqual([kind, "DONE"]);
      const undone = await undoImport(database.deps, program, { run: received.value.run });
      if (!undone.ok) throw new Error(JSON.stringify(undone.problems));
      expect([kind, await ended(undone.value.run)]).toEqual([kind, "DONE"]);
    }
  });

  it.each(jobs.map((job) => [job.name, job] as const))("does the job %s", async (_name, job) => {
    await job.run(database.deps);
  });

  it("was refused nothing by the database in all that", () => {
    expect(logged.filter((line) => /42501|permission denied|must be owner/.test(line))).toEqual([]);
  });

  it("starts again beside it, and after another migrate", async () => {
    await migrateDatabase(settingsOf(as(owner)), "prepwright_service", log);
    const again = await openDatabase(settings, log);
    expect(await again.database.pendingMigrations()).toEqual([]);
    await again.close();
  });

  describe("cannot, though somebody had its password,", () => {
    const refusals: readonly (readonly [string, string])[] = [
      ...tablesWrittenOnce.flatMap((table): (readonly [string, string])[] => [
        [`empty ${table}`, `DELETE FROM ${table}`],
        [`cut ${table} off`, `TRUNCATE ${table} CASCADE`],
        [`switch off what guards ${table}`, `ALTER TABLE ${table} DISABLE TRIGGER ALL`],
        [`drop ${table}`, `DROP TABLE ${table} CASCADE`],
      ]),
      ["change the audit trail", "UPDATE audit_entries SET action = 'x'"],
      ["change a revision's document", "UPDATE revisions SET document = '{}'"],
      ["change a revision's number", "UPDATE revisions SET revision = 99"],
      ["change what a revision froze", "UPDATE revision_foods SET food = 'x'"],
      ["change a rule set", "UPDATE rule_sets SET content = '{}'"],
      ["change what is told of a change", "UPDATE changes SET kind = 'PLAN_WITHDRAWN'"],
      ["forget a migration", "DELETE FROM _prisma_migrations"],
      [
        "replace a function of ours",
        "CREATE OR REPLACE FUNCTION refuse_to_change_the_audit_trail() RETURNS trigger LANGUAGE sql AS ''",
      ],
      ["make a table", "CREATE TABLE mine (a INT)"],
      ["go round triggers", "SET session_replication_role = replica"],
      ["become the owner", `SET ROLE ${owner}`],
      ["make itself mighty", "ALTER ROLE prepwright_service SUPERUSER"],
      ["read files of the server", "SELECT pg_read_file('/etc/passwd')"],
      ["run programs on the server", "COPY (SELECT 1) TO PROGRAM 'true'"],
    ];
    it.each(refusals)("%s", async (_what, sql) => {
      // 42501: insufficient privilege (PostgreSQL, appendix A).
      await expect(onServer(settings.databaseUrl ?? "", sql)).rejects.toMatchObject({ code: "42501" });
    });
  });

  it("is told whom to ask where a migration is missing", async () => {
    const last = await withClient(admin, async (client) => {
      const { rows } = await client.query(
        "DELETE FROM _prisma_migrations WHERE migration_name = (SELECT max(migration_name) FROM _prisma_migrations) RETURNING *",
      );
      return rows[0] as Record<string, unknown>;
    });
    await expect(openDatabase(settings, log)).rejects.toThrow(/prepwright migrate/);
    const names = Object.keys(last);
    await withClient(admin, (client) =>
      client.query(
        `INSERT INTO _prisma_migrations (${names.join()}) VALUES (${names.map((_, at) => `$${at + 1}`).join()})`,
        Object.values(last),
      ),
    );
  });

  it("is not made of a role that is mighty, is the owner's own, or is not there", async () => {
    const other = "prepwright_test_mighty";
    await onServer(
      admin,
      `DO $$ BEGIN CREATE ROLE ${other}; EXCEPTION WHEN duplicate_object THEN NULL; END $$; GRANT ${owner} TO ${other}`,
    );
    for (const [role, why] of [
      [owner, "whatever the owner may"],
      [other, "whatever the owner may"],
      [new URL(admin).username, "whatever the owner may"],
      ["no such; role", "there is no such role"],
    ]) {
      await expect(migrateDatabase(settingsOf(as(owner)), role ?? "", log)).rejects.toThrow(why);
    }
  });
});
