import { afterAll, beforeAll, expect, it } from "vitest";
import { shippedEdition } from "../../../src/imports/usda/read-usda.js";
import { loadCatalogue } from "../../../src/services/foods/load-catalogue.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { openFoodTable } from "../../kit/open-food-table.js";
import { openTestApp, type TestApp } from "../open-test-app.js";

/** Figures are those that USDA National Nutrient Database for Standard Reference, Release 26, prints for each number. */
const publisher = "north-gate";
const saveDocuments = `mutation ($input: SaveDocumentsInput!) { saveDocuments(input: $input) {
  drafts { kind slug version } problems { code message path } } }`;
const publish = `mutation ($input: PublishPlanInput!) { publishPlan(input: $input) { plan { revision } problems { code message } } }`;
const check = `query ($publisher: String!, $texts: [DocumentTextInput!]!) {
  checkDocuments(publisher: $publisher, texts: $texts) {
    findings { code severity message path } problems { code message path }
    lines { written takes { food amount } problem { code } mayName } } }`;

const plan = (lines: readonly string[], locale = "en-GB", slug = "open-week") => `kind: plan
publisher: ${publisher}
slug: ${slug}
title: A week of numbers
locale: ${locale}
region: GB
measured-in: metric
serves: 2
meals:
  - slug: stew
    title: Stew
    day: 0
    lines:
${lines.map((line) => `      - ${line}`).join("\n")}
`;

