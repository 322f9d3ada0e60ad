import fc from "fast-check";
import { getNamedType, getNullableType, isCompositeType, isListType, isObjectType, parse, validate } from "graphql";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { compiledOperations } from "../../../src/graphql/server/compiled-operations.js";
import { fieldTimes, fieldWork, listSizes } from "../../../src/graphql/limits/field-costs.js";
import { createSchema } from "../../../src/graphql/schema.js";
import { usualEngine } from "../../../src/graphql/server/engine-options.js";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { arbitraryQuery } from "../../kit/arbitrary/arbitrary-query.js";
import { describeOnBothDatabases, type TestDatabase } from "../../kit/databases.js";
import { demo, openTestApp, type TestApp } from "../open-test-app.js";

const schema = createSchema();

function costOf(source: string, variables: Record<string, unknown> = {}): number {
  const compiled = compiledOperations(schema).compile(source);
  const operation = compiled.ok ? compiled.operations[0] : undefined;
  if (operation === undefined) throw new Error(`not a good document: ${JSON.stringify(compiled)}`);
  const coerced = operation.coerce(variables);
  if (!coerced.ok) throw new Error("not good variables");
  return operation.cost(coerced.variables);
}

/** Objects in an answer: what resolvers were run for. */
const objectsIn = (value: unknown): number =>
  typeof value !== "object" || value === null
    ? 0
    : Object.values(value)
        .map(objectsIn)
        .reduce((a, b) => a + b, Array.isArray(value) ? 0 : 1);

describe("the cost of an operation", () => {
  it("is a point for each object, and what fields say, by hand", () => {
    // Query.plan 5 + the plan 1.
    expect(costOf(`{ plan(publisher: "p", slug: "s") { title } }`)).toBe(6);
    // + 8 meals, each with 12 lines.
    expect(costOf(`{ plan(publisher: "p", slug: "s") { meals { lines { written } } } }`)).toBe(6 + 8 + 8 * 12);
    // Query.plans 5 + connection 1 + page info 1 + edges 3 + nodes 3.
    expect(costOf(`{ plans(first: 3) { pageInfo { endCursor } edges { node { title } } } }`)).toBe(5 + 1 + 1 + 3 + 3);
    expect(costOf(`{ plans { edges { cursor } } }`)).toBe(5 + 1 + 20);
    expect(costOf("{ __typename }")).toBe(0);
    // Three entries, and `{"__schema":{"queryType":{"name":"Query"}}}` is two times 32 bytes at most.
    expect(costOf("{ __typename __schema { queryType { name } } }")).toBe(3 + 2);
  });

  it("counts variables and their defaults as it counts what is written (conventions: a limit that `first: $n` went round)", () => {
    const query = (first: string) => `plans(first: ${first}) { edges { node { title } } }`;
    const written = costOf(`{ ${query("77")} }`);
    expect(costOf(`query ($n: Int) { ${query("$n")} }`, { n: 77 })).toBe(written);
    expect(costOf(`query ($n: Int = 77) { ${query("$n")} }`)).toBe(written);
    expect(costOf(`query ($n: Int) { ${query("$n")} }`)).toBe(costOf(`{ plans { edges { node { title } } } }`));
    expect(costOf(`query ($n: Int) { ${query("$n")} }`, { n: 2_000_000_000 })).toBe(costOf(`{ ${query("100")} }`));
  });

  it("grows with what a household asks for, each time a plan is computed for it", () => {
    const plan = 'plan(publisher: "p", slug: "s")';
    const once = (household: object): number =>
      costOf(`query ($h: HouseholdInput) { ${plan} { scaled(servings: 4, household: $h) { servings } } }`, {
        h: household,
      });
    const rows = (household: object): number =>
      costOf(`query ($h: HouseholdInput) { ${plan} { servingsTable(from: 1, to: 10, household: $h) { even } } }`, {
        h: household,
      });
    const onHand = Array.from({ length: 200 }, (_, at) => ({ food: `food-${at}`, amount: "1", unit: "g" }));
    const swaps = Array.from({ length: 200 }, (_, at) => ({ from: `a-${at}`, to: `b-${at}` }));
    expect(once({ onHand, swaps }) - once({})).toBe(200);
    expect(rows({ onHand, swaps }) - rows({})).toBe(10 * 200);
    expect(rows({ routes: { mode: "CHEAPEST" } }) - rows({ routes: { mode: "AS_WRITTEN" } })).toBe(10 * 20);
    // It is a limit on work, and no ordinary household comes near the budget of a request.
    expect(rows({ onHand, swaps, diets: ["vegan", "gluten-free"] })).toBeLessThan(usualEngine.costLimit / 100);
  });

  it("grows with the plans of a list and the rows of a table", () => {
    const list = "query ($p: [PlanPortionInput!]!) { shoppingList(plans: $p) { lines { open } } }";
    const portion = { publisher: "p", slug: "s", servings: 1 };
    const one = costOf(list, { p: [portion] });
    expect(costOf(list, { p: [portion, portion, portion] })).toBe(3 * one);
    expect(costOf(list, { p: portion })).toBe(one);
    const table = (to: number) =>
      costOf(`{ plan(publisher: "p", slug: "s") { servingsTable(from: 1, to: ${to}) { even } } }`);
    expect(table(100) - table(1)).toBe(99 * (fieldWork["Plan.servingsTable"]! + 1));
  });

  it("is the same through fragments, and leaves out what is skipped", () => {
    const plain = costOf(`{ plans(first: 9) { edges { node { meals { lines { written } } } } } }`);
    const spread = `{ plans(first: 9) { ...C } } fragment C on PlanConnection { edges { node { ...P } } }
      fragment P on Plan { ... on Plan { meals { lines { written } } } }`;
    expect(costOf(spread)).toBe(plain);
    const maybe = "query ($on: Boolean!) { plans(first: 9) @include(if: $on) { edges { cursor } } }";
    expect([costOf(maybe, { on: false }), costOf(maybe, { on: true })]).toEqual([0, 5 + 1 + 9]);
    const not = "query ($off: Boolean!) { plans(first: 9) @skip(if: $off) { edges { cursor } } }";
    expect([costOf(not, { off: true }), costOf(not, { off: false })]).toEqual([0, 5 + 1 + 9]);
  });

  it("is published: every list of objects says its length, and every cost stands in the schema", () => {
    const unsized = Object.values(schema.getTypeMap()).flatMap((type) =>
      isObjectType(type) && !type.name.startsWith("__")
        ? Object.values(type.getFields())
            .filter((field) => isListType(getNullableType(field.type)) && isCompositeType(getNamedType(field.type)))
            .map((field) => `${type.name}.${field.name}`)
            .filter((name) => !/\.(edges|nodes|problems)$/.test(name) && !(name in listSizes) && !(name in fieldTimes))
        : [],
    );
    expect(unsized).toEqual([]);
    for (const [name, value] of [...Object.entries(listSizes), ...Object.entries(fieldWork)]) {
      const [typeName = "", fieldName = ""] = name.split(".");
      const type = schema.getType(typeName);
      const description = isObjectType(type) ? type.getFields()[fieldName]?.description : undefined;
      expect(description).toMatch(new RegExp(`(Priced as|Costs) ${value} (entries|points)\\.`));
    }
  });
});

