import { readFile } from "node:fs/promises";
import request from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { PlanBundle } from "../../src/domain/model/plan.js";
import { mostAnswerBytes } from "../../src/http/answer-size.js";
import { describeOnEmbedded } from "../kit/databases.js";
import { demo, demoBundle, renamed } from "../graphql/open-test-app.js";
import { openRest, publisher, type RestApp } from "../rest/open-rest.js";

const copies = Array.from({ length: 50 }, (_, at) => ({ publisher, slug: `copy-${at}`, servings: 4 }));

const foods = demo.foods.map(({ slug }) => slug);
/** Each is warned of in each plan. */
const notOffered = foods.flatMap((from) => foods.map((to) => ({ from, to }))).slice(1, 201);

/** A plan of more text than anybody reads, as no door would let it in: 2,400 lines of 1,900 letters. */
const longPlan = (): PlanBundle => planOfLines("endless", 2_400, "a mark ".repeat(270));

const planOfLines = (slug: string, count: number, mark: string): PlanBundle => {
  const bundle = renamed(demoBundle("bean-night"), slug, "Endless");
  const pattern = bundle.plan.meals.flatMap(({ lines }) => lines).find(({ item }) => item.kind === "FOOD");
  const [first, ...others] = bundle.plan.meals;
  if (first === undefined || pattern === undefined) throw new Error("a plan without a line of food");
  const lines = Array.from({ length: count }, (_, at) => ({ ...pattern, id: `l${at}`, mark }));
  return { ...bundle, plan: { ...bundle.plan, meals: [{ ...first, steps: [], lines }, ...others] } };
};