describeOnBothDatabases("a food that is a number of the open table", (open) => {
  let app: TestApp;
  let writer: string;

  beforeAll(async () => {
    const { data } = await open();
    app = await openTestApp(data);
    const rows = () => Promise.resolve([...openFoodTable.values()]);
    await loadCatalogue(app.deps, { edition: shippedEdition, hash: "test" }, rows);
    await data.publishers.save({ slug: publisher, name: "North Gate" });
    writer = await app.tokenFor(publisher, ["WRITE", "READ_DRAFTS", "PUBLISH"]);
  });
  afterAll(() => app.close());

  const ask = async (query: string, variables: object, token: string | null = writer) => {
    const { data, errors } = await app.ask(query, variables as Record<string, unknown>, token ?? undefined);
    expect(errors).toEqual([]);
    return data as Record<string, Record<string, unknown>>;
  };
  const saved = async (text: string) => {
    const input = { publisher, texts: [{ name: "all.yaml", text }], expected: [] };
    return (await ask(saveDocuments, { input }))["saveDocuments"]!;
  };
  const checked = async (text: string) =>
    (await ask(check, { publisher, texts: [{ name: "all.yaml", text }] }))["checkDocuments"] as {
      readonly findings: readonly Record<string, unknown>[];
      readonly problems: readonly Record<string, unknown>[];
      readonly lines: readonly Record<string, unknown>[];
    };

  it("works in lines, in components, in swaps, on hand and in a swap of the reader, on an otherwise empty database", async () => {
    const component = `kind: component
slug: boiled-barley
title: Boiled barley
yield: { amount: 900 g, source: writer }
lines: [{ food: usda 20006, amount: 300 g }]
`;
    // NDB 11233 is "Kale, raw", 11124 "Carrots, raw", 20006 "Barley, pearled, cooked".
    const lines = [
      "{ food: usda 11233, amount: 400 g, swaps: [{ food: USDA 11124 }] }",
      "{ component: boiled-barley, amount: 300 g }",
    ];
    expect((await saved(`${component}---\n${plan(lines)}`))["problems"]).toEqual([]);
    const done = await ask(publish, { input: { publisher, slug: "open-week", expectedVersion: 1 } });
    expect(done["publishPlan"]).toEqual({ plan: { revision: 1 }, problems: [] });

    const query = `query ($household: HouseholdInput) { plan(publisher: "${publisher}", slug: "open-week") {
      scaled(servings: 4, household: $household) {
        shoppingList { lines { need { grams } onHand { grams } food {
          slug name owner { slug } allergens { code } diets { diet } keeping { days } packs { code } catalogueFood { ndbNo } } } }
        meals { nutrition { nutrients { nutrient perServing } } } } } }`;
    const scaled = async (household: object) => {
      const { data, errors } = await app.ask(query, { household });
      expect(errors).toEqual([]);
      return JSON.parse(JSON.stringify(data)).plan.scaled;
    };
    const plain = await scaled({ onHand: [{ food: "usda 11233", amount: "150", unit: "g" }] });
    const nothing = { owner: null, allergens: [], diets: [], keeping: [], packs: [] };
    expect(plain.shoppingList.lines).toContainEqual({
      ...{ need: { grams: 800 }, onHand: { grams: 150 } },
      food: { slug: "usda-11233", name: "Kale, raw", ...nothing, catalogueFood: { ndbNo: "11233" } },
    });
    // 200 g of kale a serving as bought, of which NDB 11233 throws 39 % away, and 150 g of boiled barley from 50 g of NDB 20006.
    const energy = plain.meals[0].nutrition.nutrients.find(
      (each: { nutrient: string }) => each.nutrient === "energyKcal",
    );
    expect(energy.perServing).toBeCloseTo(2 * 0.61 * 49 + 0.5 * 123, 6);
    const swapped = await scaled({ swaps: [{ from: "usda 11233", to: "usda 11124" }] });
    expect(swapped.shoppingList.lines.map(({ food }: { food: { name: string } }) => food.name)).toContain(
      "Carrots, raw",
    );
    const { errors } = await app.ask(query, { household: { swaps: [{ from: "usda 11233", to: "usda 99999" }] } });
    expect(errors).toMatchObject([{ extensions: { problems: [{ path: ["household", "swaps", 0, "to"] }] } }]);
  });

  it("is said to be known by its figures alone", async () => {
    const { findings, problems } = await checked(plan(["{ food: usda 11233, amount: 400 g }"], "en-GB", "said"));
    expect(problems).toEqual([]);
    const said = findings.filter(({ code }) => code === "FOOD_OF_OPEN_TABLE");
    expect(said).toMatchObject([{ severity: "LOOK", path: ["meals", "stew", "lines", "usda-11233"] }]);
    expect(said[0]?.["message"]).toContain('"Kale, raw" is known by its figures in the open food table alone');
  });

  it.each(["en-GB", "de", "fr", "es", "pl", "it"])("is read in a line of text (%s)", async (locale) => {
    const { lines, problems } = await checked(plan(["100 g usda 11233", "usda 11124"], locale, "as-text"));
    expect(problems.map(({ code }) => code)).toEqual(["LINE_OPEN"]);
    expect(lines[0]).toMatchObject({ written: "100 g usda 11233", problem: null });
    expect(JSON.stringify(lines[0]?.["takes"])).toContain("usda-11233");
  });

  it("is refused where the table has no such number, and where it is none", async () => {
    const { problems } = await checked(plan(["{ food: usda 99999, amount: 1 g }"], "en", "none"));
    expect(problems).toMatchObject([{ code: "UNKNOWN_FOOD" }]);
    for (const food of ["usda 1123", "usda 112333", "usda", "usda: x", "usda 11233 raw", "usda  11233"]) {
      const wrong = await checked(plan([`{ food: "${food}", amount: 1 g }`], "en", "none"));
      expect(wrong.problems.length, food).toBeGreaterThan(0);
    }
    const open = await checked(plan(["100 g usda 99999"], "en", "none"));
    expect(open.problems).toMatchObject([{ code: "LINE_OPEN" }]);
  });

  it("comes last: what the publisher describes under that slug goes before it, and what was published stays", async () => {
    const own = `kind: food
slug: usda-11233
names: { en: my kale }
aisle: vegetables
shopped-by: mass
allergens: [{ code: celery, presence: contains, source: writer }]
`;
    const query = `query ($publisher: String) { food(slug: "usda-11233", publisher: $publisher) { name owner { slug } } }`;
    expect((await ask(query, {}, null))["food"]).toEqual({ name: "Kale, raw", owner: null });
    expect((await saved(own))["problems"]).toEqual([]);
    expect((await ask(query, { publisher }))["food"]).toEqual({ name: "my kale", owner: { slug: publisher } });
    expect((await ask(query, { publisher }, null))["food"]).toEqual({ name: "Kale, raw", owner: null });
    const frozen = await ask(
      `{ plan(publisher: "${publisher}", slug: "open-week") { foods { slug name } } }`,
      {},
      null,
    );
    expect(JSON.stringify(frozen)).toContain("Kale, raw");
  });
});
