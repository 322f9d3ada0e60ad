import type { DietRule } from "../../../domain/nutrition/allergen-rules.js";
import { assignedRegions } from "../../../domain/model/region-codes.js";
import { currencyCodes } from "../../../domain/model/currency-codes.js";
import { memoizeLatest } from "../../../domain/memoize.js";
import type { PlanBundle } from "../../../domain/model/plan.js";
import { intlTag } from "../../../domain/quantity/intl-tag.js";
import type { NameBook } from "../../words/name-book.js";
import { capital } from "../../words/capital.js";
import { codeName } from "../../words/rule-words.js";
import { countryIn, currencyIn } from "../country-name.js";
import { dateLocale } from "../dates.js";
import type { Content } from "../markup.js";
import { inLanguage, inWritersLanguage } from "../writers-language.js";

export interface Choice {
  /** As it is sent. */
  readonly value: string;
  readonly text: string;
  /** BCP 47 tag of its language, where the page is in another; null or left out: it is the page's. */
  readonly language?: string | null;
}

/** What a reader can choose for this plan. */
export interface FormChoices {
  readonly countries: readonly Choice[];
  readonly currencies: readonly Choice[];
  readonly diets: readonly Choice[];
  /** By the food as written. */
  readonly swaps: readonly { readonly from: string; readonly name: Content; readonly to: readonly Choice[] }[];
  /** By component. */
  readonly routes: readonly { readonly component: string; readonly title: Content; readonly ways: readonly Choice[] }[];
  /** What the plan takes and makes, of which there may be some in the house. */
  readonly things: readonly Choice[];
}

const byText = (locale: string): ((a: Choice, b: Choice) => number) => {
  const { compare } = new Intl.Collator(intlTag(locale));
  return (a, b) => compare(a.text, b.text);
};

/** Every country and every currency by name, in the order of the alphabet. */
const placesIn = memoizeLatest("place-choices", 20, String, (locale: string) => ({
  countries: assignedRegions
    .map((value) => ({ value, text: countryIn(value, locale, "long") }))
    .toSorted(byText(locale)),
  currencies: currencyCodes
    .map((value) => ({ value, text: `${currencyIn(value, locale)} (${value})` }))
    .toSorted(byText(locale)),
}));

/** Every swap that a line offers, in each of the ways a component can be come by; every route; every diet of the rules. */
export function formChoices(
  { plan, components, foods }: PlanBundle,
  diets: readonly Pick<DietRule, "code">[],
  book: NameBook,
): FormChoices {
  const words = book.words.page;
  const locale = dateLocale(book);
  const lines = [
    ...plan.meals.flatMap((meal) => meal.lines),
    ...components.flatMap((component) => [...component.lines, ...component.routes.flatMap((route) => route.lines)]),
  ];
  const swaps = new Map<string, Map<string, Choice>>();
  for (const { item, swaps: offered } of lines) {
    if (item.kind !== "FOOD") continue;
    for (const { food, diets: serves, note } of offered) {
      const known = swaps.get(item.food) ?? new Map<string, Choice>();
      const why = [serves.map((code) => codeName("diets", code, book.words)).join(", "), note ?? ""].filter(
        (each) => each !== "",
      );
      const value = `${item.food}:${food}`;
      const text = book.food(food) + (why.length === 0 ? "" : ` (${why.join("; ")})`);
      known.set(value, { value, text, language: book.foodLanguage(food) });
      swaps.set(item.food, known);
    }
  }
  return {
    ...placesIn(locale),
    diets: diets.map(({ code }) => ({ value: code, text: codeName("diets", code, book.words) })),
    swaps: [...swaps].map(([from, to]) => ({
      from,
      name: inLanguage(capital(book.food(from)), book.foodLanguage(from)),
      to: [...to.values()],
    })),
    routes: components
      .filter(({ routes }) => routes.length > 0)
      .map(({ slug, title, routes }) => ({
        component: slug,
        title: inWritersLanguage(title, book),
        ways: [
          { value: `${slug}:as-written`, text: words.plainlyAsWritten },
          ...routes.map(({ name, called = name, kind }) => ({
            value: `${slug}:${name}`,
            text: kind === "BUY" ? words.boughtWay({ name: called }) : called,
            language: book.languageOf(called),
          })),
        ],
      })),
    things: [
      ...foods
        .filter(({ alwaysThere }) => !alwaysThere)
        .map(({ slug }) => ({
          ...{ value: slug, text: book.food(slug) },
          language: book.foodLanguage(slug),
        })),
      ...components.map(({ slug, title }) => ({
        ...{ value: `component/${slug}`, text: title },
        language: book.languageOf(title),
      })),
    ].toSorted(byText(locale)),
  };
}
