import { createHash } from "node:crypto";
import CachePolicy from "http-cache-semantics";
import type { Response } from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases } from "../kit/databases.js";
import { demo, demoBundle } from "../graphql/open-test-app.js";
import { openRest, planOf, publisher, type RestApp } from "./open-rest.js";

const day = 24 * 60 * 60 * 1000;

/** What an independent reading of RFC 9111 and RFC 5861 makes of an answer in a shared cache. */
const judge = (url: string, { status, headers }: Response, asked: Record<string, string> = {}): CachePolicy =>
  new CachePolicy(
    { url, method: "GET", headers: asked },
    { status, headers },
    { shared: true, immutableMinTimeToLive: 0 },
  );

describeOnBothDatabases("how long answers over REST may be kept", (open) => {
  let app: RestApp;
  const plan = planOf("roots-and-barley");

  beforeAll(async () => {
    app = await openRest(open);
  });
  afterAll(() => app.close());

  it("keeps a frozen document for a day, so that what is taken back is seen by then, and computes nothing in it", async () => {
    const url = `${plan}/revisions/1`;
    const answer = await app.get(url);
    const policy = judge(url, answer);
    expect(policy.storable()).toBe(true);
    expect(policy.timeToLive()).toBeGreaterThanOrEqual(day - 1000);
    expect(policy.timeToLive()).toBeLessThanOrEqual(day);
    expect(answer.body.document.plan.slug).toBe("roots-and-barley");
    // Only one form and no parameters: nothing but the coding could make it another answer.
    expect(answer.headers["vary"]).toBe("Accept-Encoding");
    expect((await app.get(`${url}?servings=4`)).status).toBe(400);
  });

  it("says the same of a frozen document after foods, prices, the publisher's name and the plan have changed", async () => {
    const before = await app.get(`${plan}/revisions/1`);
    const { data, clock } = app.deps;
    const bundle = demoBundle("roots-and-barley");
    await data.publishers.save({ slug: publisher, name: "Another Name" });
    await data.foods.save(demo.foods.map((food) => ({ ...food, packs: [], aisle: "elsewhere" })));
    await data.revisions.publish({ ...bundle, plan: { ...bundle.plan, title: "Another title" } }, clock());
    await data.revisions.withdraw({ publisher, slug: bundle.plan.slug, revision: 1 }, clock());
    const after = await app.get(`${plan}/revisions/1`);
    expect(after.text).toBe(before.text);
    expect(after.headers["etag"]).toBe(before.headers["etag"]);
    await data.publishers.save(demo.publisher);
    await data.foods.save(demo.foods);
  });

  it("lets a computed answer be a minute old, and asks again with its ETag", async () => {
    for (const url of [plan, `${plan}?revision=1&servings=5`, `${plan}/list`, "/v1/plans", "/v1/foods/carrot"]) {
      const answer = await app.get(url);
      const policy = judge(url, answer);
      expect(policy.storable()).toBe(true);
      // How long it is fresh; `timeToLive` counts the time it may be shown once more while it is asked for again.
      expect(policy.maxAge()).toBe(60);
      // A withdrawal is hidden for two minutes at most.
      expect(policy.timeToLive()).toBeGreaterThan(60_000);
      expect(policy.timeToLive()).toBeLessThanOrEqual(120_000);
      const conditional = policy.revalidationHeaders({ url, method: "GET", headers: {} });
      const again = await app.get(url, conditional as Record<string, string>);
      expect(again.status).toBe(304);
      const { modified } = policy.revalidatedPolicy(
        { url, method: "GET", headers: conditional },
        { status: again.status, headers: again.headers },
      );
      expect(modified).toBe(false);
    }
  });

  it("has changes and feeds asked for each time, and sends nothing where there are none", async () => {
    for (const url of [
      "/v1/changes",
      `/v1/publishers/${publisher}/feed.json`,
      `/v1/publishers/${publisher}/feed.atom`,
    ]) {
      const answer = await app.get(url);
      expect([answer.status, answer.headers["cache-control"]], url).toEqual([200, "no-cache"]);
      expect(judge(url, answer).timeToLive(), url).toBe(0);
      const again = await app.get(url, { "if-none-match": answer.headers["etag"] ?? "" });
      expect(again.status, url).toBe(304);
    }
    await app.deps.data.revisions.withdraw({ publisher, slug: "eggs-and-oats", revision: 1 }, app.deps.clock());
    const before = await app.get("/v1/changes?last=1");
    expect(before.body.items[0]).toMatchObject({ kind: "PLAN_WITHDRAWN", plan: { slug: "eggs-and-oats" } });
  });

  it("keeps answers to a hash over GraphQL by the same rules", async () => {
    const cachingOf = async (query: string): Promise<unknown> => {
      const sha256Hash = createHash("sha256").update(query).digest("hex");
      const extensions = JSON.stringify({ persistedQuery: { version: 1, sha256Hash } });
      const url = `/graphql?${new URLSearchParams({ query, extensions }).toString()}`;
      const { statusCode, headers } = await app.app.inject({ method: "GET", url });
      return [statusCode, headers["cache-control"]];
    };
    const live = (await app.get("/v1/plans")).headers["cache-control"];
    expect(await cachingOf(`{ plan(publisher: "${publisher}", slug: "bean-night") { title } }`)).toEqual([200, live]);
    const changes = "{ ...New } fragment New on Query { changes(first: 1) { edges { node { id } } } }";
    expect(await cachingOf(changes)).toEqual([200, "no-cache"]);
  });

  it("gives another ETag once a price of today is another, though the revision is the same", async () => {
    const url = `${plan}/list?revision=1`;
    const before = await app.get(url);
    const dearer = demo.foods.map((food) => ({
      ...food,
      packs: food.packs.map((pack) => ({ ...pack, price: pack.price && { ...pack.price, amount: "99.00" } })),
    }));
    await app.deps.data.foods.save(dearer);
    const after = await app.get(url, { "if-none-match": before.headers["etag"] ?? "" });
    expect(after.status).toBe(200);
    expect(after.headers["etag"]).not.toBe(before.headers["etag"]);
    await app.deps.data.foods.save(demo.foods);
  });

  it("never takes an answer in one form for another, nor a problem for an answer", async () => {
    const json = await app.get(plan, { accept: "application/json" });
    const policy = judge(plan, json, { accept: "application/json" });
    expect(
      policy.satisfiesWithoutRevalidation({ url: plan, method: "GET", headers: { accept: "text/markdown" } }),
    ).toBe(false);
    expect(
      policy.satisfiesWithoutRevalidation({ url: plan, method: "GET", headers: { accept: "application/json" } }),
    ).toBe(true);
    const problem = await app.get(`${plan}?servings=none`);
    expect(judge(plan, problem).storable()).toBe(false);
    const made = await app.rest("POST", "/v1/shopping-list", {
      body: { plans: [{ publisher, slug: "bean-night", servings: 2 }] },
    });
    expect(made.headers["cache-control"]).toBe("no-store");
  });
});
