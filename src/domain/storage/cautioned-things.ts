import type { Component, Route } from "../model/component.js";
import type { Meal } from "../model/plan.js";
import type { CautionedThing } from "./cautions.js";
import type { KeptLine } from "./guidance.js";
import { factsOfRoute } from "./inherited-limits.js";

type CautionedFood = CautionedThing["foods"][number];

/** A scaled component is one. */
interface CautionedComponent {
  readonly component: Pick<Component, "slug" | "keepsAs" | "keeping" | "steps" | "cautions">;
  readonly route: Pick<Route, "kind" | "keepsAs" | "keeping" | "steps"> | null;
  readonly lines: readonly Pick<KeptLine, "item">[];
  readonly isHeated?: boolean;
}

/** A scaled meal is one. */
interface CautionedMeal {
  readonly meal: Pick<Meal, "slug" | "steps">;
  readonly lines: readonly Pick<KeptLine, "item">[];
}

/** The components and meals of a plan as cautions look at them: with the route taken and the foods really used. */
export function cautionedThings(
  components: readonly CautionedComponent[],
  meals: readonly CautionedMeal[],
  foods: readonly CautionedFood[],
): readonly CautionedThing[] {
  const bySlug = new Map(foods.map((food) => [food.slug, food]));
  const foodsIn = (lines: readonly Pick<KeptLine, "item">[]): readonly CautionedFood[] =>
    lines.flatMap(({ item }) => (item.kind === "FOOD" ? (bySlug.get(item.food) ?? []) : []));
  return [
    ...components.map(({ component, route, lines, isHeated }): CautionedThing => ({
      subject: { kind: "COMPONENT", slug: component.slug },
      keepsAs: factsOfRoute(component, route).keepsAs,
      codes: component.cautions,
      steps: route === null || route.steps.length === 0 ? component.steps : route.steps,
      foods: foodsIn(lines),
      ...(isHeated === undefined ? {} : { isHeated }),
    })),
    ...meals.map(({ meal, lines }): CautionedThing => ({
      subject: { kind: "MEAL", slug: meal.slug },
      keepsAs: null,
      codes: [],
      steps: meal.steps,
      foods: foodsIn(lines),
    })),
  ];
}
