import { recipeTitle, recipeTitleStem } from "../../../imports/recipes/recipe-draft.js";
import type { Data } from "../../deps.js";

/** Gives titles to the recipes of a file: no two drafts of a publisher have the same, so that a writer can tell them apart in a list. */
export interface RecipeTitles {
  /** `slug`: of the draft that it has already, whose title stays. */
  take(name: string, slug: string | null): string;
}

export async function recipeTitles(data: Data, publisher: string, names: readonly string[]): Promise<RecipeTitles> {
  const asked = new Set(names.flatMap((name) => [recipeTitle(name), recipeTitleStem(name)]));
  const drafts = await data.drafts.titled(publisher, [...asked]);
  const taken = new Set(drafts.map(({ title }) => folded(title)));
  const bySlug = new Map(drafts.map(({ slug, title }) => [slug, title]));
  // Of thousands of one name each goes on where the one before found room.
  const next = new Map<string, number>();
  return {
    take: (name, slug) => {
      const own = slug === null ? undefined : bySlug.get(slug);
      if (own !== undefined && isNumbered(own, name)) return own;
      const key = folded(name);
      let number = next.get(key) ?? 1;
      while (taken.has(folded(recipeTitle(name, number)))) number += 1;
      next.set(key, number + 1);
      const title = recipeTitle(name, number);
      taken.add(folded(title));
      return title;
    },
  };
}

const isNumbered = (title: string, name: string): boolean =>
  title === recipeTitle(name) || title.replace(/ \(\d+\)$/, "") === recipeTitleStem(name);

const folded = (title: string): string => title.normalize("NFC").toLowerCase();
