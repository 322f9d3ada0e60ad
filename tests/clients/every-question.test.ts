import { connect, type Answer, type Prepwright } from "prepwright-client";
import type { Response as Answered } from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { createSchema } from "../../src/graphql/schema.js";
import { endpoints } from "../../src/rest/endpoints.js";
import { openRest, publisher, type RestApp } from "../rest/open-rest.js";
import { describeOnEmbedded } from "../kit/databases.js";
import { wrongHouseholds } from "../kit/wrong-households.js";

/** Of an answer, as in the other suites of REST: the few members that are looked at here; a whole plan is compared in tests/rest/figures.test.ts. */
type Json = Answered["body"];

interface Question {
  readonly name: string;
  /** A field of `Query`, and what it is asked with. */
  readonly graphql: { readonly field: string; readonly document: string; readonly variables?: object };
  readonly rest: { readonly operation: string; readonly address: string; readonly body?: object };
  readonly client: (prepwright: Prepwright) => Promise<Answer<unknown>>;
  /** The same figures of both answers. */
  readonly ofGraphql: (field: Json) => unknown;
  readonly ofJson: (body: Json) => unknown;
}

const beans = { publisher, slug: "bean-night" };
const path = { ...beans };
const by = (one: readonly string[], other: readonly string[]): number => (String(one) < String(other) ? -1 : 1);
const money = "{ amount currency }";
const amount = "{ text exact }";

/** Through every address of the service that the package has no call of its own for. */
async function raw<Data>(
  asking: Promise<{ readonly data?: Data; readonly error?: unknown; readonly response: Response }>,
): Promise<Answer<Data>> {
  const { data, error, response } = await asking;
  if (response.ok && data !== undefined) return { ok: true, data };
  throw new Error(`${response.status} ${JSON.stringify(error)}`);
}

const bought = (line: Json): readonly string[] => [line.food.slug, line.need?.text ?? "", line.toBuy?.exact ?? ""];
const household = {
  region: "GB",
  currency: "XTS",
  locale: "de",
  diets: ["gluten-free"],
  avoidAllergens: ["Sellerie"],
  onHand: [{ food: "Honig", amount: "ein halbes Glas" }],
};
const asQuery =
  "servings=7&region=GB&currency=XTS&locale=de&diet=gluten-free&avoid-allergen=Sellerie&onHand=Honig:ein+halbes+Glas";
const portions = [
  { ...beans, servings: 2 },
  { publisher, slug: "roots-and-barley", servings: 4 },
];

