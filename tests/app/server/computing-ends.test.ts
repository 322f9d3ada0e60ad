import type { AddressInfo } from "node:net";
import { beforeAll, describe, expect, it } from "vitest";
import { usualEngine } from "../../../src/graphql/server/engine-options.js";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { openTimeSlicer, type TimeSlicer } from "../../../src/services/time-slices.js";
import { demo, demoBundle, openTestApp, type TestApp } from "../../graphql/open-test-app.js";
import { describeOnEmbedded, type TestDatabase } from "../../kit/databases.js";

const { plan, foods } = demoBundle("bean-night");

/** What the service was asked when one answer took half a minute although a query had a second. */
const household = {
  onHand: Array.from({ length: 200 }, (_, at) => ({
    food: foods[at % foods.length]?.slug,
    amount: String(at + 1),
    unit: "g",
  })),
  diets: Array.from({ length: 200 }, () => "gluten-free"),
  swaps: Array.from({ length: 200 }, (_, at) => ({
    from: foods[at % foods.length]?.slug,
    to: foods[(at + 1 + Math.floor(at / foods.length)) % foods.length]?.slug,
  })),
};
const table = `query ($h: HouseholdInput) { plan(publisher: "${plan.publisher}", slug: "${plan.slug}") {
  servingsTable(from: 1, to: 200, household: $h) { servings } } }`;
const sessions = (servings: number, slug = plan.slug): string =>
  `{ plan(publisher: "${plan.publisher}", slug: "${slug}") { scaled(servings: ${servings}) { session { totalMinutes } } } }`;

/** Each look at this clock finds so many milliseconds gone. */
function hurriedPace(milliseconds: number): TimeSlicer {
  let now = 0;
  return openTimeSlicer(() => (now += milliseconds));
}

describeOnEmbedded("computing", (open) => {
  let database: TestDatabase;
  const opened = async (slicer: TimeSlicer, points = 0): Promise<TestApp> => {
    const app = await openTestApp(
      database.data,
      undefined,
      undefined,
      { slicer },
      {
        graphql: { ...usualEngine, queryTime: 1_000 },
        rateLimit: { perAddress: points, perToken: 0, refusedTokensPerAddress: 0 },
      },
    );
    return app;
  };
  beforeAll(async () => {
    database = await open();
    const app = await openTestApp(database.data);
    await loadSeeds(app.deps, demo);
    await app.close();
  });

  describe("beyond the time of a request", () => {
    it("ends with 504 over GraphQL, REST and on a page, and whoever asks next with time left is answered in full", async () => {
      const late = await opened(hurriedPace(20));
      expect((await late.ask(table, { h: household })).status).toBe(504);
      const list = {
        plans: Array.from({ length: 50 }, (_, at) => ({
          publisher: plan.publisher,
          slug: demo.bundles[at % demo.bundles.length]?.plan.slug,
          servings: at + 1,
        })),
        household: { diets: household.diets },
      };
      const post = { method: "POST", url: "/v1/shopping-list", payload: list } as const;
      expect((await late.app.inject(post)).statusCode).toBe(504);
      expect((await late.app.inject({ url: `/p/${plan.publisher}/${plan.slug}?servings=77` })).statusCode).toBe(504);
      await late.close();

      const inTime = await opened(openTimeSlicer(() => 0));
      const { status, data, errors } = await inTime.ask(table, { h: household });
      expect([status, errors]).toEqual([200, []]);
      expect((data as { plan: { servingsTable: unknown[] } }).plan.servingsTable).toHaveLength(200);
      await inTime.close();
    });

    it("lets others have their turn meanwhile: each is answered before a long one is", async () => {
      const shared = await opened(hurriedPace(1));
      await shared.app.listen({ port: 0, host: "127.0.0.1" });
      const { port } = shared.app.server.address() as AddressInfo;
      const order: string[] = [];
      const long = shared.ask(sessions(77)).then(({ status }) => order.push(`long ${status}`));
      for (let asked = 0; asked < 5; asked += 1) {
        order.push(`health ${(await fetch(`http://127.0.0.1:${port}/healthz`)).status}`);
      }
      await long;
      expect(order.slice(0, 3)).toEqual(["health 200", "health 200", "health 200"]);
      await shared.close();
    });
  });

  it("is charged by its steps where a search took more of them than its price pays for", async () => {
    const app = await opened(
      openTimeSlicer(() => 0),
      1_000_000,
    );
    const leftAfter = async (query: string): Promise<number> => {
      const answer = await app.app.inject({ method: "POST", url: "/graphql", payload: { query } });
      return Number(/r=(\d+)/.exec(String(answer.headers["ratelimit"]))?.[1]);
    };
    const start = await leftAfter("{ __typename }");
    // Proved in a few steps: its price alone.
    const easy = await leftAfter(sessions(2));
    expect(start - easy).toBeLessThan(400);
    // A search that spends all its steps.
    const hard = await leftAfter(sessions(40, "eggs-and-oats"));
    expect(easy - hard).toBeGreaterThan(10_000);
    await app.close();
  });
});
