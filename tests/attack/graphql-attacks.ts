import { allergenCodes } from "../../src/domain/nutrition/allergen-codes.js";
import { hostileDocuments } from "../graphql/limits/hostile-documents.js";
import { around, graphql, listOf, times, type AttackRequest, type Target } from "./attack-request.js";

const shapes = {
  list: "shoppingList { lines { need { text } buy { count } uses { asWritten amount { text } } warnings: __typename } warnings { code message path } }",
  session: "session { totalMinutes tasks { __typename } order { __typename } gap }",
  sessions: "sessions { day totalMinutes }",
  storage: "storage { days upToDays advice keepUntil }",
  contents:
    "allergens { lists { __typename } alsoContains } diets { __typename } nutrition { __typename } cautions { __typename }",
  meals: "meals { factor allergens { alsoContains } nutrition { __typename } lines { __typename } }",
} as const;

const sizes = [1, 7, 40, 200] as const;

/** Households as long as they may be, and longer: each list by itself, and all of them. */
export function households({ foods, components }: Target): Readonly<Record<string, (size: number) => object>> {
  const swap = (at: number) => ({ from: around(foods, at), to: around(foods, at + 1 + Math.floor(at / foods.length)) });
  const food = (at: number) => ({ food: around(foods, at), amount: String(at + 1), unit: "g" });
  return {
    "the same diet": (size) => ({ diets: listOf(size, () => "gluten-free") }),
    "diets that nobody knows": (size) => ({ diets: listOf(size, (at) => `diet-${String(at)}`) }),
    "every allergen, and foods that nobody likes": (size) => ({
      avoidAllergens: listOf(size, (at) => around(allergenCodes, at)),
      dislikes: listOf(size, (at) => around(foods, at)),
    }),
    "allergens and dislikes that nobody knows": (size) => ({
      avoidAllergens: listOf(size, (at) => `nutz-${String(at)}`),
      dislikes: listOf(size, (at) => `gurkken tomatten ${"y".repeat(18)} ${String(at)}`),
      locale: "pl",
    }),
    swaps: (size) => ({ swaps: listOf(size, swap) }),
    "things on hand": (size) => ({ onHand: listOf(size, food) }),
    "amounts in words": (size) => ({
      onHand: listOf(size, (at) => ({ food: around(foods, at), amount: `1 ${"z".repeat(34)} ${String(at)}` })),
    }),
    "foods of no name": (size) => ({
      onHand: listOf(size, (at) => ({
        food: `gurkken tomatten ${"y".repeat(18)} ${String(at)}`,
        amount: "half a bag",
      })),
    }),
    "things on hand to be used by": (size) => ({
      onHand: listOf(size, (at) => ({ ...food(at), useBy: `2027-01-${String((at % 28) + 1).padStart(2, "0")}` })),
      sessionStart: { local: "2027-01-03T09:00", zone: "Europe/Berlin" },
    }),
    "components on hand": (size) => ({
      onHand: listOf(size, (at) => ({ component: around(components, at), amount: "10", unit: "g" })),
    }),
    eaters: (size) => ({ eaters: listOf(size, () => ({ count: 1, portion: "1/3" })) }),
    "what is wrong with everything": (size) => ({
      ...{ region: "Atlantis", currency: "gold", locale: "!", diets: listOf(size, (at) => `vegn-${String(at)}`) },
      swaps: listOf(size, (at) => ({ from: `${around(foods, at)}q`, to: `q${around(foods, at)}` })),
      onHand: listOf(size, (at) => ({ food: around(foods, at), amount: "1", unit: `gramz${String(at)}` })),
      kitchen: { cooks: 0, appliances: listOf(size, (at) => ({ appliance: `ovn-${String(at)}`, count: -1 })) },
    }),
    routes: (size) => ({
      routes: { mode: "CHEAPEST", byName: listOf(size, (at) => ({ component: around(components, at), route: "x" })) },
    }),
    kitchens: (size) => ({
      kitchen: { cooks: Math.min(size, 20), appliances: [{ appliance: "hob-ring", count: Math.min(size, 100) }] },
    }),
    "a small kitchen": () => ({ kitchen: { cooks: 1, appliances: [{ appliance: "oven-shelf", count: 1 }] } }),
    everything: (size) => ({
      ...{ avoidAllergens: listOf(size, (at) => around(allergenCodes, at)), dislikes: foods.slice(0, size) },
      ...{ diets: listOf(size, () => "vegan"), swaps: listOf(size, swap), onHand: listOf(size, food) },
      ...{ locale: "pl", region: "US-CA", currency: "XTS", measures: "US_CUSTOMARY" },
    }),
  };
}

