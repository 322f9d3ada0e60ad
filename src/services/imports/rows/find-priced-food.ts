import type { Food } from "../../../domain/model/food.js";
import { compileFoodNames, matchFood, type FoodMatch } from "../../../domain/quantity/food-name.js";
import type { FeedSettings } from "../feeds/feed-settings.js";

/**
 * Which food a cell of a price list means. The shop's own number of an article goes first, because somebody said what it is; then a slug,
 * then any name of a food, those of the feed's language and region before others. What may be several foods is left open.
 */
export function pricedFoodFinder(
  foods: readonly Pick<Food, "slug" | "names">[],
  { articles, locale, region }: Pick<FeedSettings, "articles" | "locale" | "region">,
): (written: string) => FoodMatch {
  const names = compileFoodNames(foods);
  const byArticle = new Map(Object.entries(articles));
  const [language] = (locale ?? "").split("-");
  const byName = (written: string): FoodMatch => {
    const spoken = language === "" || language === undefined ? null : matchFood(names, written, language, region);
    return spoken === null || spoken.kind === "NONE" ? matchFood(names, written, null, region) : spoken;
  };
  return (written) => {
    const slug = byArticle.get(written) ?? written;
    return names.foods.has(slug) ? { kind: "FOUND", slug } : byName(slug);
  };
}
