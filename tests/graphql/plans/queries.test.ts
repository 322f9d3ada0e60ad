import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { demo, openTestApp, type TestApp } from "../open-test-app.js";

const plan = `plan(publisher: "third-gate-allotments", slug: "lentils-and-greens")`;

describeOnBothDatabases("queries", (open) => {
  let app: TestApp;

  const ask = async <T>(query: string, variables: Record<string, unknown> = {}): Promise<T> => {
    const { data, errors } = await app.ask(query, variables);
    expect(errors).toEqual([]);
    return data as T;
  };

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    const loaded = await loadSeeds(app.deps, demo);
    expect(loaded).toMatchObject({ ok: true, value: { plans: demo.plans.length, foods: demo.foods.length } });
  });
  afterAll(() => app.close());

  it("load the demo a second time without changing anything", async () => {
    const again = await loadSeeds(app.deps, demo);
    expect(again).toEqual({ ok: true, value: { plans: 0, foods: 0 } });
  });

  it("give a plan with its publisher, meals in the order of days, components and foods", async () => {
    const { plan: found } = await ask<{ plan: Record<string, unknown> & { meals: { day: number }[] } }>(`{ ${plan} {
      slug title revision serves locale measures claims publishedAt withdrawnAt
      publisher { slug name }
      meals { slug day lines { written amount { text } food { slug } component { slug } } steps { text minutes } }
      components { slug yield { value unit { code } } batch { min max increment } routes { name kind lines { code } } }
      foods { slug name aisle }
    } }`);
    expect(found).toMatchObject({
      slug: "lentils-and-greens",
      revision: 1,
      serves: 2,
      measures: "METRIC",
      claims: ["vegetarian"],
      publishedAt: "2026-03-01T09:00:00.002Z",
      withdrawnAt: null,
      publisher: { slug: "third-gate-allotments", name: "The Third Gate Allotment Society" },
    });
    expect(found.meals.map(({ day }) => day)).toEqual([0, 1, 2, 3, 4]);
    expect(found["components"]).toContainEqual(
      expect.objectContaining({
        slug: "boiled-lentils",
        yield: { value: 1350, unit: { code: "g" } },
        batch: { min: 0.5, max: 2, increment: null },
      }),
    );
    expect(found["foods"]).toContainEqual({ slug: "lemon", name: "lemon", aisle: "fruit" });
  });

  it("scale it: 350 g of lentils for two are 1225 g for seven, and what is made is used or left over", async () => {
    interface Scaled {
      readonly meals: readonly {
        readonly factor: number;
        readonly lines: readonly {
          readonly line: { readonly code: string };
          readonly amount: { readonly grams: number } | null;
        }[];
      }[];
      readonly components: readonly {
        readonly made: Amount;
        readonly used: Amount;
        readonly leftOver: Amount;
        readonly onHand: Amount;
      }[];
    }
    interface Amount {
      readonly grams: number;
    }
    const amount = "{ grams }";
    const found = await ask<{ plan: { scaled: Scaled } }>(`{ ${plan} { scaled(servings: 7) {
      servings meals { factor lines { line { code } amount { grams text } } }
      components { component { slug } batches loads made ${amount} used ${amount} leftOver ${amount} onHand ${amount} }
      warnings { code message path }
    } } }`);
    const { meals, components } = found.plan.scaled;
    expect(meals[0]?.factor).toBe(3.5);
    expect(meals[0]?.lines[0]?.amount?.grams).toBeCloseTo(1225, 9);
    expect(components.length).toBeGreaterThan(3);
    for (const { made, used, leftOver } of components) {
      expect(made.grams).toBeCloseTo(used.grams + leftOver.grams, 6);
      expect(leftOver.grams).toBeGreaterThanOrEqual(0);
    }
  });

  it("shop for it: uses name plan, meal or component, packs cover the need, aisles hold every line once", async () => {
    interface Line {
      readonly food: { readonly slug: string };
      readonly toBuy: { readonly value: number } | null;
      readonly uses: readonly {
        readonly plan: { readonly slug: string };
        readonly meal: object | null;
        readonly component: object | null;
      }[];
    }
    const found = await ask<{
      plan: { scaled: { shoppingList: { lines: readonly Line[]; aisles: readonly { lines: readonly Line[] }[] } } };
    }>(`{ ${plan} { scaled(servings: 7, household: { region: "XA", currency: "XTS" }) { shoppingList {
      lines { ...L } aisles { name lines { ...L } } cost { currency atTill { amount currency } unpriced } warnings { code }
    } } } }
    fragment L on ShoppingLine {
      food { slug } need { value text } toBuy { value } buy { count pack { code content { value } price { amount } } }
      uses { plan { slug } meal { slug } component { slug } asWritten amount { value } } open
    }`);
    const { lines, aisles } = found.plan.scaled.shoppingList;
    expect(lines.map(({ food }) => food.slug)).toContain("brown-lentils");
    expect(
      aisles
        .flatMap((aisle) => aisle.lines)
        .map(({ food }) => food.slug)
        .toSorted(),
    ).toEqual(lines.map(({ food }) => food.slug).toSorted());
    for (const { uses } of lines) {
      expect(uses.length).toBeGreaterThan(0);
      for (const use of uses) {
        expect(use.plan.slug).toBe("lentils-and-greens");
        expect((use.meal === null) !== (use.component === null)).toBe(true);
      }
    }
  });

  it("take off what is on hand, in the food's own measure too", async () => {
    const query = `query ($household: HouseholdInput) { ${plan} { scaled(servings: 7, household: $household) {
      shoppingList { lines { food { slug } need { grams } onHand { grams } toBuy { grams } } }
    } } }`;
    interface Found {
      plan: { scaled: { shoppingList: { lines: { food: { slug: string }; onHand: { grams: number } | null }[] } } };
    }
    const { plan: found } = await ask<Found>(query, {
      household: { onHand: [{ food: "brown-lentils", amount: "100", unit: "g" }] },
    });
    const lentils = found.scaled.shoppingList.lines.find(({ food }) => food.slug === "brown-lentils");
    expect(lentils?.onHand?.grams).toBeCloseTo(100, 9);
  });

  it("merge several plans into one list whose uses name each plan", async () => {
    const found = await ask<{ shoppingList: { lines: { uses: { plan: { slug: string } }[] }[] } }>(
      `query ($plans: [PlanPortionInput!]!) {
        shoppingList(plans: $plans) { lines { food { slug } uses { plan { slug } } } cost { unpriced } }
      }`,
      {
        plans: demo.plans.map(({ slug }) => ({ publisher: "third-gate-allotments", slug, servings: 3 })),
      },
    );
    const named = found.shoppingList.lines.flatMap(({ uses }) => uses.map((use) => use.plan.slug));
    expect([...new Set(named)].toSorted()).toEqual(demo.plans.map(({ slug }) => slug).toSorted());
  });

  it("show amounts in the measures and language a reader asks for", async () => {
    const query = `query ($household: HouseholdInput) { ${plan} { scaled(servings: 2, household: $household) {
      meals { lines { amount { text unit { code name } } } }
    } } }`;
    interface Found {
      plan: { scaled: { meals: { lines: { amount: { text: string; unit: { code: string } } | null }[] }[] } };
    }
    const written = await ask<Found>(query);
    expect(written.plan.scaled.meals[0]?.lines[0]?.amount?.text).toBe("350 g");
    const ounces = await ask<Found>(query, { household: { measures: "US_CUSTOMARY", locale: "en-US" } });
    expect(ounces.plan.scaled.meals[0]?.lines[0]?.amount?.unit.code).toBe("oz");
  });

  it("find a component in the newest revision that holds it, and a food by slug, name and aisle", async () => {
    const found = await ask<Record<string, Record<string, unknown>>>(`{
      component(publisher: "third-gate-allotments", slug: "boiled-lentils") { slug title plan { slug } meals { slug } }
      food(slug: "lemon") { slug de: name(locale: "de-AT") name aisleName inPolish: aisleName(locale: "pl") parts { name perPiece { text } after } packs { code } }
      byName: foods(filter: { search: "lemo" }) { edges { node { slug } } }
      byAisle: foods(filter: { aisle: "fruit" }, first: 100) { edges { node { slug aisle } } }
    }`);
    expect(found["component"]).toMatchObject({ slug: "boiled-lentils", plan: { slug: expect.any(String) } });
    expect(found["food"]).toMatchObject({ de: "Zitrone", name: "lemon", aisleName: "fruit", inPolish: "owoce" });
    expect(found["byName"]?.["edges"]).toContainEqual({ node: { slug: "lemon" } });
    const aisles = (found["byAisle"]?.["edges"] as { node: { aisle: string } }[]).map(({ node }) => node.aisle);
    expect([...new Set(aisles)]).toEqual(["fruit"]);
  });

  it("give every node back by its id, the same as it was", async () => {
    interface Node {
      readonly __typename: string;
      readonly id: string;
    }
    const of = "{ __typename id slug }";
    const found = await ask<{
      plan: Node & { publisher: Node; meals: Node[]; components: Node[]; foods: Node[] };
      food: Node;
    }>(
      `{ ${plan} { __typename id slug publisher ${of} meals ${of} components ${of} foods ${of} } food(slug: "lemon") ${of} }`,
    );
    const { publisher, meals, components, foods, ...self } = found.plan;
    const nodes = [self, publisher, ...meals, ...components, ...foods, found.food];
    expect(new Set(nodes.map(({ __typename }) => __typename))).toEqual(
      new Set(["Plan", "Publisher", "Meal", "Component", "Food"]),
    );
    expect(new Set(nodes.map(({ id }) => id)).size).toBe(nodes.length);
    for (const node of nodes) {
      const slug =
        "... on Plan { slug } ... on Publisher { slug } ... on Meal { slug } ... on Component { slug } ... on Food { slug }";
      const again = await ask<{ node: Node }>(`query ($id: ID!) { node(id: $id) { __typename id ${slug} } }`, {
        id: node.id,
      });
      expect(again.node).toEqual(node);
    }
  });

  it("give what they named in a reader's language back in that language, and no other", async () => {
    interface Named {
      readonly id: string;
      readonly title?: string;
      readonly name?: string;
    }
    const named = "{ id name packs { name content { text } } parts { title } aisleName }";
    const household = `{ servings: 6, household: { locale: "de-AT", region: "AT" } }`.slice(2, -2);
    const { scaled } = (
      await ask<{
        plan: {
          scaled: {
            meals: { meal: Named & { lines: { food: Named | null }[] } }[];
            components: { component: Named }[];
            shoppingList: { lines: { food: Named }[] };
          };
        };
      }>(
        `{ ${plan} { scaled(${household}) { meals { meal { id title lines { food ${named} } } } components { component { id title } } shoppingList { lines { food ${named} } } } } }`,
      )
    ).plan;
    const meals = scaled.meals.map(({ meal: { lines: _, ...meal } }) => meal);
    const foods = [
      ...scaled.meals.flatMap(({ meal }) => meal.lines.flatMap(({ food }) => food ?? [])),
      ...scaled.shoppingList.lines.map(({ food }) => food),
    ];
    expect(foods.map(({ name }) => name)).toContain("Zwiebel");
    const query = `query ($id: ID!) { node(id: $id) { id ... on Meal { title } ... on Component { title } ... on Food ${named} } }`;
    for (const each of [...meals, ...scaled.components.map(({ component }) => component), ...foods])
      expect((await ask<{ node: Named }>(query, { id: each.id })).node).toEqual(each);
    const first = Buffer.from(foods[0]!.id, "base64url").toString("utf8");
    for (const language of ["deu-AT", "de-at", "nonsense!", "xx-xx-xx", "en-GB"]) {
      const forged = Buffer.from(first.replace("de-AT", encodeURIComponent(language))).toString("base64url");
      expect(forged).not.toBe(foods[0]!.id);
      expect((await ask<{ node: Named | null }>(query, { id: forged })).node).toBeNull();
    }
  });

  it("find a revision by its number when it is withdrawn, and no longer by name alone", async () => {
    const name = { publisher: "third-gate-allotments", slug: "eggs-and-oats" };
    await app.deps.data.revisions.withdraw({ ...name, revision: 1 }, new Date("2026-03-02T00:00:00Z"));
    expect(await app.ask(`{ plan(publisher: "third-gate-allotments", slug: "eggs-and-oats") { id } }`)).toMatchObject({
      data: { plan: null },
      errors: [{ path: ["plan"], extensions: { code: "WITHDRAWN" } }],
    });
    const found = await ask<Record<string, unknown>>(`{
      first: plan(publisher: "third-gate-allotments", slug: "eggs-and-oats", revision: 1) { withdrawnAt title }
    }`);
    expect(found["first"]).toMatchObject({ withdrawnAt: "2026-03-02T00:00:00.000Z" });
  });
});
