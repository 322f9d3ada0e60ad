// @ts-nocheck
import type { Component } from "../../src/domain/model/component.js";
import type { Food } from "../../src/domain/model/food.js";
import type { Line } from "../../src/domain/model/line.js";
import type { PlanBundle } from "../../src/domain/model/plan.js";
import type { Source } from "../../src/domain/model/source.js";

const source: Source = { kind: "INVENTED", title: "made up for this test", section: null };

export const smallFood = (slug: string, name = slug): Food => ({
  slug,
  names: [{ language: "en", region: null, one: name, many: `${name}s`, also: [] }],
  aisle: "greengrocer",
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
});

const line = (id: string, item: Line["item"]): Line => ({
  id,
  item,
  written: "100 g",
  amount: { low: "100", high: "100", unit: "g" },
  extra: false,
  measured: "AS_BOUGHT",
  form: null,
  preparation: null,
  rule: "PROPORTIONAL",
  exponent: null,
  optional: false,
  mark: null,
  swaps: [],
});

export const smallComponent = (slug: string, foods: readonly string[] = []): Component => ({
  slug,
  title: slug,
  lines: foods.map((food) => line(food, { kind: "FOOD", food, part: null })),
  steps: [],
  yield: { amount: { low: "1/3", high: "2/3", unit: "kg" }, source },
  batch: { min: "1", max: null, increment: null },
  densities: [],
  measures: [],
  keepsAs: null,
  keeping: [],
  routes: [],
  cautions: [],
});

export interface SmallPlan {
  readonly publisher: string;
  readonly slug: string;
  readonly title?: string;
  readonly foods?: readonly string[];
  readonly components?: readonly string[];
}

/** A plan of one meal that draws on all of its foods and components. */
export const smallBundle = ({ publisher, slug, title = slug, foods = [], components = [] }: SmallPlan): PlanBundle => ({
  plan: {
    publisher,
    slug,
    title,
    summary: null,
    locale: "en",
    measures: "METRIC",
    serves: 2,
    meals: [
      {
        slug: "supper",
        title: "Supper",
        day: 1,
        serves: 2,
        lines: [
          ...foods.map((food) => line(food, { kind: "FOOD", food, part: null })),
          ...components.map((component) => line(component, { kind: "COMPONENT", component })),
        ],
        steps: [],
      },
    ],
    kitchen: { cooks: 1, appliances: { "hob-ring": 2 } },
    promisedMinutes: null,
    claims: [],
  },
  components: components.map((each) => smallComponent(each)),
  foods: foods.map((each) => smallFood(each)),
});
