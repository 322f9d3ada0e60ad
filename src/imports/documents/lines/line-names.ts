import type { Component } from "../../../domain/model/component.js";
import {
  compileFoodNamesInSlices,
  findFood,
  namesBefore,
  type FoodNames,
  type NamedFood,
} from "../../../domain/quantity/food-name.js";
import { languageOf } from "../../../domain/quantity/reader-locale.js";
import type { InSlices, Work } from "../../../domain/counted-work.js";

/** What a line needs to know of a component to name it. */
export type NamedComponent = Pick<Component, "slug" | "title" | "measures" | "densities">;

/** Before the slug of a component where it stands among foods. No slug has a space. */
const mark = "component ";

export const isComponentName = (slug: string): boolean => slug.startsWith(mark);

/** The slug alone, of a food or a component. */
export const slugNamed = (slug: string): string => (isComponentName(slug) ? slug.slice(mark.length) : slug);

/** Foods by all their names, and components by title and slug in these languages. A name that both have is a question. */
export function* lineNames(
  foods: FoodNames,
  components: readonly NamedComponent[],
  languages: readonly string[],
  work: Work,
): InSlices<FoodNames> {
  const named = components.map(({ slug, title, measures, densities }): NamedFood => ({
    slug: `${mark}${slug}`,
    names: languages.map((language) => ({ language, region: null, one: title, many: title, also: [slug] })),
    measures,
    densities,
    component: true,
  }));
  return namesBefore(yield* compileFoodNamesInSlices(named, work), foods);
}

/** The one food that a word means: a slug first, then a name in the language of the writing, then one in any; null: none, or several. */
export function foodCalled(
  names: FoodNames,
  called: string,
  { locale, region }: { readonly locale: string; readonly region: string | null },
): string | null {
  if (names.foods.has(called)) return called;
  for (const language of [languageOf(locale), null]) {
    const match = findFood(names, called, language, region);
    if (match.kind === "AMBIGUOUS") return null;
    if (match.kind === "FOUND") return isComponentName(match.slug) ? null : match.slug;
  }
  return null;
}
