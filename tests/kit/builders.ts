import type { Measured } from "../../src/domain/model/amount.js";
import type { Component, Route, Step } from "../../src/domain/model/component.js";
import type { Food, FoodPart, OwnMeasure, Pack } from "../../src/domain/model/food.js";
import { noHousehold, type Household, type OnHand } from "../../src/domain/model/household.js";
import type { KeepingRule } from "../../src/domain/model/keeping.js";
import type { Line, LineItem, Swap } from "../../src/domain/model/line.js";
import type { Meal, Plan, PlanBundle } from "../../src/domain/model/plan.js";
import type { Source } from "../../src/domain/model/source.js";
import { bundleOf } from "../../src/domain/plan/compile/plan-bundle.js";

/** A number made up for a test; facts taken from somewhere name their own source. */
export const invented: Source = { kind: "INVENTED", title: "test parameter", section: null };

export const published = (title: string, section: string | null = null): Source => ({
  kind: "PUBLISHED",
  title,
  section,
});

/** `"500 g"`, `"1/2 us-cup"`, `"2-3 own:clove"`: amounts and unit ids exactly as the model writes them. */
export function measured(text: string): Measured {
  const [amount = "", unit = "", ...rest] = text.split(" ");
  const [low = "", high = low] = amount.split("-");
  if (unit === "" || rest.length > 0) throw new Error(`not an amount and a unit: ${text}`);
  return { low, high, unit };
}

/** A food bought by weight of which nothing else is known. */
export function food(slug: string, facts: Partial<Food> = {}): Food {
  return {
    slug,
    names: [{ language: "en", region: null, one: slug, many: slug, also: [] }],
    aisle: "shelf",
    shoppedBy: "MASS",
    ndbNo: null,
    densities: [],
    measures: [],
    parts: [],
    edible: [],
    yields: [],
    allergens: [],
    diets: [],
    nutrients: null,
    keepsAs: null,
    keeping: [],
    packs: [],
    alwaysThere: false,
    ...facts,
  };
}

/** `own("clove", { grams: 5 })` */
export function own(name: string, facts: Partial<Pick<OwnMeasure, "grams" | "millilitres" | "pieces">>): OwnMeasure {
  return {
    name,
    one: name,
    many: `${name}s`,
    grams: null,
    millilitres: null,
    pieces: null,
    source: invented,
    ...facts,
  };
}

export const density = (gramsPerMl: number, form: string | null = null): Food["densities"][number] => ({
  form,
  gramsPerMl,
  source: invented,
});

export const edible = (share: number, form: string | null = null): Food["edible"][number] => ({
  form,
  share,
  source: invented,
});

export const part = (
  name: string,
  perPiece: string,
  after: readonly string[] = [],
  facts: Pick<FoodPart, "keepsAs" | "keeping"> = {},
): FoodPart => ({
  name,
  perPiece: measured(perPiece),
  after,
  source: invented,
  ...facts,
});

/** `keeps(2)`: days in the fridge, in the writer's word. */
export const keeps = (days: number, place: KeepingRule["place"] = "FRIDGE"): KeepingRule => ({
  place,
  days,
  container: null,
  condition: null,
  source: invented,
});

/** `pack("500 g", "1.20")`; price in XTS, null where nobody knows it. */
export function pack(content: string, price: string | null, facts: Partial<Pack> = {}): Pack {
  return {
    id: `${content} at ${price ?? "no price"}`,
    name: "pack",
    content: measured(content),
    price: price === null ? null : { amount: price, currency: "XTS" },
    region: null,
    seen: "2026-01-01",
    source: invented,
    ...facts,
  };
}

/** `of("lemon", "juice")` */
export const of = (slug: string, partName: string | null = null): LineItem => ({
  kind: "FOOD",
  food: slug,
  part: partName,
});

export const made = (component: string): LineItem => ({ kind: "COMPONENT", component });

export const swap = (to: string, ratio = "1", diets: readonly string[] = []): Swap => ({
  food: to,
  ratio,
  diets,
  note: null,
});

