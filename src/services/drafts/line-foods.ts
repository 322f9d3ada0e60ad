import { memoize } from "../../domain/memoize.js";
import type { Food, FoodName } from "../../domain/model/food.js";
import { openTableSlugsIn } from "../../domain/model/open-table-slug.js";
import { compileFoodNamesInSlices, type FoodNames, type NamedFood } from "../../domain/quantity/food-name.js";
import type { InSlices, Work } from "../../domain/counted-work.js";
import { calledByNumber } from "../../imports/usda/food-of-row.js";
import type { Deps } from "../deps.js";
import { findFoods } from "../foods/find-foods.js";
import { inheritFacts } from "../foods/inherit-facts.js";
import { runInSlices } from "../time-slices.js";
import { partsOfLines, stemOf } from "./held-names.js";

const stemsOf = memoize(({ one, many, also }: FoodName) => [...new Set([one, many, ...also].map(stemOf))]);

/** What some lines may name. */
interface FoodsForLines {
  /** All foods by their names; with their facts where a line may name them. */
  readonly named: readonly NamedFood[];
  /** Those that a line may name, and what they turn into, with what they inherit. */
  readonly foods: readonly Food[];
}

/**
 * The names of all foods, and what reading these lines may need to know of those they may name: how they are sold and measured,
 * with what they inherit, and what they turn into.
 */
export async function foodsForLines(
  deps: Pick<Deps, "data" | "work">,
  lines: readonly string[],
): Promise<FoodsForLines> {
  const named = await deps.data.foods.names();
  const known = new Map<string, Food>();
  for (let wanted = await runInSlices(deps, (work) => slugsHeld(named, lines, work)); wanted.length > 0;) {
    const found = (await deps.data.foods.bySlugs(wanted)).filter((food) => food !== null);
    for (const food of await inheritFacts(deps, found)) known.set(food.slug, food);
    wanted = found.flatMap(({ yields }) => yields.map(({ food }) => food)).filter((slug) => !known.has(slug));
    // A food that is gone would be asked for again and again.
    if (found.length === 0) break;
  }
  const rows = openTableSlugsIn(lines.join("\n")).filter((slug) => !known.has(slug));
  const ofTable = (await findFoods(deps, rows)).filter((food) => food !== null);
  return {
    named: [...named.map((food) => ({ ...food, ...known.get(food.slug) })), ...ofTable.map(calledByNumber)],
    foods: [...known.values(), ...ofTable],
  };
}

/** Slugs of the foods that some lines may name. */
function* slugsHeld(named: readonly NamedFood[], lines: readonly string[], work: Work): InSlices<readonly string[]> {
  const mayHold = yield* partsOfLines(lines, work);
  const held: string[] = [];
  for (const { slug, names } of named) {
    work.step(1);
    yield;
    if (names.some((name) => stemsOf(name).some(mayHold))) held.push(slug);
  }
  return held;
}

/** The names of all foods, laid out to read these lines by. */
export async function lineFoods(deps: Pick<Deps, "data" | "work">, lines: readonly string[]): Promise<FoodNames> {
  const { named } = await foodsForLines(deps, lines);
  return runInSlices(deps, (work) => compileFoodNamesInSlices(named, work));
}
