import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases } from "../kit/databases.js";
import { demoSlugs, openRest, planOf, publisher, type RestApp } from "./open-rest.js";

const amount = "{ value upTo exact text grams millilitres unit { code name dimension } }";
const money = "{ amount currency }";
const cost = `{ currency atTill ${money} used ${money} carriedOver ${money} perServing ${money} unpriced }`;
const pack = `{ code content ${amount} price ${money} loose step ${amount} }`;
const warning = "{ code message path }";
const list = `{ cost ${cost} warnings ${warning} lines { food { slug } need ${amount} onHand ${amount} toBuy ${amount} open
  cost ${cost} buy { count pack ${pack} weighedFrom ${pack} }
  uses { plan { slug } meal { slug } component { slug } part asWritten amount ${amount} } } }`;
const keepable = "{ ... on Component { slug } ... on Meal { slug } ... on Food { slug } }";
const lines = `lines { line { code } food { slug } component { slug } part swapped amount ${amount} }`;
const contents = `allergens { asked reach alsoContains findings { code presence contains { slug } unknown { slug } } }
  diets { code fits breaks { slug } unknown { slug } }
  nutrition { basis gramsPerServing unweighed { slug } labelScheme nutrients { nutrient perServing perServingUpTo per100g coverage complete onLabel { name unit perServing { value upTo text } per100g { value upTo text } } } }`;

const session = `totalMinutes handsOnMinutes handsFreeMinute optimal gap longerThanPromised moreThanADay cooksForADay clearingUpMinutes
  tasks { code startMinute endMinute startsAt of ${keepable} }`;

const wholeAnswer = `query Whole($publisher: String!, $slug: String!, $servings: Int!, $household: HouseholdInput) {
  plan(publisher: $publisher, slug: $slug) { revision title serves
    scaled(servings: $servings, household: $household) { servings warnings ${warning}
      meals { factor meal { slug day } ${lines} ${contents} }
      components { component { slug } route { name } batches loads made ${amount} used ${amount} leftOver ${amount} onHand ${amount} ${lines} }
      shoppingList ${list}
      session { ${session} } sessions { day ${session} }
      storage { subject ${keepable} place days lastDay keepUntil advice tooLateFor { meal { slug } } basis { days decides source { title } } }
      ${contents} cautions { code text about ${keepable} } } } }`;

type Node = Record<string, unknown>;

/**
 * One answer of GraphQL in the shape that REST gives, and that of REST without what was not asked of GraphQL: every key of the
 * first is looked up in the second. REST names a thing where GraphQL nests it.
 */
function sameFigures(graphql: unknown, rest: unknown, path: string): void {
  if (Array.isArray(graphql)) {
    expect(rest, path).toHaveLength(graphql.length);
    graphql.forEach((each, at) => sameFigures(each, (rest as readonly unknown[])[at], `${path}[${at}]`));
    return;
  }
  if (typeof graphql !== "object" || graphql === null) {
    expect(rest, path).toEqual(graphql);
    return;
  }
  expect(rest, path).not.toBeNull();
  for (const [key, value] of Object.entries(graphql)) {
    sameFigures(value, restValue(rest as Node, key, value), `${path}.${key}`);
  }
}

function restValue(rest: Node, key: string, expected: unknown): unknown {
  // A scaled line says what it takes as `item`; its code stands on the line itself.
  if (key === "line") return rest;
  if (key === "food" && "item" in rest) return kindOf(rest, "FOOD");
  if (key === "component" && "item" in rest) return kindOf(rest, "COMPONENT");
  if ((key === "meal" || key === "component") && !(key in rest)) return rest;
  if (key === "meal" && "kind" in rest) return rest;
  if (key === "route" && typeof rest["route"] === "string") return { name: rest["route"] };
  if (key === "storage") return (rest["storage"] as Node)["guidance"];
  if (key === "warnings" && "storage" in rest) {
    // Over GraphQL all warnings are one list, and whose rules the answer goes by comes first.
    const both = [...(rest["warnings"] as Node[]), ...((rest["storage"] as Node)["warnings"] as Node[])];
    return both.toSorted((a, b) => Number(b["code"] === "REGION_NOT_GIVEN") - Number(a["code"] === "REGION_NOT_GIVEN"));
  }
  expect(rest, `${key}, ${JSON.stringify(expected)?.slice(0, 80)}`).toHaveProperty(key);
  return rest[key];
}

const kindOf = ({ item }: Node, kind: string): unknown => ((item as Node)["kind"] === kind ? item : null);

/** REST puts the lines of one aisle together; GraphQL gives them in the order of need. */
const inOrder = (lines: readonly { readonly food: { readonly slug: string } }[]) =>
  lines.toSorted((a, b) => (a.food.slug < b.food.slug ? -1 : 1));

interface Case {
  readonly servings: number;
  readonly query: string;
  readonly household: Node;
}