/** A proportional line as bought; amount null is "to taste". Its id is given by the meal or component it goes into. */
export function line(amount: string | null, item: LineItem | string, facts: Partial<Line> = {}): Line {
  const what = typeof item === "string" ? of(item) : item;
  const named =
    what.kind === "FOOD" ? [what.food, what.part].filter((each) => each !== null).join(" ") : what.component;
  return {
    id: "",
    item: what,
    written: amount === null ? `${named}, to taste` : `${amount} ${named}`,
    amount: amount === null ? null : measured(amount),
    extra: false,
    measured: "AS_BOUGHT",
    form: null,
    preparation: null,
    rule: amount === null ? "TO_TASTE" : "PROPORTIONAL",
    exponent: null,
    optional: false,
    mark: null,
    swaps: [],
    ...facts,
  };
}

const numbered = (lines: readonly Line[]): readonly Line[] =>
  lines.map((each, index) => (each.id === "" ? { ...each, id: `l${index + 1}` } : each));

export function step(id: string, minutes: number, facts: Partial<Step> = {}): Step {
  return {
    id,
    text: id,
    minutes,
    attention: "HANDS_ON",
    appliance: null,
    temperatureC: null,
    after: [],
    grows: "FIXED",
    loadBatches: null,
    minWait: 0,
    maxWait: null,
    eveningBefore: false,
    lines: [],
    ...facts,
  };
}

/** `component("dal", "6 us-cup", [line("1 lb", "lentils")])`: batches of any size. */
export function component(
  slug: string,
  yields: string,
  lines: readonly Line[],
  facts: Partial<Component> = {},
): Component {
  return {
    slug,
    title: slug,
    lines: numbered(lines),
    steps: [],
    yield: { amount: measured(yields), source: invented },
    batch: { min: "0", max: null, increment: null },
    densities: [],
    measures: [],
    keepsAs: null,
    keeping: [],
    routes: [],
    cautions: [],
    ...facts,
  };
}

export function route(name: string, lines: readonly Line[], facts: Partial<Route> = {}): Route {
  return { name, kind: "BUY", lines: numbered(lines), steps: [], keepsAs: null, keeping: [], ...facts };
}

/** A meal for one on the day of the session unless said otherwise. */
export function meal(slug: string, lines: readonly Line[], facts: Partial<Meal> = {}): Meal {
  return { slug, title: slug, day: 0, serves: 1, lines: numbered(lines), steps: [], ...facts };
}

export function plan(meals: readonly Meal[], facts: Partial<Plan> = {}): Plan {
  return {
    publisher: "allotment-society",
    slug: "plan",
    title: "Plan",
    summary: null,
    locale: "en",
    measures: "METRIC",
    serves: 1,
    meals,
    kitchen: { cooks: 1, appliances: {} },
    promisedMinutes: null,
    claims: [],
    ...facts,
  };
}

/** Foods that lines name and nobody described are added, bought by weight. */
export function bundle(
  meals: readonly Meal[] | Plan,
  components: readonly Component[] = [],
  foods: readonly Food[] = [],
): PlanBundle {
  const whole = "slug" in meals ? meals : plan(meals);
  const lines = [...whole.meals, ...components, ...components.flatMap(({ routes }) => routes)].flatMap(
    (each) => each.lines,
  );
  const named = lines.flatMap(({ item, swaps }) => [
    ...(item.kind === "FOOD" ? [item.food] : []),
    ...swaps.map((each) => each.food),
  ]);
  const known = new Set(foods.map(({ slug }) => slug));
  const missing = [...new Set(named)].filter((slug) => !known.has(slug)).map((slug) => food(slug));
  return bundleOf(whole, components, [...foods, ...missing]);
}

export const household = (facts: Partial<Household> = {}): Household => ({ ...noHousehold, ...facts });

/** `onHand("flour", "2 us-cup")` */
export function onHand(slug: string, amount: string, facts: Partial<OnHand> = {}): OnHand {
  const { low, unit } = measured(amount);
  return { item: { kind: "FOOD", food: slug }, amount: low, unit, useBy: null, asOtherForm: false, ...facts };
}
