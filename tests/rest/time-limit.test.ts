import { request as httpRequest } from "node:http";
import type { AddressInfo } from "node:net";
import request from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { openCachedDeps } from "../../src/app/setup/open-cache.js";
import { usualEngine } from "../../src/graphql/server/engine-options.js";
import { loadSeeds } from "../../src/services/drafts/load-seeds.js";
import { demo, openTestApp, type TestApp } from "../graphql/open-test-app.js";
import { describeOnServer, type TestDatabase } from "../kit/databases.js";
import { lockTables } from "../kit/postgres/locked-tables.js";
import { askRest } from "./described-answers.js";
import { planOf, publisher } from "./open-rest.js";

const path = planOf("bean-night");

describeOnServer("an answer over REST that takes too long", (open) => {
  let database: TestDatabase;
  let app: TestApp;

  const openApp = (queryTime: number, deps: Partial<Pick<TestApp["deps"], "cache">> = {}, data = database.data) =>
    openTestApp(data, undefined, undefined, deps, { graphql: { ...usualEngine, queryTime } });

  beforeAll(async () => {
    database = await open();
    app = await openApp(1_000);
    await loadSeeds(app.deps, demo);
  });
  afterAll(async () => {
    await app.close();
  });

  // What is asked needs the tables, so its statement waits for the lock.
  const tables = lockTables(() => database.url);

  it("is a problem document with 504 as the description says, a page for people, and nothing goes on in the server", async () => {
    const portion = { publisher, slug: "bean-night", servings: 2 };
    const asked = [
      askRest(app.app, "GET", path),
      askRest(app.app, "GET", "/v1/plans"),
      askRest(app.app, "POST", "/v1/shopping-list", { body: { plans: [portion] } }),
    ];
    await tables.untilRunning(asked.length);
    for (const { status, headers, body } of await Promise.all(asked)) {
      expect([status, body.type, headers["cache-control"]]).toEqual([504, "/problems/timed-out", "no-store"]);
    }
    await tables.untilRunning(0);
    const pages = ["/", `/p/${publisher}/bean-night`, `/p/${publisher}/bean-night/list`];
    const shown = await Promise.all(pages.map((page) => request(app.app.server).get(page).set("accept", "text/html")));
    for (const { status, headers, text } of shown) {
      expect([status, headers["content-type"]]).toEqual([504, "text/html; charset=utf-8"]);
      expect(text).toContain("took too long");
    }
    expect((await request(app.app.server).get(`/p/${publisher}/bean-night/card`)).status).toBe(504);
    await tables.untilRunning(0);
    expect(app.logged.filter((line) => line.includes('"level":50'))).toEqual([]);
    await tables.unlock();
    expect((await askRest(app.app, "GET", path)).status).toBe(200);
  });

  it("is ended when whoever asked goes away, and who waits for the same is answered", async () => {
    const kept = await openCachedDeps({ deps: app.deps, database }, 16);
    const slow = await openApp(20_000, { cache: kept.deps.cache! }, kept.deps.data);
    await slow.app.listen({ port: 0, host: "127.0.0.1" });
    const { port } = slow.app.server.address() as AddressInfo;
    // The address as a whole, host and all, is what is remembered.
    const first = httpRequest({ port, host: "127.0.0.1", path });
    first.on("error", () => undefined);
    first.end();
    await tables.untilRunning(1);
    const second = fetch(`http://127.0.0.1:${port}${path}`);
    await new Promise((later) => setTimeout(later, 100));
    first.destroy();
    await new Promise((later) => setTimeout(later, 100));
    await tables.unlock();
    expect((await second).status).toBe(200);
    await tables.untilRunning(0);
    await slow.close();
    await kept.close();
  });
});
