import { findFood, type FoodMatch, type FoodNames } from "../../../domain/quantity/food-name.js";
import type { FeedSettings } from "../feeds/feed-settings.js";

/**
 * Which food a cell of a price list means. The shop's own number of an article goes first, because somebody said what it is; then a slug,
 * then any name of a food, those of the feed's language and region before others. What may be several foods is left open.
 */
export function pricedFoodFinder(
  names: FoodNames,
  { articles, locale, region }: Pick<FeedSettings, "articles" | "locale" | "region">,
): (written: string) => FoodMatch {
  const byArticle = new Map(Object.entries(articles));
  const [language] = (locale ?? "").split("-");
  const find = (written: string): FoodMatch => {
    const spoken = language === "" || language === undefined ? null : findFood(names, written, language, region);
    return spoken === null || spoken.kind === "NONE" ? findFood(names, written, null, region) : spoken;
  };
  const byName = (written: string): FoodMatch => oneOf([find(written), ...turned(written).map(find)]);
  return (written) => {
    const slug = byArticle.get(written) ?? written;
    return names.foods.has(slug) ? { kind: "FOUND", slug } : byName(slug);
  };
}

/** "Tomatoes, chopped" in a list of prices may be the tin of chopped tomatoes. */
const turned = (written: string): readonly string[] => {
  const [head = "", tail, ...more] = written.split(/\s*,\s*/u);
  return tail === undefined || more.length > 0 ? [] : [`${tail} ${head}`];
};

/** All foods that are meant in one way or another. */
function oneOf(matches: readonly FoodMatch[]): FoodMatch {
  const slugs = matches.flatMap((match) =>
    match.kind === "FOUND" ? [match.slug] : match.kind === "AMBIGUOUS" ? match.slugs : [],
  );
  const [slug, ...others] = [...new Set(slugs)].toSorted();
  if (slug === undefined) return { kind: "NONE" };
  return others.length === 0 ? { kind: "FOUND", slug } : { kind: "AMBIGUOUS", slugs: [slug, ...others] };
}
