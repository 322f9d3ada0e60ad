import type { Food } from "../../../domain/model/food.js";
import type { PlanBundle } from "../../../domain/model/plan.js";
import { inForceOn } from "../../../domain/model/region.js";
import { wordsOfClaims } from "../../../domain/plan/review/merge-current-facts.js";
import { utcDay } from "../../../domain/utc-day.js";
import { checksumOf } from "../../../persistence/sql/canonical-json.js";
import type { Deps, Publisher } from "../../deps.js";
import { findFoods } from "../../foods/find-foods.js";
import { findSynonyms } from "../../foods/foods-today.js";
import type { KnownRules } from "../../rules/find-rules.js";

/** What is said today of the allergens and diets of some foods, and by which rules they are judged. */
interface KnownToday {
  /** Of a plan with these foods, and of its publisher, as a checksum: as long as it is the same, a plan is judged as before. */
  checksum(foods: readonly string[], publisher: Publisher | null): string;
}

/** Slugs of a plan's foods and of those that they build on, in order. */
export const foodsOf = ({ foods }: PlanBundle): readonly string[] =>
  [...new Set(foods.flatMap((food) => [food.slug, food.extends?.food ?? food.slug]))].toSorted();

export async function readKnown(deps: Deps, rules: KnownRules, foods: readonly string[]): Promise<KnownToday> {
  const slugs = [...new Set(foods)];
  const same = await findSynonyms(deps, slugs);
  const others = same.flatMap((other) => (other === null ? [] : [other]));
  const all = [...new Set([...slugs, ...others])];
  const found = new Map<string, Food>();
  (await findFoods(deps, all)).forEach((food) => {
    if (food !== null) found.set(food.slug, food);
  });
  const said = (slug: string): string => {
    const food = found.get(slug);
    return food === undefined ? "" : wordsOfClaims(food);
  };
  const words = new Map(
    slugs.map((slug, at) => {
      const other = same[at] ?? null;
      return [slug, other === null ? [slug, said(slug)] : [slug, said(slug), other, said(other)]];
    }),
  );
  const date = utcDay(deps.clock());
  const lists = rules.allergens.lists.filter((list) => inForceOn(list, date)).map(({ id }) => id);
  return {
    checksum: (of, publisher) =>
      checksumOf([rules.id, lists, publisher?.region ?? null, of.map((slug) => words.get(slug) ?? slug)]),
  };
}
