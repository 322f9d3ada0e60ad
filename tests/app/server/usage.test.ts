import { afterAll, beforeAll, expect, it } from "vitest";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { openCache } from "../../../src/services/cache/cache.js";
import { forgetUsage } from "../../../src/services/usage/read-usage.js";
import { demo, demoBundle, openTestApp, renamed, type TestApp } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases, type TestDatabase } from "../../kit/databases.js";
import { demoSlugs, planOf, publisher } from "../../rest/open-rest.js";

const [first = "", second = ""] = demoSlugs;
const createToken = `mutation ($input: CreateTokenInput!) { createToken(input: $input) {
  token { id scopes pointsPerMinute } secret problems { code path message } } }`;
const tokens = `query ($publisher: String) { tokens(publisher: $publisher) { edges { node { id name pointsPerMinute usage(days: 3) { day requests refused points } } } } }`;
const requests = `query ($publisher: String!, $slug: String, $first: Int, $after: String) {
  planRequests(publisher: $publisher, slug: $slug, first: $first, after: $after) { edges { cursor node { day slug requests } } pageInfo { hasNextPage endCursor } } }`;
const byName = `query ($publisher: String!) { plan(publisher: $publisher, slug: "${first}") { title } ...Other }
  fragment Other on Query { other: plan(publisher: $publisher, slug: "${second}") { title } ...Again } fragment Again on Query { other: plan(publisher: $publisher, slug: "${second}") { slug } }`;

interface Row {
  readonly day: string;
  readonly slug: string;
  readonly requests: number;
}

