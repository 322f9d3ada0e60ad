import pg from "pg";
import request from "supertest";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openCachedDeps } from "../../../src/app/setup/open-cache.js";
import { openServer } from "../../../src/persistence/database/open-server.js";
import type { OpenedDatabase } from "../../../src/persistence/database/opened-database.js";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { usualEngine } from "../../../src/graphql/server/engine-options.js";
import { demo, openTestApp, type Answer, type TestApp } from "../../graphql/open-test-app.js";
import { describeOnServer } from "../../kit/databases.js";
import { startPostgres, type PostgresServer } from "../../kit/postgres/start-postgres.js";

const publisher = "third-gate-allotments";
const question = `{ plan(publisher: "${publisher}", slug: "bean-night") { title } }`;
const path = `/v1/plans/${publisher}/bean-night`;
const save = `mutation { createPublisher(input: { slug: "fourth-gate", name: "Fourth Gate", idempotencyKey: "once" }) { publisher { slug } } }`;

const codesOf = ({ errors }: Answer): readonly unknown[] => errors.map(({ extensions }) => extensions["code"]);

describe("while the database server is stopped", () => {
  let server: PostgresServer;
  let database: OpenedDatabase;
  let cached: Awaited<ReturnType<typeof openCachedDeps>>;
  let app: TestApp;
  let token: string;

  beforeAll(async () => {
    server = await startPostgres();
    const url = await server.createDatabase("away");
    database = await openServer(url);
    app = await openTestApp(database.data);
    await loadSeeds(app.deps, demo);
    token = await app.tokenFor(null, ["ADMIN"]);
    await app.close();
    cached = await openCachedDeps({ deps: app.deps, database }, 16);
    app = await openTestApp(cached.deps.data, undefined, undefined, { cache: cached.deps.cache! });
  });
  afterAll(async () => {
    await app.close();
    await cached.close();
    await database.close();
    await server.stop();
  });

  const get = (address: string, accept: string, authorization = "") =>
    request(app.app.server)
      .get(address)
      .set({ accept, ...(authorization ? { authorization } : {}) });

  it("every way of asking says so with 503 and when to ask again, also of what it answered from memory before", async () => {
    expect((await app.ask(question)).status).toBe(200);
    expect((await get(path, "application/json")).status).toBe(200);
    await server.halt();

    const asked = await request(app.app.server)
      .post("/graphql")
      .set("accept", "application/graphql-response+json")
      .send({ query: question });
    expect([asked.status, asked.headers["retry-after"], asked.headers["cache-control"]]).toEqual([
      503,
      "2",
      "no-store",
    ]);
    expect(asked.body).toEqual({
      errors: [{ message: expect.stringContaining("Ask again"), extensions: { code: "UNAVAILABLE" } }],
    });
    const changed = await app.ask(save, {}, token);
    expect([changed.status, codesOf(changed), changed.data]).toEqual([503, ["UNAVAILABLE"], undefined]);

    const rest = await get(path, "application/json");
    expect([rest.status, rest.headers["retry-after"], rest.headers["cache-control"]]).toEqual([503, "2", "no-store"]);
    expect(rest.headers["content-type"]).toMatch(/^application\/problem\+json/);
    expect(rest.body).toMatchObject({ status: 503, type: expect.stringMatching(/\/problems\/unavailable$/) });
    const withToken = await get(path, "application/json", `Bearer ${token}`);
    expect([withToken.status, withToken.body.type]).toEqual([503, rest.body.type]);

    const page = await get(`/p/${publisher}/bean-night`, "text/html");
    expect([page.status, page.headers["retry-after"]]).toEqual([503, "2"]);
    expect(page.headers["content-type"]).toMatch(/^text\/html/);
    await server.resume();
  });

  it("an answer of which something is left names the fields that are missing", async () => {
    await server.halt();
    const answer = await app.ask(`{ __typename plan(publisher: "${publisher}", slug: "bean-night") { title } }`);
    expect([answer.status, answer.data, codesOf(answer)]).toEqual([
      200,
      { __typename: "Query", plan: null },
      ["UNAVAILABLE"],
    ]);
    await server.resume();
  });

  it("the log has one line for each such request, which is no error and says why", async () => {
    await server.halt();
    const from = app.logged.length;
    await app.ask(`{ a: ${question.slice(2, -2)} b: food(slug: "carrot") { name } }`);
    await get(path, "application/json");
    const lines = app.logged.slice(from).map((line) => JSON.parse(line) as { level: number; reason?: string });
    expect(lines.map(({ level }) => level)).toEqual([40, 40]);
    for (const { reason } of lines) expect(reason).toMatch(/the database is away: .*ECONNREFUSED/);
    expect(lines.filter((line) => "err" in line)).toEqual([]);
    await server.resume();
  });

  it.each(["fast", "immediate"] as const)(
    "what is cut in the midst of it by a stop (%s) is told the same, and all is well after it",
    async (mode) => {
      const other = new pg.Client({ connectionString: server.url.replace(/postgres$/, "away") });
      other.on("error", () => undefined);
      await other.connect();
      await other.query('BEGIN; LOCK TABLE "plans", "revisions", "publishers" IN ACCESS EXCLUSIVE MODE');
      const unasked = `{ plan(publisher: "${publisher}", slug: "roots-and-barley") { title scaled(servings: 5) { servings } } }`;
      const running = [app.ask(unasked), app.ask(save, {}, token), app.ask(`{ plans { edges { node { slug } } } }`)];
      await expect
        .poll(async () => {
          const { rows } = await other.query(
            "SELECT count(*)::int AS n FROM pg_locks WHERE NOT granted AND locktype = 'relation'",
          );
          return rows[0]?.n;
        })
        .toBe(running.length);
      await server.halt(mode);
      const cut = await Promise.all(running);
      expect(cut.map((answer) => [answer.status, codesOf(answer)])).toEqual(cut.map(() => [503, ["UNAVAILABLE"]]));
      await server.resume();
      await expect.poll(async () => (await app.ask(question)).status).toBe(200);
      const made = await app.ask(save, {}, token);
      expect([made.errors, made.data]).toEqual([[], { createPublisher: { publisher: { slug: "fourth-gate" } } }]);
      expect(app.logged.filter((line) => line.includes('"level":50'))).toEqual([]);
    },
  );
});

