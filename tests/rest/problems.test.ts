import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases } from "../kit/databases.js";
import { openRest, planOf, publisher, type RestApp } from "./open-rest.js";

describeOnBothDatabases("problems over REST", (open) => {
  let app: RestApp;
  const plan = planOf("bean-night");
  const list = "/v1/shopping-list";
  const portion = { publisher, slug: "bean-night", servings: 2 };

  beforeAll(async () => {
    app = await openRest(open);
  });
  afterAll(() => app.close());

  it("count what is wrong in a sentence", async () => {
    const detailOf = async (body: object) => (await app.rest("POST", list, { body })).body.detail;
    expect(await detailOf({ plans: [{ ...portion, servings: 0 }] })).toMatch(/^One part of the body is wrong\. /);
    expect(
      await detailOf({
        plans: [
          { ...portion, servings: 0 },
          { ...portion, slug: 7 },
        ],
      }),
    ).toMatch(/^2 parts of the body are wrong\. /);
    expect((await app.get(`${plan}?servings=0`)).body.detail).toMatch(/^One parameter is wrong\. /);
  });

  it("are problem documents (RFC 9457) with a type that leads to a page", async () => {
    const answers = [
      await app.get("/v1/nothing"),
      await app.get(`${planOf("none-such")}?servings=3`),
      await app.get(`${plan}?servings=0`),
      await app.get(plan, { accept: "image/png" }),
      await app.rest("DELETE", plan),
      await app.rest("POST", list, { body: "{", headers: { "content-type": "application/json" } }),
      await app.rest("POST", list, { body: "x", headers: { "content-type": "text/plain" } }),
      await app.rest("POST", list, { body: "{}", headers: { "content-type": "application/json; charset=utf-7" } }),
      await app.rest("POST", list, { body: { plans: [] } }),
      await app.rest("POST", list, { body: { plans: [], filler: "x".repeat(1_100_000) } }),
    ];
    expect(answers.map(({ status }) => status)).toEqual([404, 404, 400, 406, 405, 400, 415, 415, 422, 413]);
    for (const { status, headers, body } of answers) {
      expect(headers["content-type"]).toMatch(/^application\/problem\+json/);
      expect(body.status).toBe(status);
      expect(body.requestId).toBe(headers["x-request-id"]);
      expect(headers["cache-control"]).toBe("no-store");
      const page = await app.app.inject(body.type);
      expect(page.statusCode).toBe(200);
      expect(page.headers["content-type"]).toMatch(/^text\/html/);
      expect(page.body).toContain(body.title);
    }
  });

  it.each([
    `${plan}?servingz=3`,
    `${plan}?servings=1&servings=2`,
    `${plan}?include=mealz`,
    `${plan}?diet=vegn`,
    `${plan}/servings-table?to=x`,
    `${plan}.md?include=meals`,
    `${planOf("none-such")}?servings=3`,
    "/v1/plans?diet=vegn",
    "/v1/plans?first=0",
    "/v1/vocabulary?x=1",
  ])("are told in the language of the address, wherever they are found: %s", async (address) => {
    const titles = async (asked: string): Promise<unknown> =>
      ((await app.get(asked)).body.problems as { title: string }[]).map(({ title }) => title);
    const [english, german] = [await titles(address), await titles(`${address}&locale=de`)];
    expect(english).not.toEqual([]);
    expect(german).not.toEqual(english);
  });

  it("name the methods an address takes (RFC 9110 15.5.6), whatever body comes with it", async () => {
    const patched = await app.rest("PATCH", plan, { body: "<x/>", headers: { "content-type": "text/xml" } });
    expect([patched.status, patched.headers["allow"]]).toEqual([405, "GET, HEAD, OPTIONS"]);
    const got = await app.get(list);
    expect([got.status, got.headers["allow"]]).toEqual([405, "POST, OPTIONS"]);
    const asked = await app.rest("OPTIONS", list);
    expect([asked.status, asked.headers["allow"]]).toEqual([204, "POST, OPTIONS"]);
  });

  it("point at the place in a body, all of them at once, and suggest what was meant", async () => {
    const { body, status } = await app.rest("POST", list, {
      body: {
        plans: [{ ...portion, servings: 1.5 }, { publisher, slug: "bean-night", serving: 2 }, portion],
        household: { onHand: [{ food: "carrot", amount: -1, unit: "g" }], sessionStart: { zone: 3 } },
      },
    });
    expect(status).toBe(422);
    const paths = body.problems.map(({ path }: { path: string[] }) => path.join("."));
    expect(paths).toEqual(expect.arrayContaining(["plans.0.servings", "plans.1.serving", "household.onHand.0.amount"]));
    const misspelt = body.problems.find(({ path }: { path: string[] }) => path.join(".") === "plans.1.serving");
    expect(misspelt.message).toContain("servings");
  });

  it("list unknown plans, diets and units of one body together", async () => {
    const { body, status } = await app.rest("POST", list, {
      body: {
        plans: [portion, { ...portion, slug: "none-such" }],
        household: { diets: ["sunlight"], onHand: [{ food: "carrot", amount: 1, unit: "furlong" }] },
      },
    });
    expect(status).toBe(422);
    expect(body.problems.map(({ code }: { code: string }) => code).toSorted()).toEqual([
      "BAD_HOUSEHOLD",
      "UNKNOWN_PLAN",
      "UNKNOWN_UNIT",
    ]);
  });

  it("hold nothing of a fault but its request id, and the log holds the rest", async () => {
    const original = app.deps.data.publishers.bySlugs;
    Object.assign(app.deps.data.publishers, {
      bySlugs: () => Promise.reject(new Error("the secret cellar is flooded")),
    });
    const { status, body, text } = await app.get(plan, { "x-request-id": "cellar-1" });
    Object.assign(app.deps.data.publishers, { bySlugs: original });
    expect([status, body.requestId]).toEqual([500, "cellar-1"]);
    expect(text).not.toContain("cellar is");
    expect(app.logged.join("\n")).toContain("the secret cellar is flooded");
  });

  it("never come for a blank parameter, as forms leave them", async () => {
    const { status } = await app.get(`${plan}?servings=&region=&diet=&diet=&start=&zone=`);
    expect(status).toBe(200);
  });
});