const plan = ({ publisher, plans }: Target, at: number): string =>
  `plan(publisher: ${JSON.stringify(publisher)}, slug: ${JSON.stringify(around(plans, at))})`;

/** Alike questions for households that nobody asked for before. */
export const freshRegions = (target: Target, first: number): AttackRequest =>
  graphql(
    `28 new regions, from ${String(first)}`,
    `{ ${plan(target, 0)} { ${times(28, (at) => `a${String(at)}: scaled(servings: 4, household: { region: "${region(first * 28 + at)}" }) { servings }`)} } }`,
  );

/** Parts of countries, as they are written; most are assigned to nothing. */
const region = (at: number): string =>
  `${around(["US", "GB", "DE", "YA", "IN", "AU"], at)}-${at.toString(36).toUpperCase().padStart(3, "0").slice(-3)}`;

export function graphqlAttacks(target: Target): readonly AttackRequest[] {
  const asked = (inside: string) =>
    `query ($n: Int!, $h: HouseholdInput) { ${plan(target, 1)} { scaled(servings: $n, household: $h) { ${inside} } } }`;
  const byHousehold = Object.entries(households(target)).flatMap(([name, of]) =>
    sizes.flatMap((size) =>
      Object.entries(shapes).map(([shape, inside]) =>
        graphql(`${String(size)} of ${name}: ${shape}`, asked(inside), { n: size, h: of(size) }),
      ),
    ),
  );
  const tables = Object.entries(households(target)).map(([name, of]) =>
    graphql(
      `servings 1 to 200 with ${name}`,
      `query ($h: HouseholdInput) { ${plan(target, 2)} { servingsTable(from: 1, to: 200, household: $h) { servings even packWasteShare perServing { amount } } } }`,
      { h: of(200) },
    ),
  );
  const servings = [1, 13, 199, 1_000, 1_000_000, 2_147_483_647, -1].flatMap((count) =>
    target.plans
      .slice(0, 2)
      .map((_, at) =>
        graphql(
          `${String(count)} servings`,
          `{ ${plan(target, at)} { scaled(servings: ${String(count)}) { ${shapes.session} ${shapes.list} } } }`,
        ),
      ),
  );
  const portions = (count: number) =>
    listOf(count, (at) => ({ publisher: target.publisher, slug: around(target.plans, at), servings: at + 1 }));
  const lists = [10, 50, 300].flatMap((count) =>
    Object.entries(households(target)).map(([name, of]) =>
      graphql(
        `a list of ${String(count)} plans with ${name}`,
        "query ($p: [PlanPortionInput!]!, $h: HouseholdInput) { shoppingList(plans: $p, household: $h) { lines { uses { asWritten } } warnings { message path } } }",
        { p: portions(count), h: of(200) },
      ),
    ),
  );
  const pages = Object.entries(households(target)).map(([name, of]) =>
    graphql(
      `a page of 100 plans, 28 times with ${name}`,
      `query ($h: HouseholdInput) { plans(first: 100) { edges { node { ${times(28, (n) => `a${String(n)}: scaling(servings: ${String(n)}, household: $h) { scaled { servings } problems { where text parameters { values } } }`)} } } } }`,
      { h: of(200) },
    ),
  );
  const shoppings = Object.entries(households(target)).map(([name, of]) =>
    graphql(
      `shopping for 50 plans with ${name}`,
      "query ($p: [PlanPortionInput!]!, $h: HouseholdInput) { shopping(plans: $p, household: $h) { list { warnings { text parameters { values } } } problems { message text } } }",
      { p: portions(50), h: of(200) },
    ),
  );
  const vocabularies = [1, 28].map((count) =>
    graphql(
      `${String(count)} vocabularies`,
      `{ ${times(count, (at) => `a${String(at)}: vocabulary(locale: "de-u-ca-c${String(at)}") { lists { codes { code name spellings } } problemKinds { title parameters } allergens { namedBy { law name region list } } regionsWithRules { holdsIn name rules } currenciesWithPrices { name } }`)} }`,
    ),
  );
  const named = [100, 101, 5_000].flatMap((count) => [
    graphql(
      `${String(count)} nodes, 28 times`,
      `query ($ids: [ID!]!) { ${times(28, (n) => `a${String(n)}: nodes(ids: $ids) { id ... on Plan { foods { id } } }`)} }`,
      { ids: listOf(count, (at) => Buffer.from(`Food:${around(target.foods, at)}`).toString("base64url")) },
    ),
    graphql(
      `${String(count)} plans by slug`,
      "query ($p: [PlanNameInput!]!) { plansBySlug(plans: $p) { planId updatedAt meals { mealId } components { componentId } publisher { plans(first: 100) { edges { node { title } } } } } }",
      { p: listOf(count, (at) => ({ publisher: target.publisher, slug: around(target.plans, at) })) },
    ),
  ]);
  const aboutPlans = [
    ...byHousehold,
    ...tables,
    ...servings,
    ...lists,
    ...pages,
    ...shoppings,
    ...named,
    ...vocabularies,
  ];
  return [...aboutPlans, ...wholeDocuments(target)];
}

