import { get, graphql, listOf, times, type AttackRequest, type Target } from "./attack-request.js";

const asked =
  "query ($f: PlanFilter, $o: PlanOrder) { plans(filter: $f, orderBy: $o, first: 100) { totalCount facets { kind values { value count } } edges { facts { allergens { allergen presence traces } nutrients { nutrient min max } costs { date } } } } }";

/** Searches for plans that are as long as they may be, and longer, and that nothing fits or everything. */
export function findAttacks({ foods, publisher }: Target): readonly AttackRequest[] {
  const codes = (size: number) => listOf(size, (at) => ["milk", "peanut", "fish", "wheat"][at % 4] ?? "milk");
  const wrong = (size: number) => listOf(size, (at) => `${"carrt".repeat(6)}${String(at)}`);
  const nutrients = listOf(50, (at) => ({ nutrient: "proteinG", min: at, max: 1_000_000 - at }));
  const filters: Readonly<Record<string, object>> = {
    "every diet fifty times": { diets: listOf(50, () => "vegan"), withoutAllergens: codes(50), region: "US-CA" },
    "lists that are too long": { diets: listOf(2_000, () => "vegan"), foodsAtHand: wrong(3_000) },
    "fifty diets that nobody knows": { diets: listOf(50, (at) => `vegn${String(at)}`) },
    "appliances that nobody has": { withoutAppliances: wrong(50) },
    "few foods without an appliance": { maxFoodsToBuy: 0, withoutAppliances: ["oven-shelf"] },
    "foods that nobody knows": { usesAnyOf: wrong(50), usesAllOf: wrong(50), foodsAtHand: wrong(200) },
    "every food at hand": { foodsAtHand: foods.slice(0, 200) },
    "every food in use": { usesAllOf: foods.slice(0, 50), usesAnyOf: foods.slice(0, 50) },
    "figures that no plan has": { minProteinGrams: 1_000_000, nutrients },
    "figures that are none": { maxSessionMinutes: Number.MAX_VALUE, minFibreGrams: -1e300 },
    "a cost in many digits": { maxCostPerServing: { amount: "9".repeat(20_000), currency: "EUR" } },
    "beginnings of all words": { search: "a e i o u s t r n l m d", publisher },
    "a time that no calendar has": { publishedAfter: "0000-01-01T00:00:00Z" },
    "a time beyond all others": { publishedAfter: "9999-12-31T23:59:59-12:00" },
    "words that are operators": { search: "'!' & | <-> :* ( ) \\ \u0000" },
    "one long word": { search: "carrot".repeat(30) },
    "marks without a letter": { search: "\u0301 \u0302\u0303 \u20dd" },
    "two hundred words": { search: "ab ".repeat(66) },
    "tags of marks": { tags: listOf(50, () => "\u0301".repeat(200)) },
    "a tag that ends a label": { tags: ["x *", "milk *", "* EU"], language: "en *" },
    "everything at once": {
      ...{ diets: ["vegan"], withoutAllergens: ["milk"], region: "DE", maxSessionMinutes: 60, maxHandsOnMinutes: 60 },
      ...{
        minProteinGrams: 1,
        usesAnyOf: foods.slice(0, 50),
        search: "barley",
        tags: ["x"],
        publishedAfter: "0001-01-01T00:00:00Z",
      },
    },
  };
  const named = Object.entries(filters).map(([name, f]) => graphql(`plans: ${name}`, asked, { f }));
  const orders = ["NEWEST", "FIRST_PUBLISHED", "SHORTEST_SESSION", "LEAST_HANDS_ON"].flatMap((o) => [
    graphql(
      `plans: a cursor of another order, ${o}`,
      `
        query ($o: PlanOrder, $a: String) {
          plans(orderBy: $o, first: 5, after: $a) {
            nodes {
              slug
            }
          }
        }
      `,
      {
        o,
        a: Buffer.from(JSON.stringify(["1e400", "00000000-0000-0000-0000-000000000000"])).toString("base64url"),
      },
    ),
  ]);
  return [
    ...named,
    ...orders,
    graphql(
      "plans: thirty searches with counts",
      `{ ${times(28, (at) => `a${String(at)}: plans(first: 100, filter: { search: "b${String(at)}", foodsAtHand: ["carrot"] }) { totalCount facets { kind values { value count } } }`)} }`,
    ),
    get(
      "plans over REST with every part",
      "/v1/plans?include=facts&include=count&include=facets&first=100&diet=vegan&food-at-hand=carrot",
    ),
    get("plans over REST with a thousand diets", `/v1/plans?${"diet=vegan&".repeat(1_000)}`),
    get(
      "plans over REST with a cost that is none",
      `/v1/plans?max-cost-per-serving=${"9".repeat(2_000)}%20${"X".repeat(2_000)}`,
    ),
    get("plans over REST with a nutrient that is none", `/v1/plans?min-nutrient=${"a:".repeat(1_500)}`),
    get("plans over REST with a time that is none", "/v1/plans?published-after=9999999-01-01T00:00:00Z"),
  ];
}
