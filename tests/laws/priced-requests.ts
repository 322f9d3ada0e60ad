import { type Dice } from "../kit/arbitrary/dice.js";
import { demo } from "../graphql/open-test-app.js";

const foods = [...new Set(demo.bundles.flatMap((bundle) => bundle.foods.map(({ slug }) => slug)))];
const publisher = demo.bundles[0]?.plan.publisher ?? "";
const slugs = demo.bundles.map(({ plan }) => plan.slug);

const whole = (of: Dice, least: number, most: number): number => least + of.roll(most - least + 1);

function householdBy(of: Dice): object {
  const many = (most: number): number => (of.chance(0.5) ? 0 : whole(of, 1, most));
  return {
    ...(of.chance(0.3) ? { region: of.pick(["GB", "US", "AU", "DE"]) } : {}),
    diets: of.chance(0.3) ? ["gluten-free", "vegan"] : [],
    avoidAllergens: of.chance(0.3) ? ["milk", "Walnüsse", "gluten"].slice(0, whole(of, 1, 3)) : [],
    dislikes: Array.from({ length: of.chance(0.7) ? 0 : whole(of, 1, 200) }, () => of.pick(foods)),
    onHand: Array.from({ length: many(200) }, () => ({
      food: of.pick(foods),
      amount: String(whole(of, 1, 900)),
      unit: "g",
    })),
    swaps: Array.from({ length: many(200) }, () => ({ from: of.pick(foods), to: of.pick(foods) })),
    routes: { mode: of.pick(["AS_WRITTEN", "AS_WRITTEN", "CHEAPEST", "LEAST_WORK"]) },
    ...(of.chance(0.5) ? { kitchen: { cooks: whole(of, 1, 4) } } : {}),
  };
}

const parts = [
  "shoppingList { lines { food { name } need { text } buy { count pack { name } } uses { amount { text } } } cost { atTill { amount } } }",
  "storage { place days keepUntil basis { source { title } } }",
  "allergens { findings { name presence contains { name } } lists { law } }",
  "diets { code fits breaks { name } }",
  "nutrition { nutrients { perServing per100g } }",
  "meals { meal { title } lines { amount { text } food { name } } diets { code fits } }",
  "components { component { title steps { text } } made { text } lines { amount { text } } }",
  "warnings { code message }",
];

const searched = [
  "session { totalMinutes tasks { text startMinute endMinute } criticalPath { text } }",
  "sessions { day totalMinutes tasks { text startMinute } }",
];

/** A request whose work may be large; those that ask for sessions do so a few times at most, since each may be searched for long. */
export function requestBy(of: Dice): { readonly kind: number; readonly query: string; readonly variables: object } {
  const kind = whole(of, 0, 3);
  const plan = (): string => `plan(publisher: "${publisher}", slug: "${of.pick(slugs)}")`;
  const variables = { h: householdBy(of) };
  const head = "query($h: HouseholdInput)";
  if (kind === 0) {
    const from = whole(of, 1, 60);
    const rows = `servingsTable(from: ${from}, to: ${from + whole(of, 10, 60)}, household: $h) { servings atTill { amount } leftOverShare }`;
    return { kind, query: `${head} { ${plan()} { ${rows} } }`, variables };
  }
  if (kind === 1) {
    const plans = Array.from(
      { length: whole(of, 3, 25) },
      () => `{ publisher: "${publisher}", slug: "${of.pick(slugs)}", servings: ${whole(of, 1, 60)} }`,
    );
    const lines = "lines { food { name } need { text } uses { amount { text } } buy { count } } warnings { message }";
    return {
      kind,
      query: `${head} { shoppingList(plans: [${plans.join(" ")}], household: $h) { ${lines} } }`,
      variables,
    };
  }
  const sessions = of.chance(0.2);
  const asked = Array.from({ length: sessions ? 1 : whole(of, 2, 12) }, (_, at) => {
    const wanted = (sessions ? [...parts, ...searched] : parts).filter(() => of.chance(0.3));
    const picked = wanted.length > 0 ? wanted : [of.pick(parts)];
    return `a${at}: scaling(servings: ${whole(of, 1, 60)}, household: $h) { scaled { ${picked.join(" ")} } problems { text } }`;
  });
  return { kind, query: `${head} { ${plan()} { ${asked.join(" ")} } }`, variables };
}
