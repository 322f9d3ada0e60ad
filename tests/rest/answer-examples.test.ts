import { afterAll, beforeAll, expect, it } from "vitest";
import { endpoints } from "../../src/rest/endpoints.js";
import { describeOnEmbedded } from "../kit/databases.js";
import { openRest, publisher, type RestApp } from "./open-rest.js";

const plan = `/v1/plans/${publisher}/bean-night`;
const body = { plans: [{ publisher, slug: "bean-night", servings: 2 }], household: { region: "GB", locale: "en-GB" } };

/** One question for each answer in JSON that anybody may ask for. */
const asked: Readonly<Record<string, string | readonly [string, object]>> = {
  listPlans: "/v1/plans?diet=vegetarian&first=1&include=facts,count",
  getPlan: `${plan}?servings=4`,
  getRevision: `${plan}/revisions/1`,
  getShoppingList: `${plan}/list?servings=4`,
  getSession: `${plan}/session?servings=4`,
  getStorage: `${plan}/storage?servings=4`,
  getServingsTable: `${plan}/servings-table?from=2&to=4`,
  makeShoppingList: ["/v1/shopping-list", body],
  getComponent: `/v1/components/${publisher}/boiled-barley`,
  listFoods: "/v1/foods?search=lemon&first=1",
  getFood: "/v1/foods/lemon",
  readLines: ["/v1/read-lines", { texts: ["2 lemons, juiced"], locale: "en-GB" }],
  getVocabulary: "/v1/vocabulary?locale=en",
  listPublishers: "/v1/publishers?first=1",
  getPublisher: `/v1/publishers/${publisher}`,
  getFeed: `/v1/publishers/${publisher}/feed.json`,
  listChanges: "/v1/changes?first=1",
};

const uuid = /[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}/g;

/** Of each list the first entry, of texts the beginning, and of what is new each time something that is always the same. */
function short(value: unknown, key = ""): unknown {
  if (Array.isArray(value)) return value.slice(0, 1).map((each) => short(each, key));
  if (typeof value === "object" && value !== null)
    return Object.fromEntries(Object.entries(value).map(([name, member]) => [name, short(member, name)]));
  if (typeof value !== "string") return value;
  if (key === "end") return "WyIxMyJd";
  return value.replace(uuid, "0b5f0a3e-7c1d-4c8e-9a52-3f1d2b6c7e80").replace(/([?&]after=)[\w%-]+/, "$1WyIxMyJd");
}

describeOnEmbedded("examples of answers", (open) => {
  let app: RestApp;
  beforeAll(async () => {
    app = await openRest(open, { publicUrl: "https://plans.example" });
  });
  afterAll(() => app.close());

  it("are what the demo answers, cut short (npx vitest run tests/rest/answer-examples.test.ts --update, then npm run generate:openapi)", async () => {
    const examples: Record<string, unknown> = {};
    for (const [operation, question] of Object.entries(asked)) {
      const { status, body: answer } =
        typeof question === "string"
          ? await app.get(question)
          : await app.rest("POST", question[0], { body: question[1] });
      expect(status, operation).toBe(200);
      examples[operation] = short(answer);
    }
    const problem = await app.get(`${plan}?servings=0`);
    examples["problem"] = { ...(short(problem.body) as object), requestId: "0b5f0a3e-7c1d-4c8e-9a52-3f1d2b6c7e80" };
    await expect(`${JSON.stringify(examples, null, 2)}\n`).toMatchFileSnapshot("../../src/rest/answer-examples.json");
  });

  it("are there for every answer in JSON that anybody may ask for", () => {
    const json = endpoints.filter(
      ({ scope, writings, operationId }) =>
        scope === undefined &&
        writings.some(({ format }) => /\bjson\b/.test(format.type) && format.suffix === "json") &&
        operationId !== "getOpenapi",
    );
    expect(Object.keys(asked)).toEqual(expect.arrayContaining(json.map(({ operationId }) => operationId)));
  });
});