const cases: readonly Case[] = [
  { servings: 4, query: "", household: {} },
  {
    servings: 7,
    query: "&region=GB&currency=XTS&measures=US_CUSTOMARY&locale=en-US&start=2026-10-24T18:00&zone=Europe/Berlin",
    household: {
      region: "GB",
      currency: "XTS",
      measures: "US_CUSTOMARY",
      locale: "en-US",
      sessionStart: { local: "2026-10-24T18:00", zone: "Europe/Berlin" },
    },
  },
  {
    servings: 3,
    query:
      "&diet=gluten-free&diet=vegan&routes=CHEAPEST&eaters=2x1&eaters=1x1/2&on-hand=carrot:500+g&on-hand=onion:1+piece;use-by=2026-03-02",
    household: {
      diets: ["gluten-free", "vegan"],
      routes: { mode: "CHEAPEST" },
      eaters: [
        { count: 2, portion: "1" },
        { count: 1, portion: "1/2" },
      ],
      onHand: [
        { food: "carrot", amount: "500", unit: "g" },
        { food: "onion", amount: "1", unit: "piece", useBy: "2026-03-02" },
      ],
    },
  },
  {
    servings: 12,
    query:
      "&routes=LEAST_WORK&swap=bulgur:buckwheat-groats&region=US-CA&start=2026-03-01T09:00:00Z&zone=America/Los_Angeles",
    household: {
      routes: { mode: "LEAST_WORK" },
      swaps: [{ from: "bulgur", to: "buckwheat-groats" }],
      region: "US-CA",
      sessionStart: { instant: "2026-03-01T09:00:00Z", zone: "America/Los_Angeles" },
    },
  },
];

describeOnBothDatabases("REST and GraphQL", (open) => {
  let app: RestApp;

  beforeAll(async () => {
    app = await openRest(open);
  });
  afterAll(() => app.close());

  it.each(cases)(
    "say the same of every demo plan: $servings servings, $query",
    async ({ servings, query, household }) => {
      for (const slug of demoSlugs) {
        const { data, errors } = await app.ask(wholeAnswer, { publisher, slug, servings, household });
        expect(errors).toEqual([]);
        const plan = data?.["plan"] as Node & { scaled: Node & { shoppingList: { lines: never[] } } };
        const { status, body } = await app.get(`${planOf(slug)}?servings=${servings}${query}`);
        expect(status).toBe(200);
        const {
          scaled: { sessions, ...scaled },
          ...published
        } = plan;
        sameFigures(published, body, slug);
        scaled.shoppingList.lines = inOrder(scaled.shoppingList.lines) as never[];
        body.shoppingList.lines = inOrder(body.shoppingList.lines);
        sameFigures(scaled, body, `${slug}.scaled`);
        const parts = await Promise.all(
          ["list", "session", "storage"].map((part) => app.get(`${planOf(slug)}/${part}?servings=${servings}${query}`)),
        );
        const [listed, { sessions: days, sessionProblems, ...whole }, storage] = parts.map((part) => part.body);
        expect(inOrder(listed.lines)).toEqual(body.shoppingList.lines);
        expect(whole).toEqual(body.session);
        expect(sessionProblems).toEqual([]);
        sameFigures(sessions, days, `${slug}.sessions`);
        expect(storage).toEqual(body.storage);
      }
    },
  );

  it("make the same list over all demo plans", async () => {
    const plans = demoSlugs.map((slug, at) => ({ publisher, slug, servings: at + 2 }));
    const household = { region: "GB", onHand: [{ food: "carrot", amount: "200", unit: "g" }] };
    const { data, errors } = await app.ask(
      `query ($plans: [PlanPortionInput!]!, $household: HouseholdInput) { shoppingList(plans: $plans, household: $household) ${list} }`,
      { plans, household },
    );
    expect(errors).toEqual([]);
    const { status, body } = await app.rest("POST", "/v1/shopping-list", { body: { plans, household } });
    expect(status).toBe(200);
    const wanted = data?.["shoppingList"] as Node & { lines: never[] };
    sameFigures({ ...wanted, lines: inOrder(wanted.lines) }, { ...body, lines: inOrder(body.lines) }, "list");
  });

  it("make the same servings table", async () => {
    const { data, errors } = await app.ask(
      `query ($publisher: String!, $slug: String!) { plan(publisher: $publisher, slug: $slug) {
        servingsTable(from: 2, to: 9) { servings even leftOverShare packWasteShare perServing ${money} atTill ${money} } } }`,
      { publisher, slug: "roots-and-barley" },
    );
    expect(errors).toEqual([]);
    const { body } = await app.get(`${planOf("roots-and-barley")}/servings-table?from=2&to=9`);
    expect(body.rows).toEqual((data?.["plan"] as Node)["servingsTable"]);
  });

  it("show the same food and the same component", async () => {
    const { data, errors } = await app.ask(
      `query ($publisher: String!) { food(slug: "lemon") { slug aisle shoppedBy parts { name perPiece ${amount} } packs { code content ${amount} } }
        component(publisher: $publisher, slug: "boiled-barley") { slug title yield ${amount} batch { min max increment }
          lines { code written amount ${amount} rule } meals { slug } } }`,
      { publisher },
    );
    expect(errors).toEqual([]);
    sameFigures(data?.["food"], (await app.get("/v1/foods/lemon")).body, "food");
    sameFigures(data?.["component"], (await app.get(`/v1/components/${publisher}/boiled-barley`)).body, "component");
  });
});