describeOnServer("where all connections are taken", (open) => {
  it("a request that gets none in time is told so, and the next is answered", async () => {
    const { url } = await open();
    const database = await openServer(url ?? "", { poolSize: 1 });
    const app = await openTestApp(database.data, undefined, undefined, undefined, {
      graphql: { ...usualEngine, queryTime: 30_000 },
    });
    await loadSeeds(app.deps, demo);
    let release = (): void => undefined;
    const held = database.data.transaction(() => new Promise<void>((done) => (release = done)));
    const refused = await app.ask(question);
    expect([refused.status, codesOf(refused)]).toEqual([503, ["UNAVAILABLE"]]);
    release();
    await held;
    expect((await app.ask(question)).status).toBe(200);
    await app.close();
    await database.close();
  }, 30_000);

  it("by strangers, so that the server takes no more, says the same", async () => {
    const { url, sql } = await open();
    const address = new URL(url ?? "");
    const name = address.pathname.slice(1);
    // A limit that does not hold for a superuser, as the tests are elsewhere.
    const reader = `reader_${name}`;
    await sql.query(
      `CREATE ROLE ${reader} LOGIN PASSWORD 'for-tests-only'; GRANT ALL ON ALL TABLES IN SCHEMA public TO ${reader};
       GRANT ALL ON ALL SEQUENCES IN SCHEMA public TO ${reader}`,
    );
    const database = await openServer(Object.assign(address, { username: reader, password: "for-tests-only" }).href);
    const app = await openTestApp(database.data);
    await loadSeeds(app.deps, demo);
    const limit = (most: number) => sql.query(`ALTER DATABASE ${name} CONNECTION LIMIT ${most}`);
    await limit(0);
    await sql.query(`SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE usename = '${reader}'`);
    await expect.poll(() => database.poolFigures()?.total).toBe(0);
    const refused = await app.ask(question);
    expect([refused.status, codesOf(refused)]).toEqual([503, ["UNAVAILABLE"]]);
    expect(app.logged.at(-1)).toContain("too many connections");
    await limit(-1);
    expect((await app.ask(question)).status).toBe(200);
    await app.close();
    await database.close();
    await sql.query(`DROP OWNED BY ${reader}; DROP ROLE ${reader}`);
  });
});
