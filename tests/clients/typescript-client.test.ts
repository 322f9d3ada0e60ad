import { readFileSync } from "node:fs";
import createClient from "openapi-fetch";
import {
  connect,
  type ChangePage,
  type Operation,
  type paths,
  type Plan,
  type PlanSummary,
  type Prepwright,
  type Problem,
} from "prepwright-client";
import { afterAll, beforeAll, describe, expect, expectTypeOf, it } from "vitest";
import { loadSeeds } from "../../src/services/drafts/load-seeds.js";
import { demo, openTestApp, type TestApp } from "../graphql/open-test-app.js";
import { describeOnEmbedded } from "../kit/databases.js";

const publisher = "third-gate-allotments";
const beans = { publisher, slug: "bean-night" };
const codesOf = ({ problems }: Problem): readonly string[] => problems.map(({ code }) => code);

describeOnEmbedded("the client package", (open) => {
  let app: TestApp;
  let address = "";
  let prepwright: Prepwright;
  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await loadSeeds(app.deps, demo);
    address = await app.app.listen({ port: 0, host: "127.0.0.1" });
    prepwright = connect({ address });
  });
  afterAll(() => app.close());

  it("answers a plan for a household, typed", async () => {
    const answer = await prepwright.plan(beans, { servings: 7, region: "GB", locale: "de", diet: ["gluten-free"] });
    if (!answer.ok) throw new Error(answer.problem.detail);
    expectTypeOf(answer.data).toEqualTypeOf<Plan>();
    expect(answer.data.servings).toBe(7);
    expect(answer.data.meals.length).toBeGreaterThan(0);
    const plain = await fetch(
      `${address}/v1/plans/${publisher}/bean-night?servings=7&region=GB&locale=de&diet=gluten-free`,
    );
    expect(answer.data).toEqual(await plain.json());
  });

  it("answers parts of a plan, and its texts", async () => {
    const parts = await prepwright.planParts(beans, { servings: 5, include: ["meals", "shoppingList"] });
    expect(parts).toMatchObject({
      ok: true,
      data: { meals: expect.any(Array), shoppingList: { lines: expect.any(Array) } },
    });
    const texts = {
      md: /^# /,
      txt: /[a-z]/,
      ics: /^BEGIN:VCALENDAR/,
      jsonld: /"@context"/,
    } as const;
    for (const form of ["md", "txt", "ics", "jsonld"] as const) {
      const text = await prepwright.planText(beans, form, { start: "2026-10-25T09:00", zone: "Europe/Berlin" });
      expect(text, form).toMatchObject({ ok: true, data: expect.stringMatching(texts[form]) });
    }
  });

  it("goes through all plans and all changes page by page, each once", async () => {
    const plans: PlanSummary[] = [];
    for await (const page of prepwright.planPages({ first: 2, locale: "de" })) {
      if (!page.ok) throw new Error(page.problem.detail);
      plans.push(...page.data.items);
    }
    expect(plans.map(({ slug }) => slug).toSorted()).toEqual(demo.plans.map(({ slug }) => slug).toSorted());
    const pages: ChangePage[] = [];
    for await (const page of prepwright.changePages({ first: 2 })) {
      if (!page.ok) throw new Error(page.problem.detail);
      pages.push(page.data);
    }
    expect(pages.length).toBeGreaterThan(1);
    const ids = pages.flatMap(({ items }) => items.map(({ id }) => id));
    expect(new Set(ids).size).toBe(ids.length);
    const end = pages.at(-1)?.end;
    const later = await prepwright.changes(end === undefined || end === null ? {} : { after: end });
    expect(later).toMatchObject({ ok: true, data: { items: [] } });
  });

  it("makes one list for several plans", async () => {
    const answer = await prepwright.shoppingList({
      plans: [
        { ...beans, servings: 2 },
        { publisher, slug: "roots-and-barley", servings: 4 },
      ],
      household: {
        region: "XA",
        currency: "XTS",
        onHand: [{ food: "Honig", amount: "ein halbes Glas" }],
        locale: "de",
      },
    });
    if (!answer.ok) throw new Error(answer.problem.detail);
    expect(answer.data.lines.length).toBeGreaterThan(10);
  });

  it("hands on what is wrong as a value, with all of it", async () => {
    const wrong = await prepwright.plan(beans, { servings: 0, diet: ["vegn"] });
    if (wrong.ok) throw new Error("it was answered");
    expect(wrong.problem.status).toBe(400);
    expect(codesOf(wrong.problem).length).toBe(2);
    expect(await prepwright.plan({ publisher, slug: "nothing" })).toMatchObject({
      ok: false,
      problem: { status: 404 },
    });
    expect(await prepwright.planText(beans, "ics")).toMatchObject({
      ok: false,
      problem: { status: 400, problems: [{ path: ["start"] }] },
    });
    expect(await prepwright.shoppingList({ plans: [] })).toMatchObject({ ok: false, problem: { status: 422 } });
    const pages = [];
    for await (const page of prepwright.planPages({ diet: ["vegn"] })) pages.push(page);
    expect(pages).toMatchObject([{ ok: false, problem: { problems: [{ path: ["diet", "0"] }] } }]);
  });

  it("hands on what a proxy says in its own words, and when to ask again", async () => {
    const busy = connect({
      address: "https://plans.example/",
      fetch: () =>
        Promise.resolve(new Response("<h1>Bad gateway</h1>", { status: 502, headers: { "retry-after": "30" } })),
    });
    expect(await busy.plans()).toMatchObject({
      ok: false,
      problem: { status: 502, title: "HTTP 502", detail: "<h1>Bad gateway</h1>", problems: [] },
      retryAfter: 30,
    });
    expect(await busy.graphql("{ __typename }", {})).toMatchObject({
      data: null,
      errors: [{ message: "HTTP 502: <h1>Bad gateway</h1>", extensions: { code: "HTTP_502" } }],
    });
  });

  it("sends its token with every request, and nothing that the service does not let pages send", async () => {
    const sent: Request[] = [];
    const watched = connect({
      address,
      token: "not-a-token",
      fetch: (request) => {
        sent.push(request.clone());
        return fetch(request);
      },
    });
    expect(await watched.plans()).toMatchObject({ ok: false, problem: { status: 401 } });
    await watched.graphql("{ __typename }", {});
    expect(sent.map(({ headers }) => headers.get("authorization"))).toEqual([
      "Bearer not-a-token",
      "Bearer not-a-token",
    ]);
    expect([...new Set(sent.flatMap(({ headers }) => [...headers.keys()]))].toSorted()).toEqual([
      "accept",
      "authorization",
      "content-type",
    ]);
  });

  it("asks over GraphQL, with data and errors as values", async () => {
    const title: Operation<{ readonly plan: { readonly title: string } | null }, { readonly slug: string }> =
      `query ($slug: String!) { plan(publisher: "${publisher}", slug: $slug) { title } }`;
    const { data, errors } = await prepwright.graphql(title, { slug: "bean-night" });
    expectTypeOf(data).toEqualTypeOf<{ readonly plan: { readonly title: string } | null } | null>();
    expect([data?.plan?.title, errors]).toEqual([demo.plans.find(({ slug }) => slug === "bean-night")?.title, []]);
    const wrong = await prepwright.graphql("{ plans { nothing } }", {});
    expect(wrong).toMatchObject({ data: null, errors: [{ extensions: { code: "GRAPHQL_VALIDATION_FAILED" } }] });
  });

  it("is not needed for types: openapi-fetch with the types of openapi.json knows answers and problems without a cast", async () => {
    const client = createClient<paths>({ baseUrl: address });
    const path = { publisher, slug: "bean-night" };
    const { data, error } = await client.GET("/v1/plans/{publisher}/{slug}.json", { params: { path } });
    expectTypeOf(data).toEqualTypeOf<Plan | undefined>();
    expectTypeOf(error).toEqualTypeOf<Problem | undefined>();
    expect(data?.title).toBe(demo.plans.find(({ slug }) => slug === "bean-night")?.title);
    const wrong = await client.GET("/v1/plans/{publisher}/{slug}/session", {
      params: { path, query: { servings: 0 } },
    });
    expectTypeOf(wrong.error).toEqualTypeOf<Problem | undefined>();
    expect(wrong.error?.problems[0]?.path).toEqual(["servings"]);
  });
});

describe("clients/typescript/package.json", () => {
  const read = (file: string) => JSON.parse(readFileSync(file, "utf8")) as Record<string, Record<string, string>>;
  it("has the version of the service, and its one library in the version that is tested", () => {
    const [own, service] = [read("clients/typescript/package.json"), read("package.json")];
    expect(own["version"]).toBe(service["version"]);
    expect(own["engines"]).toBeDefined();
    expect(own["dependencies"]).toEqual({ "openapi-fetch": service["devDependencies"]?.["openapi-fetch"] });
  });
});
