import type { Component } from "../domain/model/component.js";
import type { Food } from "../domain/model/food.js";
import type { Meal, PlanBundle } from "../domain/model/plan.js";
import { inLanguage } from "../domain/plan/translate/in-language.js";
import { writersShow, type Show } from "../exports/words/shown-amount.js";
import type { RevisionSummary } from "../services/deps.js";

/** A revision with its document, the document's foods and components by slug, and in whose language its things are named. */
export interface FrozenPlan {
  readonly published: RevisionSummary;
  /** BCP 47 tag of the reader, or that of the plan. */
  readonly locale: string;
  readonly bundle: PlanBundle;
  readonly foods: ReadonlyMap<string, Food>;
  readonly components: ReadonlyMap<string, Component>;
}

export const frozenPlan = (
  published: RevisionSummary,
  bundle: PlanBundle,
  locale: string = published.locale,
): FrozenPlan => ({
  published,
  locale,
  bundle,
  foods: new Map(bundle.foods.map((food) => [food.slug, food])),
  components: new Map(bundle.components.map((component) => [component.slug, component])),
});

/** The same for a reader: its foods by their names in the language, its texts as far as they were translated. */
export function frozenInLanguage(frozen: FrozenPlan, locale: string | null): FrozenPlan {
  if (locale === null || locale === frozen.locale) return frozen;
  const bundle = inLanguage(frozen.bundle, locale);
  return bundle === frozen.bundle ? { ...frozen, locale } : frozenPlan(frozen.published, bundle, locale);
}

/** Amounts as the plan's writer measures them, in the reader's words. */
export const showOf = ({ bundle, locale }: FrozenPlan): Show => ({ ...writersShow(bundle.plan), locale });

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

/** Whose language it is in where that is not the plan's own; an object in two languages is two for a caching client. */
export const languageShown = ({ locale, published }: Pick<FrozenPlan, "locale" | "published">) =>
  locale === published.locale ? {} : { language: locale };