function wholeDocuments(target: Target): readonly AttackRequest[] {
  const wide = [
    [4, 10, 10],
    [16, 16, 16],
    [28, 2, 2],
  ].map(([a = 1, b = 1, c = 1]) =>
    graphql(
      `${String(a)} x ${String(b)} x ${String(c)} names below __schema`,
      `{ ${times(a, (n) => `a${String(n)}: __schema { ...S }`)} } fragment S on __Schema { ${times(b, (n) => `b${String(n)}: types { ...T }`)} } ` +
        `fragment T on __Type { ${times(c, (n) => `c${String(n)}: fields { name description }`)} }`,
    ),
  );
  const pages = [100, 101, 1_000_000].flatMap((first) => [
    graphql(
      `pages of ${String(first)}`,
      `{ plans(first: ${String(first)}) { edges { node { title revisions(first: ${String(first)}) { edges { node { title } } } } } } }`,
    ),
    graphql(
      `foods by ${String(first)}`,
      `{ foods(first: ${String(first)}) { edges { node { slug names { __typename } } } } }`,
    ),
  ]);
  const titles = graphql(
    "a hundred plans in 40 languages each",
    `{ plans(first: 100) { edges { node { ${times(40, (at) => `t${String(at)}: texts(locale: "${around(["de", "fr", "zh-Hant", "es"], at)}") { title summary }`)} } } } }`,
  );
  const cursors = ["x", "eyJ9", "A".repeat(20_000), Buffer.from("[[[[1]]]]").toString("base64url"), "\u0000"].map(
    (after) =>
      graphql("a cursor that is none", "query ($a: String) { plans(first: 10, after: $a) { edges { cursor } } }", {
        a: after,
      }),
  );
  const words = [
    "%".repeat(2_000),
    "a ".repeat(5_000),
    "\\".repeat(3_000),
    "ß".repeat(3_000),
    "' OR 1=1 --",
    "a".repeat(100_000),
  ].map((search) =>
    graphql(
      "a long search",
      "query ($s: String) { foods(first: 20, filter: { search: $s }) { edges { cursor } openTable { description nutrients { per100g } } } plans(first: 20, filter: { search: $s }) { edges { cursor } } }",
      { s: search },
    ),
  );
  const variables = [
    { n: Number.MAX_VALUE },
    { n: "9".repeat(100_000) },
    Object.fromEntries(listOf(20_000, (at) => [`v${String(at)}`, at])),
    { h: JSON.parse(`${'{"a":'.repeat(1_000)}1${"}".repeat(1_000)}`) as unknown },
  ].map((given) =>
    graphql(
      "variables of no use",
      `query ($n: Int, $h: HouseholdInput) { plans(first: $n) { edges { cursor } } ${plan(target, 0)} { scaled(servings: 4, household: $h) { servings } } }`,
      given,
    ),
  );
  const hostile = hostileDocuments.map(({ name, query, variables: given = {} }) => graphql(name, query, given));
  const regions = listOf(12, (at) => freshRegions(target, at));
  const locales = listOf(12, (at) =>
    graphql(
      "new locales",
      `{ ${plan(target, 0)} { ${times(28, (n) => `a${String(n)}: scaled(servings: 4, household: { locale: "${around(["en", "de", "fr", "pl", "ga"], n)}-u-x${String(at)}-nu-${String(n).padStart(4, "a")}" }) { servings }`)} } }`,
    ),
  );
  const pans = [1e308, 1e-308, 0, -1].map((side) =>
    graphql(
      "a pan of no size",
      "query ($a: Float!) { panFactor(from: { diameter: $a }, to: { length: $a, width: 1 }) { __typename } }",
      { a: side },
    ),
  );
  return [...wide, ...pages, titles, ...cursors, ...words, ...variables, ...hostile, ...regions, ...locales, ...pans];
}
