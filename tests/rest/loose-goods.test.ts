import { afterAll, beforeAll, expect, it } from "vitest";
import { demo } from "../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../kit/databases.js";
import { openRest, type RestApp } from "./open-rest.js";

const plans = [{ publisher: "third-gate-allotments", slug: "lentils-and-greens", servings: 40 }];
const household = { region: "XA", currency: "XTS" };

interface Sold {
  readonly code: string;
  readonly loose: boolean;
  readonly step: { readonly text: string } | null;
  readonly content: { readonly text: string };
  readonly price: { readonly amount: string } | null;
}
interface Line {
  readonly food: { readonly slug: string };
  readonly toTake: string | null;
  readonly toBuy: { readonly value: number; readonly unit: { readonly code: string } };
  readonly cost: { readonly atTill: { readonly amount: string } | null };
  readonly buy: readonly { readonly count: number; readonly pack: Sold; readonly weighedFrom: Sold | null }[];
}

describeOnBothDatabases("loose goods", (open) => {
  let app: RestApp;
  beforeAll(async () => {
    app = await openRest(open);
    // The market has onions cheaper than any net.
    const onion = demo.foods.find(({ slug }) => slug === "onion")!;
    const [first] = onion.packs;
    const loose = {
      ...first!,
      ...{ id: "crate", name: "crate", content: { low: "1", high: "1", unit: "kg" }, loose: { step: null } },
      price: { amount: "0.40", currency: "XTS" },
    };
    await app.deps.data.foods.save([{ ...onion, packs: [...onion.packs, loose] }]);
  });
  afterAll(() => app.close());

  it("are on the list of forty as one weight with its price, over GraphQL and REST alike", async () => {
    const sold = "code loose step { text } content { text } price { amount }";
    const { data, errors } = await app.ask(
      `query ($plans: [PlanPortionInput!]!, $household: HouseholdInput) { shoppingList(plans: $plans, household: $household) { lines {
        food { slug } toTake toBuy { value unit { code } } cost { atTill { amount } }
        buy { count pack { ${sold} } weighedFrom { ${sold} } } } } }`,
      { plans, household },
    );
    expect(errors).toEqual([]);
    const { shoppingList } = data as { shoppingList: { lines: readonly Line[] } };
    const onion = shoppingList.lines.find(({ food }) => food.slug === "onion");
    const [one] = onion?.buy ?? [];
    expect(onion?.buy).toHaveLength(1);
    expect(one).toMatchObject({
      count: 1,
      pack: { code: "crate", loose: true, step: null },
      weighedFrom: { code: "crate", loose: true, content: { text: "1 kg" }, price: { amount: "0.40" } },
    });
    expect(one?.pack.price?.amount).toBe(onion?.cost.atTill?.amount);
    expect(onion?.toTake).not.toContain("×");
    for (const { buy } of shoppingList.lines.filter(({ food }) => food.slug !== "onion"))
      for (const { pack, weighedFrom } of buy) expect([pack.loose, weighedFrom]).toEqual([false, null]);

    const rest = await app.rest("POST", "/v1/shopping-list", { body: { plans, household } });
    const lines = (rest.body as { lines: readonly Line[] }).lines;
    const same = lines.find(({ food }) => food.slug === "onion");
    expect(same).toMatchObject({ toTake: onion?.toTake, buy: onion?.buy });
  });
});
