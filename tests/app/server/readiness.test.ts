import pg from "pg";
import request from "supertest";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { createReadiness } from "../../../src/app/server/readiness.js";
import { openServer } from "../../../src/persistence/database/open-server.js";
import { openTestApp } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases, describeOnServer, type TestDatabase } from "../../kit/databases.js";
import { startPostgres } from "../../kit/postgres/start-postgres.js";

const codes = async (readiness: ReturnType<typeof createReadiness>): Promise<readonly string[]> =>
  (await readiness.check()).map(({ code }) => code);

describeOnBothDatabases("a process is ready", (open) => {
  let database: TestDatabase;

  beforeAll(async () => {
    database = await open();
  });

  it("where the database answers and has every migration", async () => {
    expect(await createReadiness({ ...database, patience: 30_000 }).check()).toEqual([]);
  });

  it("no more where the database lacks a migration, which is named", async () => {
    const [last] = (
      await database.sql.query(`SELECT "migration_name" FROM "_prisma_migrations" ORDER BY 1 DESC LIMIT 1`, [])
    ).rows;
    await database.sql.query(`UPDATE "_prisma_migrations" SET "rolled_back_at" = now() WHERE "migration_name" = $1`, [
      last?.["migration_name"],
    ]);
    expect(await createReadiness({ ...database, patience: 30_000 }).check()).toEqual([
      { code: "MIGRATIONS_PENDING", message: expect.stringContaining(String(last?.["migration_name"])) },
    ]);
    await database.sql.query(`UPDATE "_prisma_migrations" SET "rolled_back_at" = NULL`, []);
    expect(await createReadiness({ ...database, patience: 30_000 }).check()).toEqual([]);
  });

  it("no more where it was told to stop or has too much to do, and lists everything that is wrong", async () => {
    const readiness = createReadiness({ ...database, patience: 30_000 });
    readiness.watch(() => "Too much.");
    expect(await codes(readiness)).toEqual(["OVERLOADED"]);
    readiness.leave();
    expect(await codes(readiness)).toEqual(["STOPPING", "OVERLOADED"]);
  });
});

describeOnServer("a database that hangs", (open) => {
  it("makes a process not ready in good time, and probes do not queue up for it", async () => {
    const database = await open();
    const readiness = createReadiness({ ...database, patience: 200 });
    const other = new pg.Client({ connectionString: database.url ?? "" });
    await other.connect();
    await other.query(`BEGIN; LOCK TABLE "_prisma_migrations" IN ACCESS EXCLUSIVE MODE`);
    const begun = performance.now();
    const checks = await Promise.all(Array.from({ length: 20 }, () => codes(readiness)));
    expect(new Set(checks.map(String))).toEqual(new Set(["DATABASE_SILENT"]));
    expect(performance.now() - begun).toBeLessThan(1_000);
    const { rows } = await other.query(
      `SELECT count(*)::int AS "waiting" FROM pg_stat_activity WHERE wait_event_type = 'Lock' AND datname = current_database()`,
    );
    expect(rows).toEqual([{ waiting: 1 }]);
    await other.query("ROLLBACK");
    await other.end();
    await expect.poll(() => codes(readiness)).toEqual([]);
  });
});

describe("a database server that is gone", () => {
  let server: Awaited<ReturnType<typeof startPostgres>>;

  beforeAll(async () => {
    server = await startPostgres();
  });
  afterAll(() => server.stop());

  it("makes a service not ready, and leaves it alive", async () => {
    const opened = await openServer(await server.createDatabase("gone"));
    const app = await openTestApp(opened.data, undefined, undefined, {}, { readiness: createReadiness(opened) });
    const ask = async (path: string) => {
      const { status, body } = await request(app.app.server).get(path);
      return [status, body];
    };
    expect(await ask("/readyz")).toEqual([200, { status: "ready" }]);
    await server.stop();
    expect(await ask("/readyz")).toEqual([
      503,
      { status: "not ready", reasons: [{ code: "DATABASE_SILENT", message: "The database cannot be reached." }] },
    ]);
    expect(await ask("/healthz")).toEqual([200, { status: "ok" }]);
    await app.close();
    await opened.close();
  });
});
