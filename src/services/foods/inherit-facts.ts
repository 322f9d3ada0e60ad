import type { Food } from "../../domain/model/food.js";
import { memoize } from "../../domain/memoize.js";
import type { CatalogueFacts } from "../../imports/usda/catalogue-facts.js";
import { mergeCatalogueFood } from "../../imports/usda/merge-catalogue-food.js";
import type { Deps } from "../deps.js";
import { findCatalogueFoods } from "./find-catalogue-foods.js";

/** What a food inherits from the open table under the number it names; itself where it names none or one that is not there. */
type Inherit = (food: Food) => Food;

/** Reads what the foods of these numbers inherit, in one statement. */
export async function readInheritance(deps: Pick<Deps, "data">, numbers: readonly (string | null)[]): Promise<Inherit> {
  const wanted = [...new Set(numbers.filter((ndbNo) => ndbNo !== null))];
  if (wanted.length === 0) return (food) => food;
  const found = await findCatalogueFoods(deps, wanted);
  const facts = new Map(found.flatMap((entry) => (entry === null ? [] : [[entry.row.ndbNo, entry.facts]])));
  return (food) => {
    const inherited = food.ndbNo === null ? undefined : facts.get(food.ndbNo);
    return inherited === undefined ? food : merged(inherited)(food);
  };
}

/** The same food each time, because much is known of a food as long as it lives. */
const merged = memoize((facts: CatalogueFacts) => memoize((food: Food) => mergeCatalogueFood(food, facts)));

/** Foods with all that they inherit, in the order given. */
export async function inheritFacts<F extends Food | null>(
  deps: Pick<Deps, "data">,
  foods: readonly F[],
): Promise<readonly (F | Food)[]> {
  const inherit = await readInheritance(
    deps,
    foods.map((food) => food?.ndbNo ?? null),
  );
  return foods.map((food) => (food === null ? food : inherit(food)));
}
