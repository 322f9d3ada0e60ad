import type { BaseAmount } from "../../domain/model/amount.js";
import type { Component } from "../../domain/model/component.js";
import type { Food } from "../../domain/model/food.js";
import type { PlanBundle } from "../../domain/model/plan.js";
import type { Reader } from "../../domain/plan/plan-answer.js";
import type { MeasureFacts } from "../../domain/quantity/convert.js";
import { presentAmount } from "../../domain/quantity/format.js";
import { readerLocale } from "../../domain/quantity/reader-locale.js";
import type { Subject } from "../../domain/storage/guidance.js";
import type { AdviceWords } from "../sentences/advice-text.js";
import { foodWords, otherFoodLanguage } from "./food-words.js";
import { otherLanguage } from "./languages-of.js";
import { wordsFor } from "./words-for.js";
import type { Words } from "./words.js";

/** How one reader knows the things of one plan. What the plan does not hold keeps its slug. */
export interface NameBook extends AdviceWords {
  readonly reader: Reader;
  readonly words: Words;
  /** BCP 47 tag of one of the writer's texts, where the fixed words are in another language; null: both are in one. */
  readonly languageOf: (text: string) => string | null;
  /** The same of what a writer says beside the plan, such as a note on a change, which has no translation. */
  readonly originalLanguage: string | null;
  /** BCP 47 tag of the language of a food's name, where the fixed words are in another; else null. */
  readonly foodLanguage: (slug: string) => string | null;
  readonly foodOf: (slug: string) => Food | undefined;
  readonly componentOf: (slug: string) => Component | undefined;
  /** A food or a component. */
  readonly thing: (slug: string) => string;
  readonly foods: (slugs: readonly string[]) => string;
  readonly subject: (subject: Subject) => string;
  /** In the units the reader cooks with. */
  readonly show: (amount: BaseAmount, facts: MeasureFacts) => string;
  /** A number with at most so many decimals. */
  readonly number: (value: number, places: number) => string;
}

/** A thing of which no density or measure is known. */
export const noFacts: MeasureFacts = { densities: [], measures: [] };

export function nameBook(bundle: PlanBundle, reader: Reader): NameBook {
  const { plan, components, foods, untranslated } = bundle;
  const words = wordsFor(reader.locale);
  const textLanguage = otherLanguage(plan.locale, words);
  const originalLanguage = otherLanguage(untranslated?.language ?? plan.locale, words);
  const mealsBySlug = new Map(plan.meals.map((meal) => [meal.slug, meal]));
  const componentsBySlug = new Map(components.map((component) => [component.slug, component]));
  const foodsBySlug = new Map(foods.map((food) => [food.slug, food]));
  const meal = (slug: string): string => mealsBySlug.get(slug)?.title ?? slug;
  const component = (slug: string): string => componentsBySlug.get(slug)?.title ?? slug;
  const food = (slug: string): string => {
    const found = foodsBySlug.get(slug);
    return found === undefined ? slug : foodWords(found, reader.locale).one;
  };
  const foodLanguage = (slug: string): string | null => {
    const found = foodsBySlug.get(slug);
    return found === undefined ? null : otherFoodLanguage(found, reader.locale, words);
  };
  const show = (amount: BaseAmount, facts: MeasureFacts): string => presentAmount(amount, facts, reader).text;
  return {
    reader,
    words,
    languageOf: (text) => (untranslated?.texts.has(text) === true ? originalLanguage : textLanguage),
    originalLanguage,
    meal,
    component,
    food,
    foodLanguage,
    foodOf: (slug) => foodsBySlug.get(slug),
    componentOf: (slug) => componentsBySlug.get(slug),
    thing: (slug) => componentsBySlug.get(slug)?.title ?? food(slug),
    foods: (slugs) => slugs.map(food).join(", "),
    subject: ({ kind, slug }) => (kind === "MEAL" ? meal(slug) : kind === "COMPONENT" ? component(slug) : food(slug)),
    amount: (amount, slug) => show(amount, componentsBySlug.get(slug) ?? noFacts),
    show,
    number: (value, places) => readerLocale(reader.locale).decimal(value, places),
  };
}