const values = {
  publisher: ['"third-gate-allotments"'],
  slug: ['"bean-night"', '"barley"', '"lemon"'],
  servings: ["1", "7", "24"],
  first: ["1", "3", "100"],
  ndbNo: ['"20005"'],
  region: ['"XA"', '"US"'],
  household: ['{ region: "XA", currency: "XTS", diets: ["vegan"] }', "{}"],
  plans: ['[{ publisher: "third-gate-allotments", slug: "bean-night", servings: 3 }]'],
  from: ["1"],
  to: ["5"],
};

describeOnBothDatabases("what is asked", (open) => {
  let app: TestApp;
  let small: TestApp;
  let database: TestDatabase;
  let untouched: TestDatabase;

  beforeAll(async () => {
    database = await open();
    // What another test asked may still be at work, where one of its fields was given up before others were read.
    untouched = await open();
    app = await openTestApp(database.data);
    await loadSeeds(app.deps, demo);
    small = await openTestApp(untouched.data, undefined, undefined, undefined, {
      graphql: { ...usualEngine, costLimit: 100 },
    });
  });
  afterAll(() => Promise.all([app.close(), small.close()]));

  it("says what it cost at most, which is never less than the objects in the answer", async () => {
    await fc.assert(
      fc.asyncProperty(arbitraryQuery(schema, values, 6), async (query) => {
        // Fields of one name with different arguments, in fragments of an interface, are refused; what is good is asked.
        fc.pre(validate(schema, parse(query)).length === 0);
        const { text } = await app.ask(query);
        const { data, extensions } = JSON.parse(text) as { data?: unknown; extensions?: { cost: { asked: number } } };
        fc.pre(extensions !== undefined);
        expect(extensions?.cost.asked).toBeGreaterThanOrEqual(objectsIn(data) - 1);
      }),
      { numRuns: 60 },
    );
  });

  it("is refused above the limit, with both figures and without one statement, whether written or as a variable", async () => {
    untouched.statements.clear();
    for (const [query, variables] of [
      ["{ plans(first: 100) { edges { node { title } } } }", {}],
      ["query ($n: Int) { plans(first: $n) { edges { node { title } } } }", { n: 100 }],
    ] as const) {
      const { status, errors, text } = await small.ask(query, variables);
      expect(status).toBe(400);
      expect(errors[0]?.extensions).toEqual({ code: "COST_TOO_HIGH", asked: 206, limit: 100 });
      expect(JSON.parse(text)).toHaveProperty("extensions", { cost: { asked: 206, limit: 100 } });
    }
    expect(untouched.statements.sent).toEqual([]);
    const { status, text } = await small.ask("{ plans(first: 3) { edges { node { title } } } }");
    expect(status).toBe(200);
    expect(JSON.parse(text)).toHaveProperty("extensions", { cost: { asked: 12, limit: 100 } });
  });

  it("is charged to the budget of who asks before anything is run", async () => {
    const rateLimit = { perAddress: 250, perToken: 0, refusedTokensPerAddress: 0 };
    const limited = await openTestApp(database.data, undefined, undefined, undefined, { rateLimit });
    const many = "{ plans(first: 100) { edges { node { title } } } }";
    // One point for the request and 206 for what it asks; then 43 are left.
    expect((await limited.ask(many)).status).toBe(200);
    database.statements.clear();
    const { status, errors, data } = await limited.ask(many);
    expect([status, errors[0]?.extensions["code"], data]).toEqual([429, "RATE_LIMITED", undefined]);
    expect(database.statements.sent).toEqual([]);
    await limited.close();
  });
});
