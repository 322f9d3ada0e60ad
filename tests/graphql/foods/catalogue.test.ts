import { afterAll, beforeAll, expect, it } from "vitest";
import type { Food } from "../../../src/domain/model/food.js";
import { shippedEdition } from "../../../src/imports/usda/read-usda.js";
import { loadCatalogue } from "../../../src/services/foods/load-catalogue.js";
import { publishPlan } from "../../../src/services/plans/publish-plan.js";
import { referenceTable, sourceOf } from "../../domain/quantity/reference-table.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { bundle, edible, food, line, meal, plan } from "../../kit/builders.js";
import { openFoodTable } from "../../kit/open-food-table.js";
import { openTestApp, type TestApp } from "../open-test-app.js";

const fromTable = { kind: "PUBLISHED", title: shippedEdition.title };

describeOnBothDatabases("the open food table", (open) => {
  let app: TestApp;

  const ask = async <T>(query: string, variables: Record<string, unknown> = {}): Promise<T> => {
    const { data, errors } = await app.ask(query, variables);
    expect(errors).toEqual([]);
    return data as T;
  };

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    const shipped = { edition: shippedEdition, hash: "test" };
    await loadCatalogue(app.deps, shipped, () => Promise.resolve([...openFoodTable.values()]));
    await loadCatalogue(app.deps, shipped, () => Promise.reject(new Error("the rows are read again")));
    await app.deps.data.publishers.save({ slug: "plot", name: "Plot" });
  });
  afterAll(() => app.close());

  it("is searched for a number, page by page", async () => {
    interface Found {
      readonly catalogueFoods: {
        readonly edges: readonly { readonly node: { readonly ndbNo: string; readonly description: string } }[];
        readonly pageInfo: { readonly hasNextPage: boolean; readonly endCursor: string };
      };
    }
    const query = `query ($after: String) { catalogueFoods(search: "raw kale", first: 1, after: $after) {
      edges { node { ndbNo description } } pageInfo { hasNextPage endCursor } } }`;
    const { catalogueFoods: found } = await ask<Found>(query);
    expect(found.edges).toEqual([{ node: { ndbNo: "11233", description: "Kale, raw" } }]);
    expect(found.pageInfo.hasNextPage).toBe(true);
    const next = await ask<Found>(query, { after: found.pageInfo.endCursor });
    expect(next.catalogueFoods.edges[0]?.node.ndbNo).not.toBe("11233");
  });

  it("shows a row with its edition, and nothing for a number it has not", async () => {
    // Release 26, NDB 11215, garlic, raw: 149 kcal, refuse 13 % (knob and skin), a clove 3 g, a cup 136 g.
    const { catalogueFood } = await ask<{ catalogueFood: Record<string, unknown> }>(`{ catalogueFood(ndbNo: "11215") {
      ndbNo description otherNames aisle edition nutrients { nutrient per100g source { title section } }
      edible { form share } measures { name grams source { title } } densities { form gramsPerMl } } }`);
    expect(catalogueFood).toMatchObject({
      ndbNo: "11215",
      description: "Garlic, raw",
      aisle: "vegetables",
      edition: shippedEdition.title,
      edible: [{ form: null, share: 0.87 }],
      measures: [{ name: "clove", grams: 3, source: { title: shippedEdition.title } }],
    });
    expect(catalogueFood["nutrients"]).toContainEqual({
      nutrient: "energyKcal",
      per100g: 149,
      source: { title: shippedEdition.title, section: "NDB 11215, Garlic, raw" },
    });
    const none = await ask<unknown>(
      '{ a: catalogueFood(ndbNo: "99999") { ndbNo } b: catalogueFood(ndbNo: "") { ndbNo } }',
    );
    expect(none).toEqual({ a: null, b: null });
  });

  it("refuses a search that is too long, saying where", async () => {
    const { errors } = await app.ask(`{ catalogueFoods(search: "${"x".repeat(300)}") { edges { cursor } } }`);
    expect(errors[0]?.extensions).toMatchObject({ problems: [{ code: "TOO_LARGE", path: ["search"] }] });
  });

  const fields = `ndbNo catalogueFood { description } nutrients { nutrient per100g source { kind title } }
    edible { share source { kind title } } measures { name grams } densities { form source { title } } allergens { code }`;
  const written: Food = food("kale", { ndbNo: "11233", edible: [edible(0.5)] });

  it("gives a food of today what its own document leaves out, by name and in a list", async () => {
    await app.deps.data.foods.save([written, food("moss", { ndbNo: "99999" }), food("stone")]);
    const { food: kale, foods } = await ask<{ food: Record<string, unknown>; foods: { edges: unknown[] } }>(
      `{ food(slug: "kale") { ${fields} } foods { edges { node { slug ${fields} } } } }`,
    );
    expect(kale).toMatchObject({
      ndbNo: "11233",
      catalogueFood: { description: "Kale, raw" },
      edible: [{ share: 0.5, source: { kind: "INVENTED" } }],
      allergens: [],
    });
    expect(kale["nutrients"]).toContainEqual({ nutrient: "energyKcal", per100g: 49, source: fromTable });
    expect(kale["densities"]).toContainEqual({ form: "chopped", source: { title: shippedEdition.title } });
    expect(foods.edges).toContainEqual({ node: { slug: "kale", ...kale } });
    const bare = { catalogueFood: null, nutrients: [], edible: [], measures: [], densities: [], allergens: [] };
    expect(foods.edges).toContainEqual({ node: { slug: "moss", ndbNo: "99999", ...bare } });
    expect(foods.edges).toContainEqual({ node: { slug: "stone", ndbNo: null, ...bare } });
  });

  it("is frozen into a revision, so that cups of it can be bought by weight", async () => {
    const cups = bundle(
      plan([meal("soup", [line("2 us-cup", "kale", { form: "chopped" })])], { slug: "soup", publisher: "plot" }),
      [],
      [written],
    );
    expect(await publishPlan(app.deps, cups)).toMatchObject({ ok: true, value: { created: true } });
    expect(await publishPlan(app.deps, cups)).toMatchObject({ ok: true, value: { created: false } });
    const answer = await ask<{ plan: { foods: unknown[]; scaled: { shoppingList: { lines: unknown[] } } } }>(
      `{ plan(publisher: "plot", slug: "soup") { foods { ${fields} } scaled(servings: 1) {
        shoppingList { lines { need { value unit { code } } } } } } }`,
    );
    const [frozen] = await app.deps.data.revisions.summaries([{ publisher: "plot", slug: "soup", revision: 1 }]);
    const [kept] = await app.deps.data.revisions.bundles([frozen?.id ?? ""]);
    expect(kept?.foods[0]?.nutrients?.source).toMatchObject(fromTable);
    expect(answer.plan.foods[0]).toMatchObject({ edible: [{ share: 0.5 }], ndbNo: "11233" });
    // Release 26, weight file, NDB 11233: "cup, chopped" 67 g.
    expect(answer.plan.scaled.shoppingList.lines).toEqual([{ need: { value: 134, unit: { code: "g" } } }]);
  });

  it("finds no fault with a number that it has, whatever else is wrong beside it, and always with one it has not", async () => {
    const token = await app.tokenFor(null, ["READ_DRAFTS", "WRITE"]);
    const food = (number: string, slug = "mine"): string =>
      `kind: food\nslug: ${slug}\nnames: { en: mine }\naisle: vegetables\nshopped-by: mass\nusda: "${number}"\n`;
    const beside: Readonly<Record<string, (text: string) => string>> = {
      nothing: (text) => text,
      "a key that there is not": (text) => `${text}colour: red\n`,
      "a needed key left out": (text) => text.replace("shopped-by: mass\n", ""),
      "an aisle of another list": (text) => text.replace("aisle: vegetables", "aisle: vegetable-shelf"),
      "no name": (text) => text.replace("{ en: mine }", "{}"),
      "a fault in the document before": (text) => `kind: food\nslug: other\n---\n${text}`,
      "a right one behind it": (text) => `${text}---\n${food("11215", "garlic")}`,
      "a wrong one behind it": (text) => `${text}---\n${food("99999", "nothing")}colour: red\n`,
    };
    const ways = {
      check: `query ($texts: [DocumentTextInput!]!) { a: checkDocuments(publisher: "plot", texts: $texts) { problems { code message } } }`,
      save: `mutation ($texts: [DocumentTextInput!]!) { a: saveDocuments(input: { publisher: "plot", texts: $texts }) { problems { code message } } }`,
      "save foods": `mutation ($texts: [DocumentTextInput!]!) { a: saveFoods(input: { texts: $texts }) { problems { code message } } }`,
    };
    for (const [way, query] of Object.entries(ways)) {
      const refused = async (text: string): Promise<readonly string[]> => {
        const { data, errors } = await app.ask(query, { texts: [{ name: "f.yaml", text }] }, token);
        expect(errors).toEqual([]);
        const { problems } = data?.["a"] as { problems: readonly { code: string; message: string }[] };
        return problems.flatMap(({ code, message }) =>
          code === "UNKNOWN_CODE" ? (/number "(\d+)"/.exec(message)?.[1] ?? []) : [],
        );
      };
      for (const [name, fault] of Object.entries(beside)) {
        const wrong = name === "a wrong one behind it" ? ["99999"] : [];
        expect([way, name, await refused(fault(food("11124")))]).toEqual([way, name, wrong]);
        expect([way, name, await refused(fault(food("88888")))]).toEqual([way, name, ["88888", ...wrong]]);
      }
    }
  });

  it("lends its measures to a writer's lines, from the first save to publishing, and shows no change nobody made", async () => {
    const operator = await app.tokenFor(null, ["WRITE"]);
    const writer = await app.tokenFor("plot", ["WRITE", "READ_DRAFTS", "PUBLISH"]);
    const carrot = `kind: food
slug: carrot
names: { en: { one: carrot, many: carrots } }
aisle: vegetables
shopped-by: mass
usda: "11124"
`;
    const week = `kind: plan
publisher: plot
slug: carrot-week
title: Carrot week
locale: en-GB
measured-in: us customary
serves: 2
meals:
  - slug: salad
    title: Salad
    day: 0
    lines:
      - { food: carrot, amount: 2 medium }
      - { id: grated, food: carrot, form: grated, amount: 1 cup }
`;
    interface Outcome {
      readonly problems: readonly unknown[];
    }
    const change = async <T extends Outcome>(query: string, input: object, token: string): Promise<T> => {
      const { data, errors } = await app.ask(query, { input }, token);
      expect(errors).toEqual([]);
      const [payload] = Object.values(data ?? {}) as T[];
      expect(payload?.problems).toEqual([]);
      if (payload === undefined) throw new Error("no payload");
      return payload;
    };
    const save = `mutation ($input: SaveDocumentsInput!) { saveDocuments(input: $input) {
      drafts { slug version } foods { slug } problems { code message } } }`;
    const text = (name: string, content: string) => ({ name, text: content });
    const both = { publisher: "plot", texts: [text("carrot.yaml", carrot), text("week.yaml", week)] };
    await change(save, both, operator);
    const [stored] = await app.deps.data.foods.bySlugs(["carrot"]);
    expect(stored).toMatchObject({ ndbNo: "11124", measures: [], edible: [], nutrients: null });

    await change(
      save,
      {
        publisher: "plot",
        texts: [text("week.yaml", week.replace("2 medium", "4 medium"))],
        expected: [{ kind: "PLAN", slug: "carrot-week", version: 1 }],
      },
      writer,
    );
    const publish =
      "mutation ($input: PublishPlanInput!) { publishPlan(input: $input) { created problems { code message } } }";
    const name = { publisher: "plot", slug: "carrot-week" };
    expect(await change(publish, { ...name, expectedVersion: 2 }, writer)).toMatchObject({ created: true });
    const { plan: found } = await ask<{ plan: { scaled: { shoppingList: { lines: { need: { value: number } }[] } } } }>(
      `{ plan(publisher: "plot", slug: "carrot-week") { scaled(servings: 2, household: { measures: METRIC }) {
        shoppingList { lines { need { value } } } } } }`,
    );
    // Release 26, NDB 11124: medium 61 g of edible material, refuse 11 %; cup grated 110 g.
    expect(found.scaled.shoppingList.lines[0]?.need.value).toBeCloseTo((4 * 61) / 0.89 + 110, 6);
    const compared = await app.ask('{ compare(publisher: "plot", slug: "carrot-week") { kind path } }', {}, writer);
    expect(compared).toMatchObject({ errors: [], data: { compare: [] } });
  });

  it("agrees through the API with every row of the table of published nutrients that Release 27 did not change", async () => {
    const rows = referenceTable("nutrients").filter((row) => openFoodTable.has(row["ndb_no"] ?? ""));
    expect(rows.length).toBeGreaterThan(80);
    await app.deps.data.foods.save(rows.map((row) => food(`n-${row["ndb_no"]}`, { ndbNo: row["ndb_no"] ?? null })));
    const aliases = rows.map(
      (row) => `f${row["ndb_no"]}: food(slug: "n-${row["ndb_no"]}") { nutrients { nutrient per100g } }`,
    );
    type Answer = Record<
      string,
      { readonly nutrients: readonly { readonly nutrient: string; readonly per100g: number }[] }
    >;
    const found: Answer = {};
    for (let at = 0; at < aliases.length; at += 20)
      Object.assign(found, await ask<Answer>(`{ ${aliases.slice(at, at + 20).join(" ")} }`));
    const agreeing = rows.filter((row) => {
      const nutrients = found[`f${row["ndb_no"]}`]?.nutrients;
      expect(nutrients, sourceOf(row)).toBeDefined();
      const figure = (code: string): number | undefined =>
        nutrients?.find(({ nutrient }) => nutrient === code)?.per100g;
      const columns = {
        energyKcal: "kcal",
        proteinG: "protein_g",
        fatG: "fat_g",
        fibreG: "fibre_g",
        sodiumMg: "sodium_mg",
      };
      return Object.entries(columns).every(
        ([code, column]) => figure(code) === (row[column] === "" ? undefined : Number(row[column])),
      );
    });
    // Release 27 changed these: tests/imports/usda/read-usda.test.ts names column by column what.
    const changed = rows.filter((row) => !agreeing.includes(row)).map((row) => row["ndb_no"]);
    expect(changed.sort()).toEqual(["16056", "16069", "16398", "20012"]);
  });
});
