import type { PlanBundle } from "../../../src/domain/model/plan.js";
import type { Sql } from "../../../src/persistence/sql/plain-sql.js";
import type { Deps } from "../../../src/services/deps.js";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { publishPlan } from "../../../src/services/plans/publish-plan.js";
import { saveDocuments } from "../../../src/services/drafts/save-documents.js";
import { updatePublisher } from "../../../src/services/access/save-publisher.js";
import { withdrawPlan } from "../../../src/services/plans/withdraw-plan.js";
import { demo, demoBundle, rules } from "../../graphql/open-test-app.js";
import { openFeed } from "../imports/open-feed.js";

const publisher = demo.publisher.slug;
const caller = { actor: { kind: "PROGRAM", name: "test" }, requestId: null } as const;

export interface World {
  readonly deps: Deps;
  readonly sql: Sql;
  /** Moves the clock. */
  passDay(): void;
}

/** Something that changes what readers are told. `n` makes it another change each time. */
export type Change = (world: World, n: number) => Promise<void>;

const must = (result: { readonly ok: boolean }): void => {
  if (!result.ok) throw new Error(JSON.stringify(result));
};

const retitled = (bundle: PlanBundle, n: number): PlanBundle => ({
  ...bundle,
  plan: { ...bundle.plan, title: `${bundle.plan.title}, edition ${String(n)}` },
});

const publishNext: Change = async ({ deps }, n) => must(await publishPlan(deps, retitled(demoBundle("bean-night"), n)));

/** Everything by which the service changes what anyone may read, and one thing done behind its back. */
export const changes: Readonly<Record<string, Change>> = {
  "a plan is published": publishNext,
  "a plan is corrected": async ({ deps }, n) =>
    must(await publishPlan(deps, retitled(demoBundle("bean-night"), n + 1000), "The beans were too few.")),
  "a plan is withdrawn": async (world, n) => {
    await publishNext(world, n + 2000);
    const [newest] = await world.deps.data.revisions.summaries([{ publisher, slug: "bean-night", revision: null }]);
    const revision = newest?.revision ?? 0;
    must(await withdrawPlan(world.deps, caller, { publisher, slug: "bean-night", revision, reason: "Too salty." }));
  },
  "a publisher is renamed": async ({ deps }, n) =>
    must(await updatePublisher(deps, caller, { slug: publisher, name: `Third Gate ${String(n)}` })),
  "a publisher says where it publishes": async ({ deps }, n) => {
    const text = `kind: publisher\nslug: ${publisher}\nregion: ${n % 2 === 0 ? "GB" : "US"}\ndescription: Edition ${String(n)}\n`;
    must(await saveDocuments(deps, caller, { publisher, texts: [{ name: "publisher.yaml", text }] }));
  },
  "foods are saved": async ({ deps }, n) => {
    const foods = demo.foods.map((food) => (food.slug === "onion" ? { ...food, aisle: `crate-${String(n)}` } : food));
    await deps.data.transaction((data) => data.foods.save(foods));
  },
  "a price list is loaded": async ({ deps }, n) => {
    const shop = await openFeed(deps, { publisher: null, kind: "PRICES", slug: "shop", settings: priceSettings });
    await shop.run(`food,pack,content,price\nonion,net,1 kg,${String(1 + (n % 7))}.20\n`);
  },
  "a price list is taken back": async ({ deps }, n) => {
    const shop = await openFeed(deps, { publisher: null, kind: "PRICES", slug: "stall", settings: priceSettings });
    const run = await shop.run(`food,pack,content,price\ncarrot,bunch-${String(n)},400 g,0.40\n`);
    await shop.run(null, { kind: "UNDO", undoes: run.id });
  },
  "the source of a price list gets another name": async ({ deps }, n) => {
    await openFeed(deps, {
      ...{ publisher: null, kind: "PRICES", slug: "shop" },
      settings: { ...priceSettings, source: `Shop ${String(n)}` },
    });
  },
  "rules are loaded": async ({ deps }, n) => {
    const lists = rules.allergens.lists.map((list) => ({ ...list, law: `${list.law} (as of ${String(n)})` }));
    const set = {
      ...rules,
      code: `set-${String(n)}`,
      inForceFrom: "2026-02-01",
      allergens: { ...rules.allergens, lists },
    };
    await deps.data.ruleSets.add(set, new Date(1_000_000 * n));
  },
  "rules come into force": async (world, n) => {
    const lists = rules.allergens.lists.map((list) => ({ ...list, law: `${list.law} (from ${String(n)})` }));
    const tomorrow = new Date(world.deps.clock().getTime() + 86_400_000).toISOString().slice(0, 10);
    const set = {
      ...rules,
      code: `later-${String(n)}`,
      inForceFrom: tomorrow,
      allergens: { ...rules.allergens, lists },
    };
    await world.deps.data.ruleSets.add(set, new Date(1_000_000 * n));
    world.passDay();
  },
  "a day passes": ({ passDay }) => {
    passDay();
    return Promise.resolve();
  },
  "somebody changes rows by hand": async ({ sql }, n) => {
    await sql.query("UPDATE foods SET aisle = $1 WHERE slug = 'garlic'", [`by hand ${String(n)}`]);
  },
};

const priceSettings = { currency: "XTS", region: "XA", locale: "en" };

/** The demo, with nothing listed yet. */
export async function settle(deps: Deps): Promise<void> {
  must(await loadSeeds(deps, demo));
}

const plan = `/v1/plans/${publisher}/bean-night`;
const household = "servings=7&region=XA&currency=XTS&diet=gluten-free";

const scaled = `scaled(servings: 7, household: { region: "XA", currency: "XTS", diets: ["gluten-free"] })`;

/** What anyone may ask: an address, or a GraphQL document. */
export const questions: readonly string[] = [
  `{ plan(publisher: "${publisher}", slug: "bean-night") { title revision publisher { name }
    ${scaled} { shoppingList { cost { atTill { amount } } lines { food { name aisle } buy { count pack { name } } } }
      allergens { lists { law } findings { name presence } } storage { place days } warnings { message } } } }`,
  `{ first: plan(publisher: "${publisher}", slug: "bean-night", revision: 1) { title withdrawnBecause newest { revision } } }`,
  `{ plans(first: 3) { edges { node { title revisions(first: 2) { edges { node { title } } } } } }
    food(slug: "onion") { name aisle packs { name price { amount } source { title } } } ruleSets { code } }`,
  `${plan}?${household}`,
  `${plan}.md?${household}`,
  `${plan}.jsonld`,
  `${plan}?revision=1&servings=3`,
  `${plan}/list.csv?${household}`,
  `${plan}/storage?${household}&start=2026-03-01T10:00&zone=Europe/Lisbon`,
  `${plan}/servings-table?from=1&to=4&region=XA&currency=XTS`,
  `/v1/plans/${publisher}/roots-and-barley/session?servings=5`,
  "/v1/plans",
  "/v1/foods?first=50",
  "/v1/foods/onion",
  `/v1/components/${publisher}/boiled-kidney-beans`,
  `/v1/publishers/${publisher}`,
  `/v1/publishers/${publisher}/feed.atom`,
  "/v1/changes",
  "/",
  `/p/${publisher}`,
  `/p/${publisher}/bean-night?${household}`,
  `/p/${publisher}/bean-night/list?plan=${publisher}/roots-and-barley:3`,
  `/p/${publisher}/bean-night/card?${household}`,
];
