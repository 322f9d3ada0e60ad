import type { Component } from "../../../domain/model/component.js";
import { compileFoodNamesInSlices, type FoodNames, type NamedFood } from "../../../domain/quantity/food-name.js";
import type { InSlices, Work } from "../../../domain/counted-work.js";

/** What a line needs to know of a component to name it. */
export type NamedComponent = Pick<Component, "slug" | "title" | "measures" | "densities">;

/** Before the slug of a component where it stands among foods. No slug has a space. */
const mark = "component ";

export const isComponentName = (slug: string): boolean => slug.startsWith(mark);

/** The slug alone, of a food or a component. */
export const slugNamed = (slug: string): string => (isComponentName(slug) ? slug.slice(mark.length) : slug);

/** Foods by all their names, and components by title and slug in these languages. A name that both have is a question. */
export const lineNames = (
  foods: readonly NamedFood[],
  components: readonly NamedComponent[],
  languages: readonly string[],
  work: Work,
): InSlices<FoodNames> =>
  compileFoodNamesInSlices(
    [
      ...foods,
      ...components.map(({ slug, title, measures, densities }): NamedFood => ({
        slug: `${mark}${slug}`,
        names: languages.map((language) => ({ language, region: null, one: title, many: title, also: [slug] })),
        measures,
        densities,
      })),
    ],
    work,
  );
