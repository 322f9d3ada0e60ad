import { afterAll, beforeAll, expect, it } from "vitest";
import request from "supertest";
import type { AllergenPresence, Food } from "../../../src/domain/model/food.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { noteFactSources, workOutDueFacts } from "../../../src/services/plans/listing/work-out-due-facts.js";
import { publishPlan } from "../../../src/services/plans/publish-plan.js";
import { describeOnBothDatabases, type TestDatabase } from "../../kit/databases.js";
import { food, invented } from "../../kit/builders.js";
import { planText, publisher as planTextPublisher } from "../../kit/plan-writer.js";
import { smallBundle } from "../../persistence/small-bundle.js";
import { demo, openTestApp, type TestApp } from "../open-test-app.js";

const facts = `facts { workedOutAt sessionMinutes handsOnMinutes days servings foodsToBuy foodsAtHand diets
  costs { perServing { amount currency } date } nutrients { nutrient min max } allergens { allergen presence traces } }`;
const hits = `query ($filter: PlanFilter, $orderBy: PlanOrder, $first: Int, $after: String, $last: Int, $before: String) {
  plans(filter: $filter, orderBy: $orderBy, first: $first, after: $after, last: $last, before: $before) {
    totalCount totalCountIsExact
    nodes { slug }
    pageInfo { hasNextPage hasPreviousPage startCursor endCursor }
    edges { node { slug } ${facts} }
  }
}`;

interface Facts {
  readonly workedOutAt: string;
  readonly sessionMinutes: number | null;
  readonly handsOnMinutes: number | null;
  readonly days: number;
  readonly foodsToBuy: number;
  readonly foodsAtHand: number | null;
  readonly diets: readonly string[];
  readonly costs: readonly { readonly perServing: { readonly amount: string; readonly currency: string } }[];
  readonly nutrients: readonly {
    readonly nutrient: string;
    readonly min: number | null;
    readonly max: number | null;
  }[];
  readonly allergens: readonly { readonly allergen: string; readonly presence: string; readonly traces: string }[];
}

interface Found {
  readonly totalCount: number;
  readonly totalCountIsExact: boolean;
  readonly nodes: readonly { readonly slug: string }[];
  readonly pageInfo: {
    readonly hasNextPage: boolean;
    readonly hasPreviousPage: boolean;
    readonly startCursor: string | null;
    readonly endCursor: string | null;
  };
  readonly edges: readonly { readonly node: { readonly slug: string }; readonly facts: Facts | null }[];
}

interface Scaled {
  readonly diets: readonly { readonly code: string; readonly fits: boolean | null }[];
  readonly allergens: {
    readonly findings: readonly {
      readonly code: string;
      readonly asIngredient: { readonly presence: string };
      readonly traces: string;
    }[];
  };
  readonly sessions: readonly { readonly totalMinutes: number; readonly handsOnMinutes: number }[];
  readonly nutrition: {
    readonly nutrients: readonly {
      readonly nutrient: string;
      readonly perServing: number;
      readonly complete: boolean;
    }[];
  };
  readonly shoppingList: {
    readonly cost: { readonly perServing: { amount: string; currency: string } | null; unpriced: readonly unknown[] };
  };
}

const owner = "hedge-end";

/** A food that says of peanuts and milk what it is told to, and has figures and a price. */
const told = (slug: string, peanut: AllergenPresence, price: string, more: Partial<Food> = {}): Food =>
  food(slug, {
    allergens: ["peanut", "milk"].map((code) => ({ code, presence: peanut, source: invented })),
    nutrients: { per100g: { proteinG: 20, energyKcal: 100 }, source: invented },
    packs: [
      {
        ...{
          id: "bag",
          name: "bag",
          content: { low: "500", high: "500", unit: "g" },
          region: null,
          seen: "2026-02-01",
        },
        ...{ price: { amount: price, currency: "XTS" }, source: invented },
      },
    ],
    ...more,
  });