describeOnBothDatabases("what is counted of requests", (open) => {
  let database: TestDatabase;
  let app: TestApp;
  let now = new Date("2026-03-01T09:00:00Z");
  let writer: string;
  let admin: string;
  const start = async (perToken = 6_000_000): Promise<void> => {
    const rateLimit = { perAddress: 0, perToken, refusedTokensPerAddress: 3 };
    app = await openTestApp(database.data, undefined, () => now, { cache: openCache(10_000_000) }, { rateLimit });
  };
  /** Sums are written every ten seconds, and when a process ends. */
  const restart = async (perToken?: number): Promise<void> => {
    await app.close();
    await start(perToken);
  };
  const get = async (url: string, token?: string): Promise<number> =>
    (await app.app.inject({ url, headers: token === undefined ? {} : { authorization: `Bearer ${token}` } }))
      .statusCode;
  const counted = async (more: object = {}, token = writer) => {
    const { data, errors } = await app.ask(requests, { publisher, ...more }, token);
    expect(errors).toEqual([]);
    return data?.["planRequests"] as {
      edges: readonly { node: Row }[];
      pageInfo: { hasNextPage: boolean; endCursor: string };
    };
  };
  const rows = async (more?: object): Promise<readonly Row[]> =>
    (await counted(more)).edges.map(({ node }) => node).toSorted((a, b) => (a.slug < b.slug ? -1 : 1));
  const made = async (input: object) => {
    const { data } = await app.ask(createToken, { input: { publisher, name: "app", ...input } }, admin);
    return data?.["createToken"] as { token: { id: string } | null; secret: string; problems: readonly object[] };
  };

  beforeAll(async () => {
    database = await open();
    await start();
    const loaded = await loadSeeds(app.deps, demo);
    expect(loaded.ok).toBe(true);
    writer = await app.tokenFor(publisher, ["READ_DRAFTS"]);
    admin = await app.tokenFor(publisher, ["ADMIN"]);
  });
  afterAll(() => app.close());

  it("is how often readers were given a plan, in any form, and nothing that was refused, is no plan, or a writer asked", async () => {
    const { secret } = await made({ scopes: ["READ"] });
    expect(await get(planOf(first))).toBe(200);
    expect(await get(`${planOf(first)}/list?servings=40&locale=pl`, secret)).toBe(200);
    expect(await get(`/p/${publisher}/${first}`)).toBe(200);
    // A written answer counts as one that is written anew.
    for (let n = 0; n < 3; n += 1) expect((await app.ask(byName, { publisher })).errors).toEqual([]);
    expect(await get(planOf(first), writer)).toBe(200);
    expect(await get(`${planOf(first)}?servings=none`)).toBe(400);
    expect(await get(planOf("no-such-plan"))).toBe(404);
    expect((await app.ask(`{ plan(publisher: "${publisher}", slug: "nothing-\\u0000") { title } }`)).data).toEqual({
      plan: null,
    });
    expect(await get("/v1/plans")).toBe(200);
    // Neither a head alone, nor a redirect, nor a component that is called like a plan.
    expect((await app.app.inject({ method: "HEAD", url: planOf(first) })).statusCode).toBe(200);
    await app.deps.data.revisions.publish(renamed(demoBundle(first), "boiled-barley"), now);
    expect(await get(`/v1/components/${publisher}/boiled-barley`)).toBe(200);
    expect(await get(`/p/${publisher}/${first}/`)).toBe(308);
    await restart();
    const day = "2026-03-01";
    expect(await rows()).toEqual(
      [
        { day, slug: first, requests: 6 },
        { day, slug: second, requests: 3 },
      ].toSorted((a, b) => (a.slug < b.slug ? -1 : 1)),
    );
    expect(await rows({ slug: second })).toEqual([{ day, slug: second, requests: 3 }]);
    for (const slug of ["no-such-plan", "\u0000", ""]) {
      const { errors } = await app.ask(requests, { publisher, slug }, writer);
      expect(errors[0]).toMatchObject({ extensions: { code: "UNKNOWN_PLAN", at: ["slug"] } });
    }
    const rest = await app.app.inject({
      url: `/v1/publishers/${publisher}/plan-requests?slug=${second}`,
      headers: { authorization: `Bearer ${writer}` },
    });
    expect(rest.json()).toEqual({ items: [{ day, slug: second, requests: 3 }], next: null, previous: null });
    expect(await get(`/v1/publishers/${publisher}/plan-requests`)).toBe(401);
    expect(await get(`/v1/publishers/${publisher}/plan-requests`, secret)).toBe(403);
  });

  it("is added up over days and processes, paged newest first, and forgotten after 400 days", async () => {
    now = new Date("2026-03-02T00:00:01Z");
    const others = await openTestApp(database.data, undefined, () => now);
    await others.app.inject({ url: planOf(first) });
    await get(planOf(first));
    await Promise.all([others.close(), restart()]);
    const page = await counted({ first: 1 });
    expect(page.edges.map(({ node }) => node)).toEqual([{ day: "2026-03-02", slug: first, requests: 2 }]);
    const next = await counted({ first: 10, after: page.pageInfo.endCursor });
    expect(next.edges.map(({ node }) => node.day)).toEqual(["2026-03-01", "2026-03-01"]);
    expect(next.pageInfo.hasNextPage).toBe(false);
    const later = { ...app.deps, clock: () => new Date("2027-04-06T12:00:00Z") };
    expect((await forgetUsage(later)).forgotten).toBeGreaterThan(0);
    expect((await rows()).map(({ day }) => day)).toEqual(["2026-03-02"]);
  });

  it("is what each token used, and its own limit holds below that of the service", async () => {
    const { token, secret, problems } = await made({ scopes: ["READ"], pointsPerMinute: 1_200 });
    expect([token, problems]).toEqual([{ id: secret.slice(11, 19), scopes: ["READ"], pointsPerMinute: 1_200 }, []]);
    const asked = await app.app.inject({ url: "/v1/foods", headers: { authorization: `Bearer ${secret}` } });
    expect(asked.headers["ratelimit-policy"]).toBe('"token";q=1200;w=60');
    expect([await get("/v1/foods", secret), await get("/v1/foods", secret)]).toEqual([200, 429]);
    // Others are not kept out by it, and with it no more is to be had than the service gives.
    expect(await get("/v1/foods", writer)).toBe(200);
    await restart(1_100);
    const again = await app.app.inject({ url: "/schemas/food.json", headers: { authorization: `Bearer ${secret}` } });
    expect(again.headers["ratelimit-policy"]).toBe('"token";q=1100;w=60');
    await restart(0);
    const alone = await app.app.inject({ url: "/schemas/food.json", headers: { authorization: `Bearer ${secret}` } });
    expect(alone.headers["ratelimit-policy"]).toBe('"token";q=1200;w=60');
    const { data } = await app.ask(tokens, { publisher }, admin);
    const { edges } = data?.["tokens"] as { edges: readonly { node: { id: string; usage: readonly object[] } }[] };
    expect(edges.find(({ node }) => node.id === token?.id)?.node.usage).toEqual([
      { day: "2026-03-02", requests: 4, refused: 1, points: 500 + 500 + 1 },
    ]);
  });

  it("refuses a limit that is none, and days that are none, with the place", async () => {
    for (const pointsPerMinute of [0, 999, -1, 100_000_001]) {
      const { token, problems } = await made({ scopes: ["READ"], pointsPerMinute });
      expect([token, problems]).toEqual([
        null,
        [expect.objectContaining({ code: "BAD_SHAPE", path: ["input", "pointsPerMinute"] })],
      ]);
    }
    const { errors } = await app.ask(tokens.replace("days: 3", "days: 367"), { publisher }, admin);
    expect(errors[0]).toMatchObject({ extensions: { problems: [{ path: ["days"] }] } });
  });
});
