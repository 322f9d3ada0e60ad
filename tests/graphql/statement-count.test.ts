import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases, type TestDatabase } from "../kit/databases.js";
import { loadSeeds } from "../../src/services/drafts/load-seeds.js";
import { demo, demoBundle, openTestApp, renamed, type TestApp } from "./open-test-app.js";

const query = `query ($first: Int!) { plans(first: $first) { edges { node {
  title publisher { name }
  meals { title components { title lines { food { name } component { title } } } lines { food { slug } } }
  components { title plan { title publisher { slug } } }
  foods { name }
  scaled(servings: 7) { shoppingList { lines { food { name } uses { plan { slug publisher { slug } } } } } warnings { code } }
} } } }`;

describeOnBothDatabases("statements behind a query", (open) => {
  let app: TestApp;
  let database: TestDatabase;

  beforeAll(async () => {
    database = await open();
    app = await openTestApp(database.data);
    const bundles = Array.from({ length: 50 }, (_, index) => renamed(demoBundle("bean-night"), `plan-${index}`));
    await loadSeeds(app.deps, { ...demo, bundles });
  });
  afterAll(() => app.close());

  const statementsFor = async (first: number): Promise<readonly string[]> => {
    database.statements.clear();
    const { data, errors } = await app.ask(query, { first });
    expect(errors).toEqual([]);
    expect((data?.["plans"] as { edges: unknown[] }).edges).toHaveLength(first);
    return [...database.statements.sent];
  };

  it("are as many for 50 plans, each with meals, components, foods and a list, as for 5", async () => {
    const five = await statementsFor(5);
    const fifty = await statementsFor(50);
    expect(fifty.length).toBe(five.length);
    expect(fifty.length).toBeLessThanOrEqual(30);
    expect(fifty.length).toBeGreaterThan(2);
  });
});
