import { request as httpRequest } from "node:http";
import type { AddressInfo } from "node:net";
import pg from "pg";
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from "vitest";
import { usualEngine } from "../../src/graphql/engine-options.js";
import { loadSeeds } from "../../src/services/load-seeds.js";
import { describeOnServer, type TestDatabase } from "../kit/databases.js";
import { demo, openTestApp, type TestApp } from "./open-test-app.js";

const question = '{ plan(publisher: "third-gate-allotments", slug: "bean-night") { title } }';

describeOnServer("a request that takes too long", (open) => {
  let database: TestDatabase;
  let app: TestApp;
  let other: pg.Client;
  /** Within a transaction the server shows its activity as it first was, so who looks is not who locks. */
  let watcher: pg.Client;

  beforeAll(async () => {
    database = await open();
    app = await openTestApp(database.data, undefined, undefined, undefined, {
      graphql: { ...usualEngine, queryTime: 2_000 },
    });
    await loadSeeds(app.deps, demo);
    await app.app.listen({ port: 0, host: "127.0.0.1" });
    other = new pg.Client({ connectionString: database.url ?? "", application_name: "another" });
    watcher = new pg.Client({ connectionString: database.url ?? "", application_name: "watcher" });
    await Promise.all([other.connect(), watcher.connect()]);
  });
  afterAll(async () => {
    await Promise.all([other.end(), watcher.end()]);
    await app.close();
  });

  // What is asked needs the table, so its statement waits for the lock.
  beforeEach(async () => {
    await other.query("BEGIN");
    await other.query('LOCK TABLE "revisions", "plans", "publishers" IN ACCESS EXCLUSIVE MODE');
  });
  afterEach(() => other.query("ROLLBACK"));

  /** Statements of the service that wait or run in the server. */
  const waiting = async (): Promise<number> => {
    const { rows } = await watcher.query<{ count: number }>(
      "SELECT count(*)::int AS count FROM pg_stat_activity WHERE datname = current_database() AND application_name = 'prepwright' AND state <> 'idle'",
    );
    return rows[0]?.count ?? -1;
  };
  const until = async (count: number): Promise<number> => {
    for (let tries = 0; tries < 100 && (await waiting()) !== count; tries += 1) {
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
    return waiting();
  };

  it("is answered with 504, and its statement is cancelled in the server", async () => {
    const asked = app.ask(question);
    expect(await until(1)).toBe(1);
    const { status, errors, data } = await asked;
    expect([status, errors[0]?.extensions["code"], data]).toEqual([504, "TIMED_OUT", undefined]);
    expect(await until(0)).toBe(0);
    expect(app.logged.filter((line) => line.includes('"level":50'))).toEqual([]);
  });

  it("leaves the connections good for the next, however many are asked at once", async () => {
    const all = await Promise.all(Array.from({ length: 12 }, () => app.ask(question)));
    expect(all.map(({ status }) => status)).toEqual(all.map(() => 504));
    expect(await until(0)).toBe(0);
    await other.query("ROLLBACK");
    const after = await Promise.all(Array.from({ length: 12 }, () => app.ask(question)));
    expect(after.map(({ status, errors }) => [status, errors])).toEqual(after.map(() => [200, []]));
  });

  it("is ended when whoever asked goes away", async () => {
    const slow = await openTestApp(database.data);
    await slow.app.listen({ port: 0, host: "127.0.0.1" });
    const { port } = slow.app.server.address() as AddressInfo;
    const asked = httpRequest({
      ...{ port, host: "127.0.0.1", path: "/graphql", method: "POST" },
      headers: { "content-type": "application/json" },
    });
    asked.on("error", () => undefined);
    asked.end(JSON.stringify({ query: question }));
    expect(await until(1)).toBe(1);
    asked.destroy();
    expect(await until(0)).toBe(0);
    await slow.close();
  });
});
