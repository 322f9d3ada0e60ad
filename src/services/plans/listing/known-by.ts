import type { Food } from "../../../domain/model/food.js";
import type { PlanBundle } from "../../../domain/model/plan.js";
import { inForceOn } from "../../../domain/model/region.js";
import { wordsOfClaims } from "../../../domain/plan/review/merge-current-facts.js";
import { utcDay } from "../../../domain/utc-day.js";
import { checksumOf } from "../../../persistence/sql/canonical-json.js";
import type { Deps, Publisher } from "../../deps.js";
import type { KnownRules } from "../../rules/find-rules.js";
import { foodsWithSynonyms } from "./foods-with-synonyms.js";

/** What is said today of the allergens and diets of some foods, and by which rules they are judged. */
interface KnownToday {
  /** Of a plan with these foods, and of its publisher, as a checksum: as long as it is the same, a plan is judged as before. */
  checksum(foods: readonly string[], publisher: Publisher | null): string;
}

/** The set of rules, and which of its lists of allergens are in force today. */
export const rulesInForce = ({ clock }: Deps, { id, allergens }: KnownRules): readonly [string, readonly string[]] => [
  id,
  allergens.lists.filter((list) => inForceOn(list, utcDay(clock()))).map((list) => list.id),
];

/** Slugs of a plan's foods and of those that they build on, in order. */
export const foodsOf = ({ foods }: PlanBundle): readonly string[] =>
  [...new Set(foods.flatMap((food) => [food.slug, food.extends?.food ?? food.slug]))].toSorted();

export async function readKnown(deps: Deps, rules: KnownRules, foods: readonly string[]): Promise<KnownToday> {
  const said = (food: Food | null): string => (food === null ? "" : wordsOfClaims(food));
  const words = new Map(
    (await foodsWithSynonyms(deps, [...new Set(foods)])).map(({ slug, food, other, otherFood }) => [
      slug,
      other === null ? [slug, said(food)] : [slug, said(food), other, said(otherFood)],
    ]),
  );
  const judgedBy = rulesInForce(deps, rules);
  return {
    checksum: (of, publisher) =>
      checksumOf([...judgedBy, publisher?.region ?? null, of.map((slug) => words.get(slug) ?? slug)]),
  };
}
