import type { DietRule } from "../../../domain/nutrition/allergen-rules.js";
import type { PlanBundle } from "../../../domain/model/plan.js";
import type { NameBook } from "../../words/name-book.js";

export interface Choice {
  /** As it is sent. */
  readonly value: string;
  readonly text: string;
}

/** What a reader can choose for this plan. */
export interface FormChoices {
  readonly diets: readonly Choice[];
  /** By the food as written. */
  readonly swaps: readonly { readonly from: string; readonly name: string; readonly to: readonly Choice[] }[];
  /** By component. */
  readonly routes: readonly { readonly component: string; readonly title: string; readonly ways: readonly Choice[] }[];
}

/** Every swap that a line offers, in each of the ways a component can be come by; every route; every diet of the rules. */
export function formChoices(
  { plan, components }: PlanBundle,
  diets: readonly Pick<DietRule, "code" | "name">[],
  book: NameBook,
): FormChoices {
  const lines = [
    ...plan.meals.flatMap((meal) => meal.lines),
    ...components.flatMap((component) => [...component.lines, ...component.routes.flatMap((route) => route.lines)]),
  ];
  const swaps = new Map<string, Map<string, Choice>>();
  for (const { item, swaps: offered } of lines) {
    if (item.kind !== "FOOD") continue;
    for (const { food, diets: serves, note } of offered) {
      const known = swaps.get(item.food) ?? new Map<string, Choice>();
      const why = [serves.join(", "), note ?? ""].filter((each) => each !== "").join("; ");
      const value = `${item.food}:${food}`;
      known.set(value, { value, text: book.food(food) + (why === "" ? "" : ` (${why})`) });
      swaps.set(item.food, known);
    }
  }
  return {
    diets: diets.map(({ code, name }) => ({ value: code, text: name })),
    swaps: [...swaps].map(([from, to]) => ({ from, name: book.food(from), to: [...to.values()] })),
    routes: components
      .filter(({ routes }) => routes.length > 0)
      .map(({ slug, title, routes }) => ({
        component: slug,
        title,
        ways: [
          { value: `${slug}:as-written`, text: "as written" },
          ...routes.map(({ name, kind }) => ({
            value: `${slug}:${name}`,
            text: kind === "BUY" ? `${name} (bought)` : name,
          })),
        ],
      })),
  };
}
