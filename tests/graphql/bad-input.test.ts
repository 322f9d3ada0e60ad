import request from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases } from "../kit/databases.js";
import { demo, openTestApp, type TestApp } from "./open-test-app.js";
import { loadSeeds } from "../../src/services/drafts/load-seeds.js";

const list = `query List($servings: Int!, $household: HouseholdInput) {
  plan(publisher: "third-gate-allotments", slug: "lentils-and-greens") {
    scaled(servings: $servings, household: $household) { servings shoppingList { lines { toBuy { value } } } }
  }
}`;

describeOnBothDatabases("bad input over GraphQL", (open) => {
  let app: TestApp;

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await loadSeeds(app.deps, demo);
  });
  afterAll(() => app.close());

  const post = () => request(app.app.server).post("/graphql");

  it.each([0, -1, 1_000_000_000])("refuses %d servings with the range, as an error of the field", async (servings) => {
    const { status, data, errors } = await app.ask(list, { servings });
    expect(status).toBe(200);
    expect(data).toEqual({ plan: null });
    expect(errors).toHaveLength(1);
    expect(errors[0]?.path).toEqual(["plan", "scaled"]);
    expect(errors[0]?.extensions).toMatchObject({
      code: "SERVINGS_OUT_OF_RANGE",
      problems: [{ code: "SERVINGS_OUT_OF_RANGE", value: servings, min: 1 }],
    });
  });

  it.each([1.5, "7", null, 1e12, {}])("refuses %j as servings before anything runs", async (servings) => {
    const { status, errors } = await app.ask(list, { servings });
    expect(status).toBe(400);
    expect(errors[0]?.extensions["code"]).toBe("BAD_USER_INPUT");
  });

  it("names an unknown unit on hand, where it stands, and what is near", async () => {
    const household = { onHand: [{ food: "brown-lentils", amount: 1, unit: "cupp" }] };
    const { status, errors } = await app.ask(list, { servings: 2, household });
    expect(status).toBe(200);
    expect(errors[0]?.extensions).toMatchObject({ code: "UNKNOWN_UNIT", at: ["household", "onHand", 0, "unit"] });
    expect(errors[0]?.message).toContain('There is no unit "cupp"');
  });

  it("lists all problems of a household together", async () => {
    const household = { region: "Atlantis", currency: "gold", locale: "!", sessionStart: { zone: "Nowhere" } };
    const { errors } = await app.ask(list, { servings: 2, household });
    expect(errors[0]?.extensions["problems"]).toHaveLength(4);
  });

  it("answers unknown names with null, not with an error", async () => {
    const { status, data, errors } = await app.ask(
      `query ($half: String!) {
      a: plan(publisher: "third-gate-allotments", slug: "nothing") { id }
      b: plan(publisher: "nobody", slug: "lentils-and-greens") { id }
      c: plan(publisher: "third-gate-allotments", slug: "lentils-and-greens", revision: 99) { id }
      d: component(publisher: "third-gate-allotments", slug: "nothing") { id }
      e: food(slug: "nothing") { id }
      f: food(slug: "a\\u0000b") { id }
      g: plan(publisher: "\\u0000", slug: $half) { id }
    }`,
      { half: "\ud800" },
    );
    expect(status).toBe(200);
    expect(errors).toEqual([]);
    expect(data).toEqual({ a: null, b: null, c: null, d: null, e: null, f: null, g: null });
  });

  it("names the plan that a shopping list does not find", async () => {
    const { data, errors } = await app.ask(
      `{ shoppingList(plans: [{ publisher: "third-gate-allotments", slug: "gone", servings: 2 }]) { lines { open } } }`,
    );
    expect(data).toBeNull();
    expect(errors[0]?.extensions).toMatchObject({ code: "UNKNOWN_PLAN", at: ["plans", 0] });
  });

  it.each([0, 51])("refuses a shopping list for %d plans", async (count) => {
    const plans = Array.from({ length: count }, () => ({
      publisher: "third-gate-allotments",
      slug: "bean-night",
      servings: 1,
    }));
    const query = "query ($plans: [PlanPortionInput!]!) { shoppingList(plans: $plans) { lines { open } } }";
    const { errors } = await app.ask(query, { plans });
    expect(errors[0]?.extensions["at"]).toEqual(["plans"]);
  });

  it.each(["bad", "", "%00", Buffer.from('{"x":1}').toString("base64url")])("refuses the cursor %j", async (after) => {
    const query = "query ($after: String) { plans(after: $after) { edges { cursor } } }";
    const { status, errors } = await app.ask(query, { after });
    expect(status).toBe(200);
    expect(errors[0]?.extensions).toMatchObject({ code: "BAD_SHAPE", at: ["after"] });
  });

  it.each([
    "",
    "1",
    "UGxhbg",
    ...["Dog:1", "Plan:1", "Meal:x:y"].map((text) => Buffer.from(text).toString("base64url")),
  ])("refuses the id %j", async (id) => {
    const { errors } = await app.ask("query ($id: ID!) { node(id: $id) { id } }", { id });
    expect(errors[0]?.extensions).toMatchObject({ code: "BAD_SHAPE", at: ["id"] });
  });

  it.each([
    "Plan:00000000-0000-4000-8000-000000000000",
    "Publisher:00000000-0000-4000-8000-000000000000",
    "Meal:00000000-0000-4000-8000-000000000000:soup",
    "Food:%00",
  ])("answers the well-formed id %j of something that is not there with null", async (text) => {
    const id = Buffer.from(text).toString("base64url");
    const { data, errors } = await app.ask("query ($id: ID!) { node(id: $id) { id } }", { id });
    expect(errors).toEqual([]);
    expect(data).toEqual({ node: null });
  });

  it.each([0, 101, -5])("refuses a page of %d", async (first) => {
    const { errors } = await app.ask(`{ foods(first: ${first}) { edges { cursor } } }`);
    expect(errors[0]?.extensions).toMatchObject({ code: "AMOUNT_OUT_OF_RANGE", at: ["first"] });
  });

  it("refuses a search text that is too long or that no database can hold", async () => {
    const query = "query ($search: String) { foods(filter: { search: $search }) { edges { cursor } } }";
    expect((await app.ask(query, { search: "x".repeat(201) })).errors[0]?.extensions["code"]).toBe("TOO_LARGE");
    expect((await app.ask(query, { search: "a\0b" })).errors[0]?.extensions["code"]).toBe("BAD_SHAPE");
    expect((await app.ask(query, { search: "%_\\'\";--" })).errors).toEqual([]);
  });

  it("answers malformed JSON, other content types and charsets, and large bodies in JSON", async () => {
    const malformed = await post().set("content-type", "application/json").send('{"query":');
    expect([malformed.status, malformed.body.errors[0].extensions.code]).toEqual([400, "BAD_REQUEST"]);
    const text = await post().set("content-type", "text/plain").send("{ plans { edges { cursor } } }");
    expect([text.status, text.body.errors[0].extensions.code]).toEqual([415, "UNSUPPORTED_MEDIA_TYPE"]);
    const utf7 = await post().set("content-type", "application/json; charset=utf-7").send("{}");
    expect([utf7.status, utf7.body.errors[0].extensions.code]).toEqual([415, "UNSUPPORTED_MEDIA_TYPE"]);
    const none = await post().send();
    expect([none.status, none.body.errors[0].extensions.code]).toEqual([400, "BAD_REQUEST"]);
    const large = await post().send({ query: "#".repeat(2 * 1024 * 1024) });
    expect([large.status, large.body.errors[0].extensions.code]).toEqual([413, "TOO_LARGE"]);
  });

  it("answers an unknown address and a wrong method in JSON, and with a page where a browser asks", async () => {
    const missing = await request(app.app.server).get("/nowhere");
    expect([missing.status, missing.type, missing.body.status]).toEqual([404, "application/problem+json", 404]);
    const page = await request(app.app.server).get("/nowhere").set("accept", "text/html");
    expect([page.status, page.type]).toEqual([404, "text/html"]);
    const method = await request(app.app.server).put("/graphql").send({});
    expect([method.status, method.headers["allow"]]).toEqual([405, "GET, HEAD, POST"]);
  });

  it("O-40: refuses 200 aliases, 30 levels and too many tokens before execution, each with its limit", async () => {
    const aliases = Array.from({ length: 200 }, (_, index) => `a${index}: plans { edges { cursor } }`).join(" ");
    const aliased = await app.ask(`{ ${aliases} }`);
    expect([aliased.status, aliased.errors[0]?.extensions["code"]]).toEqual([400, "TOO_LARGE"]);
    expect(aliased.errors[0]?.extensions["limit"]).toBe(30);
    const deep = await app.ask(
      `{ plans { edges { node { ${"meals { components { ".repeat(14)} title ${"} }".repeat(14)} } } } }`,
    );
    expect([deep.status, deep.errors[0]?.extensions["code"]]).toEqual([400, "TOO_LARGE"]);
    const long = await app.ask(`{ ${"plans { edges { cursor } } ".repeat(1000)} }`);
    expect([long.status, long.errors[0]?.extensions["code"]]).toEqual([400, "GRAPHQL_PARSE_FAILED"]);
  });

  it("O-40: refuses a list of operations as one error, and an empty list too", async () => {
    const fifty = await post().send(Array.from({ length: 50 }, () => ({ query: "{ __typename }" })));
    expect([fifty.status, fifty.body.errors.length, fifty.body.errors[0].extensions.code]).toEqual([
      400,
      1,
      "BATCHING_REFUSED",
    ]);
    const empty = await post().send([]);
    expect([empty.status, empty.body.errors[0].extensions.code]).toEqual([400, "BATCHING_REFUSED"]);
  });

  it("never answered any of this with a stack trace, and logged nothing as a fault of ours", async () => {
    const { text } = await app.ask("{ nothing }");
    expect(text).not.toContain("node_modules");
    expect(app.logged.filter((line) => line.includes('"level":50'))).toEqual([]);
  });
});
