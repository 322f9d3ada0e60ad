import { z } from "zod";
import type { Component } from "../../domain/model/component.js";
import type { Food } from "../../domain/model/food.js";
import type { LineItem } from "../../domain/model/line.js";
import type { Meal, PlanBundle } from "../../domain/model/plan.js";
import type { Reader } from "../../domain/plan/plan-answer.js";
import type { Subject } from "../../domain/storage/guidance.js";
import { foodNameFor } from "../words/food-name.js";
import { named, slug, text, type Json } from "./named-schema.js";

export const namedThingSchema = named(
  "NamedThing",
  "A food, a component or a meal of the plan.",
  z.object({
    kind: z.enum(["FOOD", "COMPONENT", "MEAL"]),
    slug: slug("Its slug, unique among the plan's things of that kind."),
    name: text("What a reader calls it."),
  }),
);
type NamedThing = Json<typeof namedThingSchema>;

/** The things of one frozen plan by slug, and for whom they are named. A revision holds all it names, so a gap is a fault. */
export interface ThingsOfPlan {
  readonly reader: Reader;
  readonly bundle: PlanBundle;
  food(slug: string): Food;
  component(slug: string): Component;
  meal(slug: string): Meal;
  named(subject: Subject): NamedThing;
  /** Foods by slug, in the order given. */
  foods(slugs: readonly string[]): readonly NamedThing[];
  item(item: LineItem): NamedThing;
  /** What an amount of this is converted by. */
  factsOf(item: LineItem): Food | Component;
}

export function thingsOf(bundle: PlanBundle, reader: Reader): ThingsOfPlan {
  const food = finder(bundle.foods, "food");
  const component = finder(bundle.components, "component");
  const meal = finder(bundle.plan.meals, "meal");
  const nameOf = ({ kind, slug: of }: Subject): string => {
    if (kind === "FOOD") return foodNameFor(food(of), reader.locale);
    return kind === "COMPONENT" ? component(of).title : meal(of).title;
  };
  const namedOf = ({ kind, slug: of }: Subject): NamedThing => ({ kind, slug: of, name: nameOf({ kind, slug: of }) });
  return {
    reader,
    bundle,
    food,
    component,
    meal,
    named: namedOf,
    foods: (of) => of.map((each) => namedOf({ kind: "FOOD", slug: each })),
    item: (item) => namedOf({ kind: item.kind, slug: item.kind === "FOOD" ? item.food : item.component }),
    factsOf: (item) => (item.kind === "FOOD" ? food(item.food) : component(item.component)),
  };
}

function finder<Thing extends { readonly slug: string }>(things: readonly Thing[], kind: string) {
  const bySlug = new Map(things.map((thing) => [thing.slug, thing]));
  return (of: string): Thing => {
    const found = bySlug.get(of);
    if (found === undefined) throw new Error(`a frozen plan names the ${kind} ${of} but does not hold it`);
    return found;
  };
}
