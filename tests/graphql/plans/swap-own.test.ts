import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { demo, openTestApp, type TestApp } from "../open-test-app.js";

const publisher = "third-gate-allotments";
const text = `kind: component
slug: barley-pot
title: Barley pot
measured-in: metric
lines:
  - food: pearl-barley
    amount: 300 g
    swaps:
      - food: buckwheat-groats
        ratio: 1
        yield: 700 g
        keeps-as: cooked-grain
        preparation: toasted
        steps: [{ id: boil, do: Boil for fifteen minutes., time: 15 min }]
      - { food: bulgur, ratio: 1 }
yield: { amount: 900 g }
keeps-as: cooked-grain
keeping: [{ place: fridge, days: 2 }]
steps:
  - { id: boil, do: Boil., time: 40 min, hands: off, appliance: hob-ring, uses: [pearl-barley] }
---
kind: plan
publisher: ${publisher}
slug: pot-week
title: Pot week
locale: en-GB
measured-in: metric
serves: 2
kitchen: { appliances: { hob-ring: 2 } }
meals:
  - slug: bowl
    title: Bowl
    day: 1
    lines: [{ component: barley-pot, amount: 900 g }]
`;
const save = `mutation ($input: SaveDocumentsInput!) { saveDocuments(input: $input) { problems { message } } }`;
const publish = `mutation ($input: PublishPlanInput!) { publishPlan(input: $input) { problems { message } } }`;

describeOnBothDatabases("what a swap brings along", (open) => {
  let app: TestApp;

  beforeAll(async () => {
    const { data } = await open();
    app = await openTestApp(data);
    await data.publishers.save({ slug: publisher, name: "Third Gate" });
    await data.foods.save(demo.foods);
    const writer = await app.tokenFor(publisher, ["WRITE", "READ_DRAFTS", "PUBLISH"]);
    const saved = await app.ask(save, { input: { publisher, texts: [{ name: "a.yaml", text }] } }, writer);
    expect(saved).toMatchObject({ errors: [], data: { saveDocuments: { problems: [] } } });
    const done = await app.ask(publish, { input: { publisher, slug: "pot-week", expectedVersion: 1 } }, writer);
    expect(done).toMatchObject({ errors: [], data: { publishPlan: { problems: [] } } });
  });
  afterAll(() => app.close());

  it("can be read, its yield as well; null where it says nothing of its own", async () => {
    const { data, errors } = await app.ask(`{ plan(publisher: "${publisher}", slug: "pot-week") {
      components { lines { swaps { food { slug } preparation keepsAs yield { text grams } steps { code minutes } } } } } }`);
    expect(errors).toEqual([]);
    const { components } = data?.["plan"] as { components: readonly { lines: readonly { swaps: unknown }[] }[] };
    expect(components[0]?.lines[0]?.swaps).toEqual([
      {
        food: { slug: "buckwheat-groats" },
        ...{ preparation: "toasted", keepsAs: "cooked-grain", yield: { text: "700 g", grams: 700 } },
        steps: [{ code: "boil", minutes: 15 }],
      },
      { food: { slug: "bulgur" }, preparation: null, keepsAs: null, yield: null, steps: [] },
    ]);
  });

  it("is what is made when it is taken, and readers who do not take it get the other", async () => {
    const made = async (swaps: string): Promise<unknown> => {
      const { data, errors } = await app.ask(`{ plan(publisher: "${publisher}", slug: "pot-week") {
        scaled(servings: 2, household: { swaps: ${swaps} }) { components { batches made { grams } } } } }`);
      expect(errors).toEqual([]);
      return (data?.["plan"] as { scaled: unknown }).scaled;
    };
    expect(await made("[]")).toMatchObject({ components: [{ batches: 1, made: { grams: 900 } }] });
    const swapped = (await made(`[{ from: "pearl-barley", to: "buckwheat-groats" }]`)) as {
      components: readonly { batches: number; made: { grams: number } }[];
    };
    expect(swapped.components[0]?.batches).toBeCloseTo(900 / 700, 9);
    expect(swapped.components[0]?.made.grams).toBeCloseTo(900, 6);
  });
});