const questions: readonly Question[] = [
  {
    name: "a plan for a household",
    graphql: {
      field: "plan",
      document: `query ($household: HouseholdInput) { plan(publisher: "${publisher}", slug: "bean-night") { planId scaling(servings: 7, household: $household) {
        scaled { title shoppingList { lines { food { slug } need ${amount} toBuy ${amount} } cost { atTill ${money} } }
          session { totalMinutes handsOnMinutes } allergens { findings { code presence } } diets { code fits }
          nutrition { nutrients { nutrient perServing } } cautions { code text } meals { meal { title } } } problems { code } } } }`,
      variables: { household },
    },
    rest: { operation: "getPlan", address: `/v1/plans/${publisher}/bean-night?${asQuery}` },
    client: (prepwright) =>
      prepwright.plan(beans, {
        ...{ servings: 7, region: "GB", currency: "XTS", locale: "de", diet: ["gluten-free"] },
        ...{ avoidAllergens: ["Sellerie"], onHand: ["Honig:ein halbes Glas"] },
      }),
    ofGraphql: ({ planId, scaling: { scaled, problems } }) => ({
      ...{ planId, problems, title: scaled.title, session: scaled.session, diets: scaled.diets },
      lines: scaled.shoppingList.lines.map(bought).toSorted(by),
      atTill: scaled.shoppingList.cost.atTill,
      allergens: scaled.allergens.findings,
      nutrients: scaled.nutrition.nutrients,
      cautions: scaled.cautions,
      meals: scaled.meals.map(({ meal }: Json) => meal.title),
    }),
    ofJson: (plan) => ({
      ...{ planId: plan.planId, problems: [], title: plan.title },
      session: plan.session && {
        totalMinutes: plan.session.totalMinutes,
        handsOnMinutes: plan.session.handsOnMinutes,
      },
      diets: plan.diets.map(({ code, fits }: Json) => ({ code, fits })),
      lines: plan.shoppingList.lines.map(bought).toSorted(by),
      atTill: plan.shoppingList.cost.atTill,
      allergens: plan.allergens.findings.map(({ code, presence }: Json) => ({ code, presence })),
      nutrients: plan.nutrition.nutrients.map(({ nutrient, perServing }: Json) => ({ nutrient, perServing })),
      cautions: plan.cautions.map(({ code, text }: Json) => ({ code, text })),
      meals: plan.meals.map(({ title }: Json) => title),
    }),
  },
  {
    name: "one list for several plans",
    graphql: {
      field: "shopping",
      document: `query ($plans: [PlanPortionInput!]!, $household: HouseholdInput) { shopping(plans: $plans, household: $household) {
        list { lines { food { slug } need ${amount} toBuy ${amount} } cost { atTill ${money} unpriced } } problems { code } } }`,
      variables: { plans: portions, household },
    },
    rest: { operation: "makeShoppingList", address: "/v1/shopping-list", body: { plans: portions, household } },
    client: (prepwright) => prepwright.shoppingList({ plans: portions, household }),
    ofGraphql: ({ list, problems }) => ({ problems, cost: list.cost, lines: list.lines.map(bought).toSorted(by) }),
    ofJson: ({ lines, cost: { atTill, unpriced } }) => ({
      ...{ problems: [], cost: { atTill, unpriced } },
      lines: lines.map(bought).toSorted(by),
    }),
  },
  {
    name: "plans by what they are",
    graphql: {
      field: "plans",
      document: `{ plans(filter: { diets: ["vegetarian"], maxSessionMinutes: 200 }, orderBy: SHORTEST_SESSION, first: 2) {
        edges { facts { sessionMinutes } node { slug texts(locale: "de") { title } } } totalCount pageInfo { endCursor } } }`,
    },
    rest: {
      operation: "listPlans",
      address:
        "/v1/plans?diet=vegetarian&max-session-minutes=200&order=shortest-session&first=2&locale=de&include=facts&include=count",
    },
    client: (prepwright) =>
      prepwright.plans({
        ...{ diet: ["vegetarian"], "max-session-minutes": 200, order: "shortest-session", first: 2, locale: "de" },
        include: ["facts", "count"],
      }),
    ofGraphql: ({ edges, totalCount, pageInfo }) => ({
      plans: edges.map(({ facts, node: { slug, texts } }: Json) => [slug, texts.title, facts.sessionMinutes]),
      ...{ totalCount, more: pageInfo.endCursor !== null },
    }),
    ofJson: ({ items, totalCount }) => ({
      plans: items.map(({ slug, title, facts }: Json) => [slug, title, facts.sessionMinutes]),
      ...{ totalCount, more: items.length > 0 },
    }),
  },
  {
    name: "what is new",
    graphql: {
      field: "changes",
      document: `{ changes(first: 3) { edges { cursor node { id kind plan { slug revision } } } } }`,
    },
    rest: { operation: "listChanges", address: "/v1/changes?first=3" },
    client: (prepwright) => prepwright.changes({ first: 3 }),
    ofGraphql: ({ edges }) => edges.map(({ node: { kind, plan } }: Json) => [kind, plan.slug, plan.revision]),
    ofJson: ({ items }) => items.map(({ kind, plan }: Json) => [kind, plan.slug, plan.revision]),
  },
  {
    name: "the closed lists",
    graphql: {
      field: "vocabulary",
      document: `{ vocabulary(locale: "pl") { lists { list codes { code name } } problemKinds { code title parameters } } }`,
    },
    rest: { operation: "getVocabulary", address: "/v1/vocabulary?locale=pl" },
    client: (prepwright) => prepwright.vocabulary("pl"),
    ofGraphql: (vocabulary) => vocabulary,
    ofJson: ({ lists, problemKinds }) => ({
      lists: lists.map(({ list, codes }: Json) => ({
        list,
        codes: codes.map(({ code, name }: Json) => ({ code, name })),
      })),
      problemKinds: problemKinds.map(({ code, title, parameters }: Json) => ({ code, title, parameters })),
    }),
  },
  {
    name: "a food",
    graphql: { field: "food", document: `{ food(slug: "lemon") { slug aisle packs { code content ${amount} } } }` },
    rest: { operation: "getFood", address: "/v1/foods/lemon" },
    client: ({ rest }) => raw(rest.GET("/v1/foods/{slug}", { params: { path: { slug: "lemon" } } })),
    ofGraphql: ({ slug, aisle, packs }) => [slug, aisle, packs.map(({ code, content }: Json) => [code, content.exact])],
    ofJson: ({ slug, aisle, packs }) => [slug, aisle, packs.map(({ code, content }: Json) => [code, content.exact])],
  },
  {
    name: "foods by name",
    graphql: {
      field: "foods",
      document: `{ foods(filter: { search: "lemon" }, first: 5) { edges { node { slug } } } }`,
    },
    rest: { operation: "listFoods", address: "/v1/foods?search=lemon&first=5" },
    client: ({ rest }) => raw(rest.GET("/v1/foods", { params: { query: { search: "lemon", first: 5 } } })),
    ofGraphql: ({ edges }) => edges.map(({ node }: Json) => node.slug),
    ofJson: ({ items }) => items.map(({ slug }: Json) => slug),
  },
  {
    name: "a component",
    graphql: {
      field: "component",
      document: `{ component(publisher: "${publisher}", slug: "boiled-barley") { componentId title yield ${amount} lines { code } } }`,
    },
    rest: { operation: "getComponent", address: `/v1/components/${publisher}/boiled-barley` },
    client: ({ rest }) =>
      raw(rest.GET("/v1/components/{publisher}/{slug}", { params: { path: { publisher, slug: "boiled-barley" } } })),
    ofGraphql: ({ title, lines, yield: made }) => [title, made.exact, lines.map(({ code }: Json) => code)],
    ofJson: ({ title, lines, yield: made }) => [title, made.exact, lines.map(({ code }: Json) => code)],
  },
  {
    name: "publishers",
    graphql: { field: "publishers", document: `{ publishers(first: 5) { edges { node { slug name } } } }` },
    rest: { operation: "listPublishers", address: "/v1/publishers?first=5" },
    client: ({ rest }) => raw(rest.GET("/v1/publishers", { params: { query: { first: 5 } } })),
    ofGraphql: ({ edges }) => edges.map(({ node: { slug, name } }: Json) => [slug, name]),
    ofJson: ({ items }) => items.map(({ slug, name }: Json) => [slug, name]),
  },
  {
    name: "a publisher",
    graphql: { field: "publisher", document: `{ publisher(slug: "${publisher}") { slug name } }` },
    rest: { operation: "getPublisher", address: `/v1/publishers/${publisher}` },
    client: ({ rest }) => raw(rest.GET("/v1/publishers/{publisher}", { params: { path: { publisher } } })),
    ofGraphql: ({ slug, name }) => [slug, name],
    ofJson: ({ slug, name }) => [slug, name],
  },
  {
    name: "lines of text",
    graphql: {
      field: "readLines",
      document: `{ readLines(texts: ["2 Zitronen", "nothing that is"], locale: "de") { lines { written takes { food amount } problem { text } mayName } } }`,
    },
    rest: {
      operation: "readLines",
      address: "/v1/read-lines",
      body: { texts: ["2 Zitronen", "nothing that is"], locale: "de" },
    },
    client: ({ rest }) =>
      raw(rest.POST("/v1/read-lines", { body: { texts: ["2 Zitronen", "nothing that is"], locale: "de" } })),
    ofGraphql: ({ lines }) => lines,
    ofJson: ({ lines }) =>
      lines.map(({ written, takes, problem, mayName }: Json) => ({
        ...{ written, mayName, problem: problem && { text: problem } },
        takes: takes.map(({ food = null, amount: much = null }: Json) => ({ food, amount: much })),
      })),
  },
  ...["list", "session", "storage", "servings-table"].map((part): Question => {
    const parts = {
      list: {
        operation: "getShoppingList",
        document: `scaled(servings: 4) { shoppingList { lines { food { slug } need ${amount} toBuy ${amount} } } }`,
        ofGraphql: ({ scaled }: Json) => scaled.shoppingList.lines.map(bought).toSorted(by),
        ofJson: ({ lines }: Json) => lines.map(bought).toSorted(by),
        ask: ({ rest }: Prepwright) =>
          raw(rest.GET("/v1/plans/{publisher}/{slug}/list.json", { params: { path, query: { servings: 4 } } })),
      },
      session: {
        operation: "getSession",
        document: "scaled(servings: 4) { session { totalMinutes tasks { code startMinute } } }",
        ofGraphql: ({ scaled }: Json) => scaled.session,
        ofJson: ({ totalMinutes, tasks }: Json) => ({
          totalMinutes,
          tasks: tasks.map(({ code, startMinute }: Json) => ({ code, startMinute })),
        }),
        ask: ({ rest }: Prepwright) =>
          raw(rest.GET("/v1/plans/{publisher}/{slug}/session", { params: { path, query: { servings: 4 } } })),
      },
      storage: {
        operation: "getStorage",
        document: "scaled(servings: 4) { storage { place days advice } }",
        ofGraphql: ({ scaled }: Json) => scaled.storage,
        ofJson: ({ guidance }: Json) => guidance.map(({ place, days, advice }: Json) => ({ place, days, advice })),
        ask: ({ rest }: Prepwright) =>
          raw(rest.GET("/v1/plans/{publisher}/{slug}/storage", { params: { path, query: { servings: 4 } } })),
      },
      "servings-table": {
        operation: "getServingsTable",
        document: `servingsTable(from: 2, to: 5) { servings atTill ${money} }`,
        ofGraphql: ({ servingsTable }: Json) => servingsTable,
        ofJson: ({ rows }: Json) => rows.map(({ servings, atTill }: Json) => ({ servings, atTill })),
        ask: ({ rest }: Prepwright) =>
          raw(rest.GET("/v1/plans/{publisher}/{slug}/servings-table", { params: { path, query: { from: 2, to: 5 } } })),
      },
    };
    const { operation, document, ofGraphql, ofJson, ask } = parts[part as keyof typeof parts];
    const asked = part === "servings-table" ? "from=2&to=5" : "servings=4";
    return {
      name: `a plan's ${part}`,
      graphql: { field: "plan", document: `{ plan(publisher: "${publisher}", slug: "bean-night") { ${document} } }` },
      rest: { operation, address: `/v1/plans/${publisher}/bean-night/${part}?${asked}` },
      client: ask,
      ...{ ofGraphql, ofJson },
    };
  }),
];

