import { memoizeInSlices } from "../../domain/memoize.js";
import type { Food } from "../../domain/model/food.js";
import { openTableSlugsIn } from "../../domain/model/open-table-slug.js";
import {
  compileFoodNames,
  namesBefore,
  withFacts,
  wordsOfName,
  type FoodNames,
  type NamedFood,
} from "../../domain/quantity/food-name.js";
import type { InSlices, Work } from "../../domain/counted-work.js";
import { calledByNumber } from "../../imports/usda/food-of-row.js";
import type { Deps } from "../deps.js";
import { findFoods } from "../foods/find-foods.js";
import { namesFor, type NamesSeen } from "../foods/names-for.js";
import { runInSlices } from "../time-slices.js";
import { partsOfLines, stemOf } from "./held-names.js";

/** Slugs by the stems of their names. */
const slugsByStem = memoizeInSlices(function* (
  foods: readonly NamedFood[],
  work: Work,
): InSlices<ReadonlyMap<string, ReadonlySet<string>>> {
  const found = new Map<string, Set<string>>();
  for (const { slug, names } of foods) {
    work.step(1 + names.length);
    yield;
    for (const name of names)
      for (const stem of new Set(wordsOfName(name).map(stemOf))) {
        const slugs = found.get(stem);
        if (slugs === undefined) found.set(stem, new Set([slug]));
        else slugs.add(slug);
      }
  }
  return found;
});

/** What some lines may name. */
interface FoodsForLines {
  /** All foods by their names; with their facts where a line may name them. */
  readonly named: FoodNames;
  /** Those that a line may name, and what they turn into, with what they inherit. */
  readonly foods: readonly Food[];
}

/**
 * The names of all foods, and what reading these lines may need to know of those they may name: how they are sold and measured,
 * with what they inherit, and what they turn into.
 *
 * @param seen whose own foods are named too; left out: nobody's
 */
export async function foodsForLines(
  deps: Pick<Deps, "data" | "work">,
  lines: readonly string[],
  seen: NamesSeen | null,
): Promise<FoodsForLines> {
  const { names, lists, readFoods } = await namesFor(deps, seen);
  const known = new Map<string, Food>();
  for (let wanted = await runInSlices(deps, (work) => slugsHeld(lists, lines, work)); wanted.length > 0;) {
    const found = (await readFoods(wanted)).filter((food) => food !== null);
    for (const food of found) known.set(food.slug, food);
    wanted = found.flatMap(({ yields }) => yields.map(({ food }) => food)).filter((slug) => !known.has(slug));
    // A food that is gone would be asked for again and again.
    if (found.length === 0) break;
  }
  const rows = openTableSlugsIn(lines.join("\n")).filter((slug) => !known.has(slug));
  const ofTable = (await findFoods(deps, rows)).filter((food) => food !== null);
  const named = withFacts(names, known);
  return {
    named: ofTable.length === 0 ? named : namesBefore(compileFoodNames(ofTable.map(calledByNumber)), named),
    foods: [...known.values(), ...ofTable],
  };
}

/** Slugs of the foods that some lines may name. */
function* slugsHeld(
  lists: readonly (readonly NamedFood[])[],
  lines: readonly string[],
  work: Work,
): InSlices<readonly string[]> {
  const mayHold = yield* partsOfLines(lines, work);
  const held = new Set<string>();
  for (const list of lists)
    for (const [stem, slugs] of yield* slugsByStem(list, work)) {
      work.step(1);
      yield;
      if (mayHold(stem)) for (const slug of slugs) held.add(slug);
    }
  return [...held];
}
