import type { Component } from "../domain/model/component.js";
import type { Food } from "../domain/model/food.js";
import type { Meal, PlanBundle } from "../domain/model/plan.js";
import { inLanguage } from "../domain/plan/translate/in-language.js";
import type { RevisionSummary } from "../services/deps.js";

/** A revision with its document, and the document's foods and components by slug. */
export interface FrozenPlan {
  readonly published: RevisionSummary;
  readonly bundle: PlanBundle;
  readonly foods: ReadonlyMap<string, Food>;
  readonly components: ReadonlyMap<string, Component>;
}

export const frozenPlan = (published: RevisionSummary, bundle: PlanBundle): FrozenPlan => ({
  published,
  bundle,
  foods: new Map(bundle.foods.map((food) => [food.slug, food])),
  components: new Map(bundle.components.map((component) => [component.slug, component])),
});

/** The same with its texts in a reader's language, as far as they were translated. */
export function frozenInLanguage(frozen: FrozenPlan, locale: string | null): FrozenPlan {
  const bundle = inLanguage(frozen.bundle, locale);
  return bundle === frozen.bundle ? frozen : frozenPlan(frozen.published, bundle);
}

/** The food of that slug. A revision holds every food it names, so a missing one is a fault, not the caller's error. */
export function foodIn(frozen: FrozenPlan, slug: string): Food {
  const food = frozen.foods.get(slug);
  if (food === undefined)
    throw new Error(`revision ${frozen.published.id} names the food ${slug} but does not hold it`);
  return food;
}

/** The component of that slug; missing ones are faults as above. */
export function componentIn(frozen: FrozenPlan, slug: string): Component {
  const component = frozen.components.get(slug);
  if (component === undefined) {
    throw new Error(`revision ${frozen.published.id} names the component ${slug} but does not hold it`);
  }
  return component;
}

/** The meal of that slug; missing ones are faults as above. */
export function mealIn(frozen: FrozenPlan, slug: string): Meal {
  const meal = frozen.bundle.plan.meals.find((each) => each.slug === slug);
  if (meal === undefined)
    throw new Error(`revision ${frozen.published.id} names the meal ${slug} but does not hold it`);
  return meal;
}

/** The language of its texts where that is not the one it was written in; an object in two languages is two for a caching client. */
export const languageShown = ({ bundle, published }: FrozenPlan): { readonly language?: string } =>
  bundle.plan.locale === published.locale ? {} : { language: bundle.plan.locale };
