import { afterAll, beforeAll, expect, it } from "vitest";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { demo, openTestApp, type TestApp } from "../open-test-app.js";

const query = `query ($onHand: [OnHandInput!]) {
  plan(publisher: "third-gate-allotments", slug: "bean-night") {
    scaled(servings: 3, household: { onHand: $onHand }) { shoppingList { warnings { code message } } }
  }
}`;

describeOnBothDatabases("what is on hand of a food that there is not", (open) => {
  let app: TestApp;

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await loadSeeds(app.deps, demo);
  });
  afterAll(() => app.close());

  const messages = async (food: string): Promise<readonly string[]> => {
    const { data, errors } = await app.ask(query, { onHand: [{ food, amount: "100", unit: "g" }] });
    expect(errors).toEqual([]);
    const { scaled } = data?.["plan"] as {
      scaled: { shoppingList: { warnings: readonly { code: string; message: string }[] } };
    };
    return scaled.shoppingList.warnings
      .filter(({ code }) => code === "ON_HAND_NOT_NEEDED")
      .map(({ message }) => message);
  };

  it("is told from a food that the plan has no need of", async () => {
    expect(await messages("carot")).toEqual([expect.stringMatching(/There is no food "carot".*Check how it is spelt/)]);
    expect(await messages("millet")).toEqual([expect.stringMatching(/"millet" is not needed here/)]);
  });
});