describeOnEmbedded("an answer that is larger than anybody reads", (open) => {
  let app: RestApp;
  let token: string;

  beforeAll(async () => {
    app = await openRest(open);
    for (const [at, { slug }] of copies.entries()) {
      const bundle = demoBundle(demo.plans[at % demo.plans.length]?.slug ?? "");
      await app.deps.data.revisions.publish(renamed(bundle, slug), new Date(Date.UTC(2026, 0, 1, 0, at)));
    }
    await app.deps.data.revisions.publish(longPlan(), new Date(Date.UTC(2026, 0, 1)));
    token = await app.tokenFor(publisher, ["WRITE", "READ_DRAFTS"]);
  });
  afterAll(() => app.close());

  const listOf = async (household: object, form = "application/json") =>
    request(app.app.server).post("/v1/shopping-list").set("accept", form).send({ plans: copies, household });

  it.each(["", ".md", "/revisions/1"])(
    "is refused over REST with what to do, and the next is answered: %s",
    async (form) => {
      const { status, body, headers } = await app.get(`/v1/plans/${publisher}/endless${form}`);
      expect([status, body.type, headers["cache-control"]]).toEqual([422, "/problems/answer-too-large", "no-store"]);
      expect(body.detail).toContain("Request less");
      expect((await app.get(`/v1/plans/${publisher}/copy-1${form}`)).status).toBe(200);
    },
  );

  it("is refused on a page for people, as a page", async () => {
    const { status, headers, text } = await request(app.app.server).get(`/p/${publisher}/endless`);
    expect([status, headers["content-type"]]).toEqual([422, "text/html; charset=utf-8"]);
    expect(text).toContain("Ask for less");
  });

  it("is refused over GraphQL, in a query and in a list of aliases", async () => {
    const fields = "warnings { code message path }";
    const household = { swaps: notOffered };
    const asked = `query ($p: [PlanPortionInput!]!, $h: HouseholdInput) { ${Array.from({ length: 3 }, (_, at) => `l${at}: shoppingList(plans: $p, household: $h) { ${fields} }`).join(" ")} }`;
    const { status, errors, data, text } = await app.ask(asked, { p: copies, h: household });
    expect([status, errors[0]?.extensions["code"], data]).toEqual([400, "ANSWER_TOO_LARGE", undefined]);
    expect(JSON.parse(text)).toHaveProperty("extensions.cost.asked");
    expect(errors[0]?.message).toContain("Request less");
  });

  it("is refused where a draft of 300 kB is asked for under fifteen names; a mutation says that it was done", async () => {
    const remark = `# ${"a remark of a writer who has much to say. ".repeat(7_000)}\n`;
    const kale = await readFile("seeds/components/washed-kale.yaml", "utf8");
    const text = `${remark}${kale.replace("slug: washed-kale", "slug: long-remark")}`;
    const names = Array.from({ length: 15 }, (_, at) => `t${at}: text`).join(" ");
    const save = (selection: string) =>
      app.ask(
        `mutation ($input: SaveDocumentsInput!) { saveDocuments(input: $input) { problems { message } drafts { version draft { document { ${selection} } } } } }`,
        { input: { publisher, texts: [{ name: "long.yaml", text }] } },
        token,
      );
    const saved = await save(names);
    expect([saved.status, saved.errors[0]?.extensions["code"]]).toEqual([400, "ANSWER_TOO_LARGE"]);
    expect(saved.errors[0]?.message).toContain("was executed");
    const draft = (selection: string) =>
      app.ask(
        `{ componentDraft(publisher: "${publisher}", slug: "long-remark") { document { ${selection} } } }`,
        {},
        token,
      );
    expect((await draft(names)).errors[0]?.extensions["code"]).toBe("ANSWER_TOO_LARGE");
    const { data } = await draft("text");
    expect(data).toEqual({ componentDraft: { document: { text } } });
  });

  it("is none of the largest that are usual: fifty plans in a list in each form, two hundred rows, a hundred plans on a page", async () => {
    const sizes: Record<string, number> = {};
    const sent = (name: string, status: number, bytes: number): void => {
      expect([name, status]).toEqual([name, 200]);
      sizes[name] = bytes;
    };
    const household = { diets: ["vegan", "gluten-free"], onHand: [{ food: "carrot", amount: "1", unit: "kg" }] };
    for (const form of ["application/json", "text/markdown", "text/csv"]) {
      const { status, headers } = await listOf(household, form);
      sent(`fifty plans as ${form}`, status, Number(headers["content-length"]));
    }
    for (const path of [
      `/v1/plans/${publisher}/copy-1/servings-table?from=1&to=200`,
      `/v1/plans/${publisher}/copy-1?servings=100`,
      `/v1/plans/${publisher}/copy-1/revisions/1`,
      "/v1/plans?first=100",
      "/v1/foods?first=100",
      `/p/${publisher}/copy-1/list?${copies
        .slice(2, 20)
        .map(({ slug }) => `plan=${publisher}/${slug}:40`)
        .join("&")}`,
    ]) {
      const { status, text } = await request(app.app.server).get(path);
      sent(path.slice(0, 60), status, Buffer.byteLength(text));
    }
    const { status, text } = await app.ask(`{ plans(first: 100) { edges { node { slug title publisher { name }
      meals { title lines { written food { slug nutrients { nutrient per100g } } swaps { note } } steps { text } }
      components { title lines { written food { slug } } steps { text } } } } } }`);
    sent("a hundred plans over GraphQL", status, Buffer.byteLength(text));
    console.info(JSON.stringify(sizes));
    expect(Math.max(...Object.values(sizes))).toBeLessThan(mostAnswerBytes);
  });

  it("is refused where little of it is sent and much of it held: aliases and lists of a plan of 8,000 lines", async () => {
    await app.deps.data.revisions.publish(planOfLines("wide", 8_000, ""), new Date(Date.UTC(2026, 0, 1)));
    const wide = `plan(publisher: "${publisher}", slug: "wide")`;
    const times = (count: number): string =>
      `{ ${wide} { ${Array.from({ length: count }, (_, at) => `a${at}: scaled(servings: ${at + 1}) { servings }`).join(" ")} } }`;
    const { status, errors, data } = await app.ask(times(28));
    expect([status, errors[0]?.extensions["code"], data]).toEqual([400, "ANSWER_TOO_LARGE", undefined]);
    expect(errors[0]?.message).toContain("Request less");
    expect((await app.ask(times(3))).errors).toEqual([]);
    const plans = Array.from({ length: 30 }, (_, at) => ({ publisher, slug: "wide", servings: at + 1 }));
    const list = await request(app.app.server).post("/v1/shopping-list").send({ plans });
    expect([list.status, list.body.type]).toEqual([422, "/problems/answer-too-large"]);
    expect(list.body.detail).toContain("Request less");
    const shopping = await app.ask(
      "query ($p: [PlanPortionInput!]!) { shopping(plans: $p) { list { lines { __typename } } } }",
      { p: plans },
    );
    expect(shopping.errors[0]?.extensions["code"]).toBe("ANSWER_TOO_LARGE");
  });
});
