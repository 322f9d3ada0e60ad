import { demo } from "../graphql/open-test-app.js";
import type { Dice } from "../kit/arbitrary/dice.js";

const foods = [...new Set(demo.bundles.flatMap((bundle) => bundle.foods.map(({ slug }) => slug)))];
const publisher = demo.publisher.slug;
const slugs = demo.bundles.map(({ plan }) => plan.slug);

const whole = (of: Dice, least: number, most: number): number => least + of.roll(most - least + 1);

const times = <T>(count: number, make: () => T): readonly T[] => Array.from({ length: count }, make);

/** A household as an address says it, no longer than an address may be. */
function householdBy(of: Dice): string {
  const many = (): number => (of.chance(0.5) ? 0 : whole(of, 1, 40));
  return [
    ...(of.chance(0.3) ? [`region=${of.pick(["GB", "US", "AU", "DE"])}`] : []),
    ...(of.chance(0.3) ? ["diet=gluten-free", "diet=vegan"] : []),
    ...times(many(), () => `on-hand=${of.pick(foods)}:${String(whole(of, 1, 900))}%20g`),
    ...times(many(), () => `swap=${of.pick(foods)}:${of.pick(foods)}`),
    ...(of.chance(0.2) ? [`routes=${of.pick(["CHEAPEST", "LEAST_WORK"])}`] : []),
    ...(of.chance(0.3) ? [`cooks=${String(whole(of, 1, 4))}`] : []),
  ].join("&");
}

export interface AddressAsked {
  readonly method: "GET" | "POST";
  readonly url: string;
  readonly payload?: object;
}

/** A page, or an answer below /v1, whose work may be large. */
export function addressBy(of: Dice): AddressAsked {
  const kind = whole(of, 0, 5);
  const plan = (): string => `${publisher}/${of.pick(slugs)}`;
  const servings = whole(of, 1, 60);
  if (kind === 0) {
    const from = whole(of, 1, 60);
    const rows = `from=${String(from)}&to=${String(from + whole(of, 10, 60))}`;
    return { method: "GET", url: `/v1/plans/${plan()}/servings-table?${rows}&${householdBy(of)}` };
  }
  if (kind === 1) {
    const plans = times(whole(of, 3, 50), () => ({ publisher, slug: of.pick(slugs), servings: whole(of, 1, 60) }));
    const onHand = times(of.roll(200), () => ({ food: of.pick(foods), amount: String(whole(of, 1, 900)), unit: "g" }));
    return { method: "POST", url: "/v1/shopping-list", payload: { plans, household: { onHand } } };
  }
  if (kind === 2) {
    const others = times(whole(of, 2, 20), () => `plan=${plan()}:${String(whole(of, 1, 60))}`).join("&");
    return { method: "GET", url: `/p/${plan()}/list?servings=${String(servings)}&${others}&${householdBy(of)}` };
  }
  const part = of.pick(["", ".md", ".jsonld", "/list", "/session", "/storage", "/mail"]);
  const root = kind === 3 ? `/p/${plan()}` : `/v1/plans/${plan()}${part}`;
  return { method: "GET", url: `${root}?servings=${String(servings)}&${householdBy(of)}` };
}
