import request from "supertest";
import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases } from "../kit/databases.js";
import { openRest, planOf, publisher, type RestApp } from "./open-rest.js";

const twice = (parameters: string): string => `${parameters}&${parameters}`;
const sets =
  "diet=gluten-free&diet=vegan&swap=walnuts:sunflower-seeds&route=boiled-lentils:tinned&appliance=oven-shelf:1";

describeOnBothDatabases("what a reader says twice", (open) => {
  let app: RestApp;

  beforeAll(async () => {
    app = await openRest(open);
  });
  afterAll(() => app.close());

  const graphql = async (household: object): Promise<string> => {
    const query = `query ($h: HouseholdInput) { plan(publisher: "${publisher}", slug: "lentils-and-greens") { scaled(servings: 7, household: $h) {
      warnings { code } diets { code fits } shoppingList { lines { food { slug } toBuy { text } } } } } }`;
    const { data, errors } = await app.ask(query, { h: household });
    expect(errors).toEqual([]);
    // Not the price, which counts what was sent: doubles have to be read, too.
    return JSON.stringify(data);
  };

  it.each([
    ["GET of a plan", (of: string) => `${planOf("lentils-and-greens")}?servings=7&${of}`],
    ["GET of a list as CSV", (of: string) => `${planOf("lentils-and-greens")}/list.csv?servings=7&${of}`],
    ["GET of a session", (of: string) => `${planOf("lentils-and-greens")}/session?servings=7&${of}`],
  ])("changes nothing in a %s", async (_door, address) => {
    const once = await app.get(address(sets));
    const again = await app.get(address(twice(sets)));
    expect([once.status, again.status]).toEqual([200, 200]);
    expect(again.text).toBe(once.text);
  });

  it("changes nothing on the page, whose form shows each once", async () => {
    const pageOf = async (of: string): Promise<string> => {
      const { status, text } = await request(app.app.server)
        .get(`/p/${publisher}/lentils-and-greens?servings=7&${of}`)
        .set("host", "plans.example");
      expect(status).toBe(200);
      return text;
    };
    expect(await pageOf(twice(sets))).toBe(await pageOf(sets));
  });

  it("changes nothing over GraphQL", async () => {
    const household = {
      diets: ["vegan", "gluten-free"],
      swaps: [{ from: "walnuts", to: "sunflower-seeds" }],
      kitchen: { appliances: [{ appliance: "oven-shelf", count: 1 }] },
    };
    const again = {
      diets: Array.from({ length: 100 }, () => household.diets).flat(),
      swaps: Array.from({ length: 200 }, () => household.swaps).flat(),
      kitchen: { appliances: [...household.kitchen.appliances, ...household.kitchen.appliances] },
    };
    expect(await graphql(again)).toBe(await graphql(household));
  });

  it("makes fifty plans with the same diet two hundred times as short a list as with the diet once", async () => {
    const listOf = async (diets: readonly string[]) => {
      const plans = Array.from({ length: 50 }, () => ({ publisher, slug: "roots-and-barley", servings: 4 }));
      const { status, text } = await app.rest("POST", "/v1/shopping-list", { body: { plans, household: { diets } } });
      expect(status).toBe(200);
      return text;
    };
    const once = await listOf(["gluten-free"]);
    expect(await listOf(Array.from({ length: 200 }, () => "gluten-free"))).toBe(once);
    expect(Buffer.byteLength(once)).toBeLessThan(1_000_000);
  });

  it("is refused where it contradicts itself, and is twice as much where it is an amount", async () => {
    const { status, body } = await app.get(
      `${planOf("lentils-and-greens")}?appliance=oven-shelf:1&appliance=oven-shelf:2`,
    );
    expect([status, body.problems[0].code]).toEqual([400, "DUPLICATE"]);
    const two = await app.get(`${planOf("lentils-and-greens")}?on-hand=carrot:100 g&on-hand=carrot:100 g`);
    const sum = await app.get(`${planOf("lentils-and-greens")}?on-hand=carrot:200 g`);
    expect([two.status, two.text]).toEqual([200, sum.text]);
    const plans = (count: number) => ({
      plans: Array.from({ length: count }, () => ({ publisher, slug: "lentils-and-greens", servings: 4 })),
    });
    const [one, again] = [
      await app.rest("POST", "/v1/shopping-list", { body: plans(1) }),
      await app.rest("POST", "/v1/shopping-list", { body: plans(2) }),
    ];
    expect(again.text).not.toBe(one.text);
  });
});
