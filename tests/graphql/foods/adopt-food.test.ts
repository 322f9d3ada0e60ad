import request from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { readDocuments } from "../../../src/imports/documents/read-documents.js";
import { loadCatalogue } from "../../../src/services/foods/load-catalogue.js";
import { shippedEdition } from "../../../src/imports/usda/read-usda.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { openFoodTable } from "../../kit/open-food-table.js";
import { openTestApp, type TestApp } from "../open-test-app.js";

const publisher = "north-gate";
const adopt = `mutation ($input: AdoptFoodInput!) { adoptFood(input: $input) {
  draft { kind slug version draft { document { text } } } problems { code message path } } }`;
const search = `query ($publisher: String!) { foods(filter: { search: "Kale raw", publisher: $publisher }) {
  edges { node { slug ndbNo nutrients { nutrient per100g } allergens { code } } } } }`;
const check = `query ($publisher: String!, $texts: [DocumentTextInput!]!) { checkDocuments(publisher: $publisher, texts: $texts) {
  problems { code message } } }`;

describeOnBothDatabases("a food of the open table", (open) => {
  let app: TestApp;
  let writer: string;
  beforeAll(async () => {
    const { data } = await open();
    app = await openTestApp(data);
    const rows = () => Promise.resolve([...openFoodTable.values()]);
    await loadCatalogue(app.deps, { edition: shippedEdition, hash: "test" }, rows);
    await data.publishers.save({ slug: publisher, name: "North Gate" });
    writer = await app.tokenFor(publisher, ["WRITE", "READ_DRAFTS"]);
  });
  afterAll(() => app.close());

  const change = async (input: object, token: string | undefined = writer) => {
    const { data, errors } = await app.ask(adopt, { input: { publisher, ...input } }, token);
    return { errors, done: (data as { adoptFood: Record<string, unknown> } | null)?.adoptFood };
  };

  it("is adopted as a draft with its figures and without a word on allergens", async () => {
    const { errors, done } = await change({ ndbNo: "11233" });
    expect(errors).toEqual([]);
    expect(done).toMatchObject({ draft: { kind: "FOOD", slug: "kale-raw", version: 1 }, problems: [] });
    const { data } = await app.ask(search, { publisher }, writer);
    const [first] = (data as { foods: { edges: readonly { node: Record<string, unknown> }[] } }).foods.edges;
    expect(first?.node).toMatchObject({ slug: "kale-raw", ndbNo: "11233", allergens: [] });
    // USDA SR26, row 11233 "Kale, raw": 49 kcal in 100 g.
    expect(first?.node["nutrients"]).toContainEqual({ nutrient: "energyKcal", per100g: 49 });
    const anybody = await app.ask(search, { publisher });
    expect(JSON.stringify(anybody.data)).not.toContain("kale-raw");
  });

  it("is offered beside the foods of a search, and never among them", async () => {
    const asked = `query ($search: String, $first: Int) { foods(first: $first, filter: { search: $search }) {
      edges { node { slug } } openTable { ndbNo description nutrients { nutrient } } } }`;
    const offered = async (search: string | null, first = 20) => {
      const { data, errors } = await app.ask(asked, { search, first });
      expect(errors).toEqual([]);
      const { foods } = data as unknown as {
        foods: { edges: readonly { node: { slug: string } }[]; openTable: readonly { ndbNo: string }[] };
      };
      return foods;
    };
    const teff = await offered("teff");
    expect(teff.edges).toEqual([]);
    expect(teff.openTable.map(({ ndbNo }) => ndbNo)).toContain("20142");
    expect((await offered("raw")).openTable).toHaveLength(5);
    for (const none of [null, "", "no such thing at all", "%", "\u202e", "'"])
      expect((await offered(none)).openTable).toEqual([]);
  });

  it("is adopted over REST too, by whoever may write for the publisher", async () => {
    const over = (body: object | string, token: string | null = writer, of = publisher) => {
      const asking = request(app.app.server)
        .post(`/v1/publishers/${of}/foods/adopt`)
        .set("content-type", "application/json");
      return (token === null ? asking : asking.set("authorization", `Bearer ${token}`)).send(body);
    };
    const first = await over({ ndbNo: "20142", name: "little grain", idempotencyKey: "one" }).expect(200);
    expect(first.body).toEqual({ kind: "FOOD", slug: "little-grain", version: 1, publisher });
    // Under the same key once.
    expect((await over({ ndbNo: "20142", name: "little grain", idempotencyKey: "one" }).expect(200)).body).toEqual(
      first.body,
    );
    const search = await request(app.app.server).get("/v1/foods?search=teff").expect(200);
    expect(search.body).toMatchObject({
      items: [],
      openTable: [{ ndbNo: expect.stringMatching(/^20\d{3}$/) as string }, {}],
    });
    expect((await over({ ndbNo: "99999" }).expect(422)).body).toMatchObject({
      problems: [{ code: "UNKNOWN_CODE", path: ["ndbNo"] }],
    });
    for (const bad of [
      {},
      { ndbNo: 20142 },
      { ndbNo: "20142", slug: "No Slug" },
      { ndbNo: "20142", extra: 1 },
      [],
      { ndbNo: "1\u00002" },
    ])
      expect((await over(bad).expect(422)).body).toMatchObject({ problems: [{}] });
    await over({ ndbNo: "20142" }, null).expect(401);
    await over({ ndbNo: "20142" }, await app.tokenFor(publisher, ["READ_DRAFTS"])).expect(403);
    await over({ ndbNo: "20142" }, writer, "south-gate").expect(403);
  });

  it("is refused twice, under a number that is none, and without the scope", async () => {
    expect((await change({ ndbNo: "11233" })).done).toMatchObject({ draft: null, problems: [{ code: "STALE_DRAFT" }] });
    for (const ndbNo of ["99999", "", "1\u00002", "x".repeat(300)])
      expect((await change({ ndbNo, slug: "other" })).done).toMatchObject({
        draft: null,
        problems: [{ code: "UNKNOWN_CODE", path: ["input", "ndbNo"] }],
      });
    const reader = await app.tokenFor(publisher, ["READ_DRAFTS"]);
    expect((await change({ ndbNo: "11233" }, reader)).errors).toMatchObject([{ extensions: { code: "FORBIDDEN" } }]);
    expect((await change({ ndbNo: "99999" }, "")).errors).toMatchObject([{ extensions: { code: "UNAUTHENTICATED" } }]);
  });

  it("is offered where a document names a food that nobody knows, with a document that can be pasted", async () => {
    const text = `kind: plan\npublisher: ${publisher}\nslug: week\ntitle: Week\nlocale: en\nmeasured-in: metric\nserves: 2\nmeals:\n  - slug: stew\n    title: Stew\n    day: 0\n    lines:\n      - { food: kale rawe, amount: 100 g }\n      - { food: teff, amount: 100 g }\n`;
    const { data } = await app.ask(check, { publisher, texts: [{ name: "plan.yaml", text }] }, writer);
    const { problems } = (data as { checkDocuments: { problems: readonly { code: string; message: string }[] } })
      .checkDocuments;
    const [near, table] = problems.map(({ message }) => message);
    expect(near).toContain("Did you mean kale-raw?");
    expect(table).toMatch(/usda \d{5} \(Teff/);
    const pasted = /\{kind: food.*\}/.exec(table ?? "")?.[0] ?? "";
    expect(readDocuments(pasted, "pasted.yaml")).toMatchObject({
      problems: [],
      documents: [{ document: { slug: "teff" } }],
    });
  });
});
