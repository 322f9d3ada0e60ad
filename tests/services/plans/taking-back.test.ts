import { XMLParser } from "fast-xml-parser";
import request, { type Response } from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { demoBundle, openTestApp, renamed, type TestApp } from "../../graphql/open-test-app.js";
import { demo } from "../../graphql/open-test-app.js";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { describeOnBothDatabases } from "../../kit/databases.js";

const publisher = "third-gate-allotments";
const reason = "The soak is <too> short.";
const parts = ["", "/list", "/session", "/storage", "/servings-table", "/mail"];
const unpublish = `mutation ($input: UnpublishPlanInput!) { unpublishPlan(input: $input) {
  plan { revision withdrawnBecause newest { revision } } problems { code message path } } }`;
const withdraw = `mutation ($input: WithdrawPlanInput!) { withdrawPlan(input: $input) {
  plan { revision newest { revision } } problems { code path } } }`;
const planQuery = `query ($slug: String!, $revision: Int) {
  plan(publisher: "${publisher}", slug: $slug, revision: $revision) { revision withdrawnBecause } }`;

describeOnBothDatabases("a plan that is taken back", (open) => {
  let test: TestApp;
  let token: string;

  beforeAll(async () => {
    const { data } = await open();
    test = await openTestApp(data);
    const loaded = await loadSeeds(test.deps, demo);
    expect(loaded.ok).toBe(true);
    token = await test.tokenFor(publisher, ["PUBLISH"]);
  });
  afterAll(() => test.close());

  const get = async (address: string): Promise<Response> => request(test.app.server).get(address);
  /** So many revisions under a name of its own. */
  const publish = async (slug: string, revisions: number): Promise<void> => {
    for (let number = 1; number <= revisions; number += 1) {
      const bundle = renamed(demoBundle("bean-night"), slug, `Beans, ${String(number)}`);
      await test.deps.data.revisions.publish(bundle, new Date(`2026-02-0${String(number)}T10:00:00Z`));
    }
  };
  const takeBack = async (slug: string): Promise<unknown> => {
    const { data, errors } = await test.ask(unpublish, { input: { publisher, slug, reason } }, token);
    expect(errors).toEqual([]);
    return data?.["unpublishPlan"];
  };

  it("says so, and why, wherever it is asked for, and is still found by its numbers", async () => {
    await publish("gone", 2);
    expect(await takeBack("gone")).toEqual({
      plan: { revision: 2, withdrawnBecause: reason, newest: null },
      problems: [],
    });
    const { data, errors } = await test.ask(planQuery, { slug: "gone" });
    expect(data).toEqual({ plan: null });
    expect(errors).toMatchObject([
      { path: ["plan"], extensions: { code: "WITHDRAWN", problems: [{ at: "2026-03-01", because: reason }] } },
    ]);
    for (const revision of [1, 2]) {
      const found = await test.ask(planQuery, { slug: "gone", revision });
      expect(found).toMatchObject({ errors: [], data: { plan: { revision, withdrawnBecause: reason } } });
      expect((await get(`/v1/plans/${publisher}/gone?revision=${String(revision)}`)).status).toBe(200);
      expect((await get(`/p/${publisher}/gone?revision=${String(revision)}`)).status).toBe(200);
    }
    for (const part of parts) {
      const answer = await get(`/v1/plans/${publisher}/gone${part}`);
      expect([part, answer.status]).toEqual([part, 410]);
      expect(answer.type).toBe("application/problem+json");
      expect(answer.body).toMatchObject({
        type: "/problems/withdrawn",
        problems: [{ code: "WITHDRAWN", message: expect.stringContaining(reason) }],
      });
    }
    for (const page of ["", "/list"]) {
      const answer = await get(`/p/${publisher}/gone${page}?servings=40`);
      expect([page, answer.status]).toEqual([page, 410]);
      expect(answer.text).toContain("on 1 March 2026. The reason given: The soak is &lt;too&gt; short.");
    }
    // The publisher's own words are in the language they were written in.
    const german = await request(test.app.server).get(`/p/${publisher}/gone`).set("accept-language", "de");
    expect([german.status, german.headers["vary"]]).toEqual([410, "Accept-Language"]);
    expect(german.text).toContain('<html lang="de">');
    expect(german.text).toMatch(/1\. März 2026.*<span lang="en-GB">The soak is &lt;too&gt; short/);
    expect(german.text).toContain('<span lang="en-GB">Beans, 2</span>');
    const card = await get(`/p/${publisher}/gone/card`);
    expect([card.status, card.body.problems]).toMatchObject([
      410,
      [{ code: "WITHDRAWN", text: `The author withdrew “Beans, 2” on 1 March 2026. The reason given: ${reason}` }],
    ]);
    expect((await get("/problems/withdrawn")).status).toBe(200);
  });

  it("is named where it is one of several on a list", async () => {
    await publish("listed", 1);
    await takeBack("listed");
    const plans = ["bean-night", "listed", "no-such-plan"].map((slug) => ({ publisher, slug, servings: 2 }));
    const { errors } = await test.ask(
      "query ($plans: [PlanPortionInput!]!) { shoppingList(plans: $plans) { lines { food { slug } } } }",
      { plans },
    );
    expect(errors[0]?.extensions["problems"]).toMatchObject([
      { code: "WITHDRAWN", path: ["plans", 1] },
      { code: "UNKNOWN_PLAN", path: ["plans", 2] },
    ]);
    const list = await request(test.app.server).post("/v1/shopping-list").send({ plans });
    expect([list.status, list.body.problems.map(({ code }: { code: string }) => code)]).toEqual([
      422,
      ["WITHDRAWN", "UNKNOWN_PLAN"],
    ]);
    const page = await get(`/p/${publisher}/bean-night/list?plan=${publisher}/listed`);
    expect(page.status).toBe(410);
  });

  it("leaves lists and feeds; Atom keeps a tombstone with the reason (RFC 6721), until it is published again", async () => {
    await publish("followed", 2);
    const parser = new XMLParser({
      ignoreAttributes: false,
      isArray: (name) => ["entry", "at:deleted-entry"].includes(name),
    });
    const read = async () => {
      const { text } = await get(`/v1/publishers/${publisher}/feed.atom`);
      const { feed } = parser.parse(text) as {
        feed: {
          updated: string;
          "@_xmlns:at"?: string;
          entry: readonly { id: string; title: string }[];
          "at:deleted-entry"?: readonly Record<string, string>[];
        };
      };
      return feed;
    };
    const entry = (await read()).entry.find(({ title }) => title === "Beans, 2");
    expect(entry?.id).toMatch(/^urn:uuid:/);
    await takeBack("followed");
    const after = await read();
    expect(after["@_xmlns:at"]).toBe("http://purl.org/atompub/tombstones/1.0");
    expect(after.entry.map(({ id }) => id)).not.toContain(entry?.id);
    expect(after["at:deleted-entry"]).toContainEqual({
      "@_ref": entry?.id,
      "@_when": "2026-03-01T09:00:00Z",
      "at:comment": "The soak is <too> short.",
    });
    expect(after.updated).toBe("2026-03-01T09:00:00Z");
    const json = await get(`/v1/publishers/${publisher}/feed.json`);
    expect(json.text).not.toContain(entry?.id);
    expect((await get(`/v1/plans?publisher=${publisher}`)).text).not.toContain('"followed"');
    const changes = await test.ask(`{ changes(publisher: "${publisher}", last: 2) {
      edges { node { kind plan { slug revision } } } } }`);
    expect(changes.data).toMatchObject({
      changes: {
        edges: [1, 2].map((revision) => ({ node: { kind: "PLAN_WITHDRAWN", plan: { slug: "followed", revision } } })),
      },
    });
    await publish("followed", 3);
    expect((await read()).entry.map(({ id }) => id)).toContain(entry?.id);
    expect((await get(`/v1/plans/${publisher}/followed`)).status).toBe(200);
  });

  it("may be one revision, with all others where its writer says so", async () => {
    await publish("stepwise", 3);
    const ask = async (revision: number, then?: string) => {
      const input = { publisher, slug: "stepwise", revision, reason, ...(then === undefined ? {} : { then }) };
      return (await test.ask(withdraw, { input }, token)).data?.["withdrawPlan"];
    };
    expect(await ask(3)).toEqual({ plan: { revision: 3, newest: { revision: 2 } }, problems: [] });
    expect(await ask(1, "NOTHING")).toEqual({ plan: { revision: 1, newest: null }, problems: [] });
    expect(await ask(2, "NOTHING")).toEqual({
      plan: null,
      problems: [{ code: "ALREADY_WITHDRAWN", path: ["input", "revision"] }],
    });
    expect((await get(`/v1/plans/${publisher}/stepwise`)).status).toBe(410);
  });

  it("is refused where there is nothing to take back, and to tokens without PUBLISH", async () => {
    await publish("twice", 1);
    await takeBack("twice");
    expect(await takeBack("twice")).toMatchObject({
      plan: null,
      problems: [{ code: "WITHDRAWN", path: ["input", "slug"] }],
    });
    expect(await takeBack("twise")).toMatchObject({ plan: null, problems: [{ code: "UNKNOWN_PLAN" }] });
    const input = { publisher, slug: "bean-night", reason };
    for (const wrong of [undefined, await test.tokenFor(publisher, ["WRITE", "READ_DRAFTS"])]) {
      const { errors } = await test.ask(unpublish, { input }, wrong);
      expect(errors[0]?.extensions["code"]).toBe(wrong === undefined ? "UNAUTHENTICATED" : "FORBIDDEN");
    }
    const blank = await test.ask(unpublish, { input: { ...input, reason: " " } }, token);
    expect(blank.data).toMatchObject({ unpublishPlan: { plan: null, problems: [{ path: ["input", "reason"] }] } });
    expect((await get(`/v1/plans/${publisher}/bean-night`)).status).toBe(200);
    expect((await get(`/v1/plans/${publisher}/no-such-plan`)).status).toBe(404);
    expect((await get(`/p/${publisher}/no-such-plan`)).status).toBe(404);
  });
});