/** What one of the two alone has, or what is asked with a token and compared in the suites of its subject. */
const apart: Readonly<Record<string, string>> = {
  getPlanMail: "text for mail programs",
  getRevision: "the frozen document, which GraphQL reads field by field",
  getFeed: "the changes, for feed readers",
  followChanges: "the changes, as they come",
  getOpenapi: "the description of REST",
};
const apartInGraphql: Readonly<Record<string, string>> = {
  shoppingList: "deprecated; the same as shopping, with errors in place of problems",
  plansBySlug: "several of plan",
  node: "by ids that only GraphQL has",
  nodes: "by ids that only GraphQL has",
  panFactor: "GraphQL alone",
  ruleSets: "GraphQL alone",
  viewer: "of a token",
  catalogueFood: "GraphQL alone; REST has them in a list of foods",
  catalogueFoods: "GraphQL alone; REST has them in a list of foods",
  preview: "pages show previews",
};

describeOnEmbedded("every question over GraphQL, REST and the client", (open) => {
  let app: RestApp;
  let prepwright: Prepwright;
  beforeAll(async () => {
    app = await openRest(open);
    prepwright = connect({ address: await app.app.listen({ port: 0, host: "127.0.0.1" }) });
  });
  afterAll(() => app.close());

  it.each(questions)("has the same figures: $name", async ({ graphql, rest, client, ofGraphql, ofJson }) => {
    const { data, errors } = await app.ask(graphql.document, { ...graphql.variables });
    expect(errors).toEqual([]);
    const { status, body } = await app.rest(rest.body === undefined ? "GET" : "POST", rest.address, {
      ...(rest.body === undefined ? {} : { body: rest.body }),
    });
    expect([status, body.problems]).toEqual([200, undefined]);
    expect(ofJson(body)).toEqual(ofGraphql(data?.[graphql.field]));
    expect(await client(prepwright)).toEqual({ ok: true, data: body });
  });

  it("has the same problems of 60 wrong households, with the same words in the reader's language", async () => {
    const short = ({ code, where, title, text, parameters }: Json) => ({ code, where, title, text, parameters });
    for (const [at, { household: wrong }] of wrongHouseholds(60).entries()) {
      const asked = { locale: ["en", "de", "fr", "es", "pl"][at % 5]!, ...wrong };
      const plans = [{ ...beans, servings: 2 }];
      const { data } = await app.ask(
        `query ($plans: [PlanPortionInput!]!, $household: HouseholdInput) { shopping(plans: $plans, household: $household) {
          list { cost { atTill ${money} } } problems { code where title text parameters { name values } } } }`,
        { plans, household: asked },
      );
      const { list, problems } = (data as Json).shopping;
      const { status, body } = await app.rest("POST", "/v1/shopping-list", { body: { plans, household: asked } });
      const told = await prepwright.shoppingList({ plans, household: asked as object });
      expect([list, status >= 400], JSON.stringify(asked)).toEqual([null, true]);
      if (told.ok) throw new Error(`${JSON.stringify(asked)} was answered`);
      expect(body.problems.map(short), JSON.stringify(asked)).toEqual(problems);
      expect(told.problem.problems).toEqual(body.problems);
    }
  });

  it("is asked here, or has a reason not to be", () => {
    const read = endpoints.filter(
      ({ method, scope, operationId }) =>
        scope === undefined && (method === "GET" || questions.some(({ rest }) => rest.operation === operationId)),
    );
    const asked = new Set(questions.map(({ rest }) => rest.operation));
    const missing = read.map(({ operationId }) => operationId).filter((id) => !asked.has(id) && !(id in apart));
    expect(missing).toEqual([]);
    const fields = createSchema().getQueryType()!.getFields();
    const open = Object.values(fields).filter(({ description }) => !/scope/i.test(description ?? ""));
    const askedFields = new Set(questions.map(({ graphql }) => graphql.field));
    const left = open.map(({ name }) => name).filter((name) => !askedFields.has(name) && !(name in apartInGraphql));
    expect(left).toEqual([]);
  });
});