const foods: readonly Food[] = [
  told("oca", "DOES_NOT_CONTAIN", "1.00", {
    names: [
      { language: "en", region: null, one: "oca root", many: "oca roots", also: [] },
      { language: "de", region: null, one: "Knollensauerklee", many: "Knollensauerklee", also: ["Süßknolle"] },
    ],
  }),
  told("skirret", "DOES_NOT_CONTAIN", "3.00"),
  told("ground-bean", "UNKNOWN", "2.00"),
  food("unpriced-kale"),
];

/** A plan of some of these foods. */
function plan(slug: string, title: string, of: readonly string[], more: Partial<PlanBundle["plan"]> = {}): PlanBundle {
  const bundle = smallBundle({ publisher: owner, slug, title, foods: of });
  return {
    ...bundle,
    plan: { ...bundle.plan, ...more },
    foods: of.map((each) => foods.find((one) => one.slug === each) ?? food(each)),
  };
}

describeOnBothDatabases("plans that are searched for", (open) => {
  let database: TestDatabase;
  let app: TestApp;
  let now = new Date("2026-03-01T09:00:00Z");
  let token: string;

  beforeAll(async () => {
    database = await open();
    app = await openTestApp(database.data, undefined, () => now);
    const loaded = await loadSeeds(app.deps, demo);
    if (!loaded.ok) throw new Error(JSON.stringify(loaded.problems));
    await database.data.publishers.save({ slug: owner, name: "Hedge End" });
    await database.data.foods.save(foods);
    await publish(plan("oca-night", "Roasted oca", ["oca"], { tags: ["Autumn", "one pot"] }));
    await publish(plan("skirret-supper", "Skirret supper", ["skirret", "oca"]));
    await publish(
      plan("bean-stew", "Ground bean stew", ["ground-bean", "oca"], { introduction: "Crème of the valley." }),
    );
    await publish(plan("kale-plate", "Plate of kale", ["unpriced-kale"], { locale: "de" }));
    token = await app.tokenFor(owner, ["PUBLISH", "WRITE", "READ_DRAFTS"]);
  });
  afterAll(() => app.close());

  const publish = async (bundle: PlanBundle): Promise<void> => {
    now = new Date(now.getTime() + 60_000);
    const published = await publishPlan(app.deps, bundle);
    if (!published.ok) throw new Error(JSON.stringify(published.problems));
  };
  const find = async (variables: Record<string, unknown> = {}): Promise<Found> => {
    const { data, errors } = await app.ask(hits, variables);
    expect(errors).toEqual([]);
    return (data as unknown as { plans: Found }).plans;
  };
  const slugs = async (filter: object, more: object = {}): Promise<readonly string[]> =>
    (await find({ filter, ...more })).nodes.map(({ slug }) => slug);
  const ofOwner = (filter: object, more: object = {}): Promise<readonly string[]> =>
    slugs({ publisher: owner, ...filter }, more);
  const rows = async (sql: string): Promise<readonly Readonly<Record<string, unknown>>[]> =>
    (await database.sql.query(sql)).rows;

  it("are found by what is said of them when they are scaled, in every region", async () => {
    const publishers = [...new Set(demo.bundles.map((bundle) => bundle.plan.publisher))];
    for (const region of [null, "DE", "US-CA", "BR"]) {
      const asked = demo.bundles.map(
        ({ plan: { publisher, slug, serves } }, at) => `p${at}: plan(publisher: "${publisher}", slug: "${slug}") {
          scaled(servings: ${serves}, household: { region: ${JSON.stringify(region)} }) {
            diets { code fits } allergens { findings { code asIngredient { presence } traces } }
            sessions { totalMinutes handsOnMinutes } nutrition { nutrients { nutrient perServing complete } }
            shoppingList { cost { perServing { amount currency } unpriced } } } }`,
      );
      const { data, errors } = await app.ask(`{ ${asked.join("\n")} }`);
      expect(errors).toEqual([]);
      const plans = demo.bundles.map(({ plan: { slug } }, at) => ({
        slug,
        scaled: (data as unknown as Record<string, { scaled: Scaled }>)[`p${at}`]!.scaled,
      }));
      const that = (is: (scaled: Scaled) => boolean): readonly string[] =>
        plans
          .filter(({ scaled }) => is(scaled))
          .map(({ slug }) => slug)
          .toSorted();
      const search = async (filter: object): Promise<readonly string[]> =>
        (await slugs({ ...filter, publisher: publishers[0], region })).toSorted();
      const { edges } = await find({ filter: { publisher: publishers[0], region } });
      for (const { slug, scaled } of plans) {
        const shown = edges.find(({ node }) => node.slug === slug)?.facts;
        expect(shown?.diets).toEqual(
          scaled.diets.flatMap(({ code, fits }) => (fits === true ? [code] : [])).toSorted(),
        );
        expect(shown?.sessionMinutes).toBe(Math.max(...scaled.sessions.map(({ totalMinutes }) => totalMinutes)));
        expect(shown?.handsOnMinutes).toBe(scaled.sessions.reduce((sum, each) => sum + each.handsOnMinutes, 0));
        const { perServing, unpriced } = scaled.shoppingList.cost;
        const isPriced = perServing !== null && unpriced.length === 0;
        expect(shown?.costs.map((cost) => cost.perServing)).toEqual(isPriced ? [perServing] : []);
        for (const { code, asIngredient, traces } of scaled.allergens.findings) {
          const listed = shown?.allergens.find(({ allergen }) => allergen === code);
          if (listed !== undefined)
            expect([code, listed.presence, listed.traces]).toEqual([code, asIngredient.presence, traces]);
        }
      }
      for (const diet of ["vegetarian", "vegan", "no-fish", "gluten-free"]) {
        const keeps = that(({ diets }) => diets.some(({ code, fits }) => code === diet && fits === true));
        expect([region, diet, await search({ diets: [diet] })]).toEqual([region, diet, keeps]);
      }
      for (const allergen of ["fish", "peanut", "milk", "tree-nut"]) {
        const free = that(({ allergens }) =>
          allergens.findings.some(
            ({ code, asIngredient, traces }) =>
              code === allergen && asIngredient.presence === "DOES_NOT_CONTAIN" && traces !== "MAY_CONTAIN",
          ),
        );
        expect([region, allergen, await search({ withoutAllergens: [allergen] })]).toEqual([region, allergen, free]);
      }
      const [first] = plans;
      const protein = first?.scaled.nutrition.nutrients.find((each) => each.nutrient === "proteinG");
      const certain = (least: number) =>
        that(({ nutrition }) =>
          nutrition.nutrients.some((each) => each.nutrient === "proteinG" && each.complete && each.perServing >= least),
        );
      const least = protein?.perServing ?? 50;
      expect(await search({ minProteinGrams: least })).toEqual(expect.arrayContaining([...certain(least)]));
      const minutes = first!.scaled.sessions[0]!.totalMinutes;
      expect(await search({ maxSessionMinutes: minutes })).toEqual(
        that(({ sessions }) => Math.max(...sessions.map(({ totalMinutes }) => totalMinutes)) <= minutes),
      );
    }
  });

  it("are free from an allergen only where everybody says so", async () => {
    expect(await ofOwner({ withoutAllergens: ["peanut"] })).toEqual(["skirret-supper", "oca-night"]);
    expect(await ofOwner({ withoutAllergens: ["peanut", "milk"], region: "FR" })).toEqual([
      "skirret-supper",
      "oca-night",
    ]);
    expect(await ofOwner({ withoutAllergens: ["peanut", "egg"] })).toEqual([]);
  });

  it("are found by figures, and not where these are not known", async () => {
    const [oca] = (await find({ filter: { publisher: owner, usesAllOf: ["oca"] } })).edges.filter(
      ({ node }) => node.slug === "oca-night",
    );
    expect(oca?.facts?.costs).toEqual([{ perServing: { amount: "0.10", currency: "XTS" }, date: "2026-03-01" }]);
    expect(await ofOwner({ maxCostPerServing: { amount: "0.10", currency: "XTS" } })).toEqual(["oca-night"]);
    expect(await ofOwner({ maxCostPerServing: { amount: "0.0999", currency: "XTS" } })).toEqual([]);
    expect(await ofOwner({ maxCostPerServing: { amount: "1000", currency: "XTS" } })).not.toContain("kale-plate");
    expect(await ofOwner({ maxCostPerServing: { amount: "1000", currency: "EUR" } })).toEqual([]);
    expect(await ofOwner({ minProteinGrams: 10 })).toEqual(["bean-stew", "skirret-supper", "oca-night"]);
    expect(await ofOwner({ minProteinGrams: 20 })).toEqual(["bean-stew", "skirret-supper"]);
    expect(await ofOwner({ maxEnergyKcal: 50 })).toEqual(["oca-night"]);
    expect(await ofOwner({ nutrients: [{ nutrient: "proteinG", min: 10, max: 10 }] })).toEqual(["oca-night"]);
  });

  it("are found by what is to be bought and by the kitchen they need", async () => {
    const { edges } = await find();
    const bought = edges.map(({ node, facts: of }) => ({ slug: node.slug, foods: of?.foodsToBuy ?? Infinity }));
    for (const most of [0, 1, 2, 10, 1000])
      expect((await slugs({ maxFoodsToBuy: most })).toSorted()).toEqual(
        bought.flatMap(({ slug, foods: number }) => (number <= most ? [slug] : [])).toSorted(),
      );
    const needs = (bundle: PlanBundle): readonly (string | null)[] =>
      [...bundle.components, ...bundle.plan.meals].flatMap(({ steps }) => steps.map(({ appliance }) => appliance));
    // An oven is its shelves.
    for (const [asked, taken] of [
      [["hob-ring"], ["hob-ring"]],
      [["oven"], ["oven", "oven-shelf"]],
      [
        ["oven-shelf", "Hob-Ring "],
        ["oven", "oven-shelf", "hob-ring"],
      ],
      [["smoker"], []],
    ] as const) {
      const found = await slugs({ withoutAppliances: asked });
      const without = demo.bundles.filter((bundle) => !needs(bundle).some((each) => taken.some((one) => one === each)));
      expect([asked, found.filter((slug) => demo.bundles.some(({ plan: of }) => of.slug === slug)).toSorted()]).toEqual(
        [asked, without.map(({ plan: of }) => of.slug).toSorted()],
      );
    }
    expect(await slugs({ withoutAppliances: ["oven-shelf", "hob-ring"] })).not.toEqual(await slugs({}));
  });

  it("are found by foods, tags, language and time", async () => {
    expect(await ofOwner({ usesAnyOf: ["Knollensauerklee"] })).toEqual(["bean-stew", "skirret-supper", "oca-night"]);
    expect(await ofOwner({ usesAllOf: ["oca", "skirret"] })).toEqual(["skirret-supper"]);
    expect(await ofOwner({ usesAnyOf: ["skirret", "ground-bean"] })).toEqual(["bean-stew", "skirret-supper"]);
    expect(await ofOwner({ tags: ["AUTUMN"] })).toEqual(["oca-night"]);
    // Who reads the German of Austria is shown what is written in German.
    for (const language of ["de", "de-AT"]) expect(await ofOwner({ language })).toEqual(["kale-plate"]);
    expect(await ofOwner({ publishedAfter: "2026-03-01T09:02:30Z" })).toEqual(["kale-plate", "bean-stew"]);
    expect(await ofOwner({ foodsAtHand: ["oca", "ground bean"].map((name) => name.replace(" ", "-")) })).toEqual([
      "bean-stew",
      "oca-night",
      "skirret-supper",
    ]);
    const { edges } = await find({ filter: { publisher: owner, foodsAtHand: ["oca"] } });
    expect(edges.map(({ node, facts: shown }) => [node.slug, shown?.foodsAtHand, shown?.foodsToBuy])).toEqual([
      ["oca-night", 1, 1],
      ["bean-stew", 1, 2],
      ["skirret-supper", 1, 2],
    ]);
  });

  it("are found by words, beginnings, other forms and slips, in every language of their foods", async () => {
    for (const search of [
      "roasted",
      "ROAST",
      "oca roast",
      "roasting oca",
      "rosted oca",
      "knollen",
      "sussknolle",
      "Süßknolle",
      "one pot",
    ])
      expect([search, (await ofOwner({ search })).includes("oca-night")]).toEqual([search, true]);
    expect(await ofOwner({ search: "creme" })).toEqual(["bean-stew"]);
    expect(await ofOwner({ search: "roasted kale" })).toEqual([]);
    expect(await ofOwner({ search: "zzzzzz" })).toEqual([]);
    expect(await ofOwner({ search: "!?" })).toHaveLength(4);
    expect(await ofOwner({ search: "oca' | 'kale" })).toEqual([]);
  });

  it("come in every order a page at a time, each once, forwards and backwards", async () => {
    for (const orderBy of ["NEWEST", "FIRST_PUBLISHED", "SHORTEST_SESSION", "LEAST_HANDS_ON", null]) {
      const filter = orderBy === null ? { foodsAtHand: ["oca", "carrot"] } : {};
      const all = await slugs(filter, { orderBy, first: 100 });
      expect(all.length).toBeGreaterThan(3);
      const forwards: string[] = [];
      let page = await find({ filter, orderBy, first: 2 });
      for (;;) {
        forwards.push(...page.nodes.map(({ slug }) => slug));
        expect(page.totalCount).toBe(all.length);
        if (!page.pageInfo.hasNextPage) break;
        page = await find({ filter, orderBy, first: 2, after: page.pageInfo.endCursor });
      }
      expect([orderBy, forwards]).toEqual([orderBy, all]);
      const before = await find({ filter, orderBy, last: 100, before: page.pageInfo.startCursor });
      expect([...before.nodes, ...page.nodes].map(({ slug }) => slug)).toEqual(all);
    }
  });

  it("are counted, and by kind", async () => {
    const { data, errors } = await app.ask(
      `{ plans(filter: { publisher: "${owner}", region: "DE" }) { totalCount totalCountIsExact facets { kind isExact values { value count } } } }`,
    );
    expect(errors).toEqual([]);
    const { plans } = data as { plans: { facets: { kind: string; values: { value: string; count: number }[] }[] } };
    expect(plans).toMatchObject({ totalCount: 4, totalCountIsExact: true });
    const of = (kind: string) => plans.facets.find((each) => each.kind === kind)?.values;
    expect(of("WITHOUT_ALLERGEN")).toEqual([
      { value: "milk", count: 2 },
      { value: "peanut", count: 2 },
    ]);
    expect(of("TAG")).toEqual([
      { value: "autumn", count: 1 },
      { value: "one pot", count: 1 },
    ]);
    expect(of("LANGUAGE")).toEqual([
      { value: "en", count: 3 },
      { value: "de", count: 1 },
    ]);
  });

  it("refuses what it does not know, with what is near, over GraphQL and REST", async () => {
    const filter = {
      ...{ diets: ["vegn"], withoutAllergens: ["milkk"], region: "Atlantis", language: "german" },
      withoutAppliances: ["ofen-shelf"],
      ...{ maxCostPerServing: { amount: "3", currency: "EURO" }, usesAnyOf: ["oca", "skirrett"] },
    };
    const { errors } = await app.ask(hits, { filter });
    const problems = errors[0]?.extensions["problems"] as readonly { code: string; path: unknown; message: string }[];
    expect(problems.map(({ code }) => code).toSorted()).toEqual([
      "BAD_SHAPE",
      ...Array<string>(5).fill("UNKNOWN_CODE"),
      "UNKNOWN_FOOD",
    ]);
    expect(JSON.stringify(problems)).toContain('"nearest":["vegan"');
    expect(JSON.stringify(problems)).toContain('"nearest":["skirret"]');
    const address =
      "/v1/plans?diet=vegn&without-allergen=milkk&region=Atlantis&language=german&max-cost-per-serving=3+EURO&uses-any-of=oca&uses-any-of=skirrett&without-appliance=ofen-shelf";
    const answer = await request(app.app.server).get(address);
    expect(answer.status).toBe(400);
    const { problems: told } = answer.body as { problems: readonly { code: string; path: readonly unknown[] }[] };
    expect(told.map(({ code }) => code)).toEqual(problems.map(({ code }) => code));
    expect(told.map(({ path }) => path[0]).toSorted()).toEqual([
      "diet",
      "language",
      "max-cost-per-serving",
      "region",
      "uses-any-of",
      "without-allergen",
      "without-appliance",
    ]);
    for (const wrong of [
      { maxSessionMinutes: -1 },
      { maxFoodsToBuy: -1 },
      { withoutAppliances: Array<string>(51).fill("oven") },
      { tags: Array<string>(51).fill("x") },
      { search: "a ".repeat(3) + "b c d e f g h i j k l m n" },
    ])
      expect((await app.ask(hits, { filter: wrong })).errors).toHaveLength(1);
    expect((await app.ask(hits, { filter: { foodsAtHand: ["oca"] }, orderBy: "NEWEST" })).errors).toHaveLength(1);
  });

  it("are the same over REST", async () => {
    const over = async (query: string) =>
      (await request(app.app.server).get(`/v1/plans?publisher=${owner}&${query}`)).body as {
        items: { slug: string; facts?: Facts | null }[];
        totalCount?: number;
        next: string | null;
      };
    const found = await over(
      "without-allergen=peanut&max-cost-per-serving=2+XTS&min-protein-grams=5&include=facts,count",
    );
    const same = await find({
      filter: {
        publisher: owner,
        withoutAllergens: ["peanut"],
        maxCostPerServing: { amount: "2", currency: "XTS" },
        minProteinGrams: 5,
      },
    });
    expect(found.items.map(({ slug, facts: shown }) => ({ node: { slug }, facts: shown }))).toEqual(same.edges);
    expect(found.totalCount).toBe(same.totalCount);
    expect((await over("food-at-hand=oca")).items.map(({ slug }) => slug)).toEqual([
      "oca-night",
      "bean-stew",
      "skirret-supper",
    ]);
    const first = await over("tag=autumn&first=1");
    expect(first.items[0]).not.toHaveProperty("facts");
    const paged = await over("order=shortest-session&first=1");
    expect(paged.next).toContain("order=shortest-session");
  });

  it("are published ones: no word of a draft is found, or stored to be found", async () => {
    const text = planText("secret-feast", "Quetzalfeast").replace(
      `publisher: ${planTextPublisher}`,
      `publisher: ${owner}`,
    );
    const saved = await app.ask(
      "mutation ($input: SaveDraftInput!) { savePlanDraft(input: $input) { draft { version } problems { message } } }",
      { input: { publisher: owner, text } },
      token,
    );
    expect(saved.data).toEqual({ savePlanDraft: { draft: { version: 1 }, problems: [] } });
    expect(await slugs({ search: "quetzalfeast" })).toEqual([]);
    expect(await slugs({ search: "quetzalfeest", publisher: owner })).toEqual([]);
    expect(await rows("SELECT word FROM searched_words WHERE word LIKE 'quetzal%'")).toEqual([]);
  });

  it("read no document as long as nothing else is said of their foods", async () => {
    database.statements.clear();
    expect(await ofOwner({ withoutAllergens: ["peanut"] })).toHaveLength(2);
    expect(database.statements.sent.filter((sql) => sql.includes("document"))).toEqual([]);
  });

  it("leave the list at once when a food is recalled, and only they are worked out again", async () => {
    await noteFactSources(app.deps);
    const before = new Map(
      (await rows("SELECT revision_id, worked_out_at FROM plan_facts")).map((row) => [
        row["revision_id"],
        row["worked_out_at"],
      ]),
    );
    now = new Date(now.getTime() + 3_600_000);
    const recalled = told("skirret", "CONTAINS", "3.00");
    await database.data.foods.save([recalled]);
    expect(await ofOwner({ withoutAllergens: ["peanut"] })).toEqual(["oca-night"]);
    const shown = (await find({ filter: { publisher: owner, usesAllOf: ["skirret"] } })).edges[0]?.facts;
    expect(shown?.allergens.find(({ allergen }) => allergen === "peanut")?.presence).toBe("CONTAINS");
    expect(await noteFactSources(app.deps)).toMatchObject({ changed: 1, workedOut: 1, failed: 0 });
    const after = await rows(
      "SELECT p.slug, f.revision_id, f.worked_out_at FROM plan_facts f JOIN plans p ON p.id = f.plan_id",
    );
    const again = after.filter((row) => String(before.get(row["revision_id"])) !== String(row["worked_out_at"]));
    expect(again.map(({ slug }) => slug)).toEqual(["skirret-supper"]);
    expect(await noteFactSources(app.deps)).toMatchObject({ changed: 0, workedOut: 0 });
  });

  it("leave at once when they are withdrawn; one that is in force again is back when its facts are worked out", async () => {
    await publish(plan("oca-night", "Roasted oca, better", ["oca"], { tags: ["winter"] }));
    expect(await ofOwner({ tags: ["winter"] })).toEqual(["oca-night"]);
    expect(await ofOwner({ tags: ["autumn"] })).toEqual([]);
    const first = await slugs({ publisher: owner }, { orderBy: "FIRST_PUBLISHED" });
    expect(first.at(-1)).toBe("oca-night");
    const withdraw = `mutation ($input: WithdrawPlanInput!) { withdrawPlan(input: $input) { problems { message } } }`;
    const input = { publisher: owner, slug: "oca-night", revision: 2, reason: "a slip" };
    expect((await app.ask(withdraw, { input }, token)).data).toEqual({ withdrawPlan: { problems: [] } });
    expect(await ofOwner({ tags: ["winter"] })).toEqual([]);
    expect(await ofOwner({ tags: ["autumn"] })).toEqual([]);
    expect(await ofOwner({ search: "roasted" })).toEqual(["oca-night"]);
    expect(await workOutDueFacts(app.deps)).toEqual({ workedOut: 1, failed: 0 });
    expect(await ofOwner({ tags: ["autumn"] })).toEqual(["oca-night"]);
    expect((await app.ask(withdraw, { input: { ...input, revision: 1 } }, token)).data).toEqual({
      withdrawPlan: { problems: [] },
    });
    expect(await ofOwner({ search: "roasted" })).toEqual([]);
    expect(
      await rows("SELECT 1 FROM plan_facts f JOIN plans p ON p.id = f.plan_id WHERE p.slug = 'oca-night'"),
    ).toEqual([]);
  });

  it("are found as before until their facts are worked out, and by nothing new", async () => {
    await database.sql.query(
      "UPDATE plan_facts SET worked_out_at = NULL, labels = '{}', known_by = NULL, bought = '{}', costs = '{}', due = 1",
    );
    expect(await ofOwner({ withoutAllergens: ["peanut"] })).toEqual([]);
    expect(await ofOwner({ usesFood: "ground-bean", search: "stew" })).toEqual(["bean-stew"]);
    expect((await find({ filter: { publisher: owner } })).edges[0]?.facts).toBeNull();
    expect(await workOutDueFacts(app.deps)).toMatchObject({ failed: 0 });
    expect(await ofOwner({ maxCostPerServing: { amount: "1000", currency: "XTS" } })).not.toEqual([]);
  });
});
