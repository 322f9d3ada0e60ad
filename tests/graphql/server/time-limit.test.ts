import { request as httpRequest } from "node:http";
import type { AddressInfo } from "node:net";
import { afterAll, beforeAll, expect, it } from "vitest";
import { usualEngine } from "../../../src/graphql/server/engine-options.js";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { describeOnServer, type TestDatabase } from "../../kit/databases.js";
import { lockTables } from "../../kit/postgres/locked-tables.js";
import { demo, openTestApp, type TestApp } from "../open-test-app.js";

const question = '{ plan(publisher: "third-gate-allotments", slug: "bean-night") { title } }';

describeOnServer("a request that takes too long", (open) => {
  let database: TestDatabase;
  let app: TestApp;

  beforeAll(async () => {
    database = await open();
    app = await openTestApp(database.data, undefined, undefined, undefined, {
      graphql: { ...usualEngine, queryTime: 2_000 },
    });
    await loadSeeds(app.deps, demo);
    await app.app.listen({ port: 0, host: "127.0.0.1" });
  });
  afterAll(async () => {
    await app.close();
  });

  // What is asked needs the table, so its statement waits for the lock.
  const tables = lockTables(() => database.url);

  it("is answered with 504, and its statement is cancelled in the server", async () => {
    const asked = app.ask(question);
    await tables.untilRunning(1);
    const { status, errors, data } = await asked;
    expect([status, errors[0]?.extensions["code"], data]).toEqual([504, "TIMED_OUT", undefined]);
    await tables.untilRunning(0);
    expect(app.logged.filter((line) => line.includes('"level":50'))).toEqual([]);
  });

  it("leaves the connections good for the next, however many are asked at once", async () => {
    const all = await Promise.all(Array.from({ length: 12 }, () => app.ask(question)));
    expect(all.map(({ status }) => status)).toEqual(all.map(() => 504));
    await tables.untilRunning(0);
    await tables.unlock();
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
    await tables.untilRunning(1);
    asked.destroy();
    await tables.untilRunning(0);
    await slow.close();
  });
});
