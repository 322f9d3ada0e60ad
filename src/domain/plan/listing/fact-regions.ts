import { regionCovers } from "../../model/region.js";
import type { AllergenRules } from "../../nutrition/allergen-rules.js";
import { memoize } from "../../memoize.js";

/** For readers who name no region: by that of the plan or its publisher, as its own page is. */
export const ownRegion = "OWN";

/** A region of which no rule speaks, and where nothing is sold that is sold in some region only (ISO 3166 leaves it to its users). */
export const elsewhere = "ZZ";

/** The regions in which different things hold of foods: those with rules of their own, and all others as one. */
export const factRegions = memoize(({ lists, diets }: Pick<AllergenRules, "lists" | "diets">): readonly string[] => {
  const named = [
    ...lists.map(({ region }) => region),
    ...diets.flatMap(({ breaks }) => breaks.flatMap(({ region }) => region ?? [])),
  ];
  return [...new Set(named.filter((region) => region !== "INT")), elsewhere].toSorted();
});

/** Of some regions those that cover one, the narrowest first: a part of a country, a country, a union of countries. */
export function regionsOver(regions: readonly string[], asked: string): readonly string[] {
  const country = asked.split("-")[0];
  const width = (region: string): number => (region === asked ? 0 : region === country ? 1 : 2);
  return regions.filter((region) => regionCovers(region, asked)).toSorted((a, b) => width(a) - width(b));
}

/** The one of `factRegions` in which a reader of a region is; null: none is named. */
export const factRegionOf = (rules: Pick<AllergenRules, "lists" | "diets">, asked: string | null): string =>
  asked === null ? ownRegion : (regionsOver(factRegions(rules), asked)[0] ?? elsewhere);
