import { fitsDiet } from "../nutrition/fits-diet.js";
import type { Food } from "../model/food.js";
import type { Household } from "../model/household.js";
import type { Line, Swap } from "../model/line.js";
import type { Path, Warning } from "../problem.js";

export interface ChosenSwap {
  readonly swap: Swap | null;
  readonly warnings: readonly Warning[];
}

/** A swap serves a diet when its writer says so and the food's own facts do not contradict. */
const serves = (swap: Swap, diet: string, foods: ReadonlyMap<string, Food>): boolean => {
  const food = foods.get(swap.food);
  if (food === undefined) return false;
  const fits = fitsDiet(food, diet);
  return fits ?? swap.diets.includes(diet);
};

const asked = (line: Line, household: Household): Swap | null => {
  const { item } = line;
  if (item.kind !== "FOOD") return null;
  // The reader's order decides; a wish that this line does not offer leaves room for the next.
  for (const { from, to } of household.swaps) {
    const offered = from === item.food ? line.swaps.find(({ food }) => food === to) : undefined;
    if (offered !== undefined) return offered;
  }
  return null;
};

/**
 * Which swap a line takes for this household: the one asked for by name, else, where the line's own food does not fit
 * every diet, the first that serves them all. What still does not fit is a warning that names the line.
 */
export function chooseSwap(line: Line, household: Household, foods: ReadonlyMap<string, Food>, path: Path): ChosenSwap {
  if (line.item.kind !== "FOOD") return { swap: null, warnings: [] };
  const own = foods.get(line.item.food);
  const misses = household.diets.filter((diet) => own === undefined || fitsDiet(own, diet) !== true);
  const named = asked(line, household);
  const swap =
    named ??
    (misses.length === 0
      ? null
      : (line.swaps.find((each) => household.diets.every((diet) => serves(each, diet, foods))) ?? null));
  const warnings = household.diets.flatMap((diet): Warning[] => {
    if (swap !== null && serves(swap, diet, foods)) return [];
    const food = swap === null ? own : foods.get(swap.food);
    const fits = food === undefined ? null : fitsDiet(food, diet);
    if (fits === true) return [];
    return [{ code: "DIET_NOT_MET", path, diet, item: food?.slug ?? "", known: fits === false }];
  });
  return { swap, warnings };
}

/** Swaps a household asked for by name that no line of the plan offers. */
export function swapsNotOffered(lines: readonly Line[], household: Household): readonly Warning[] {
  return household.swaps
    .filter(
      ({ from, to }) =>
        !lines.some(
          ({ item, swaps }) => item.kind === "FOOD" && item.food === from && swaps.some(({ food }) => food === to),
        ),
    )
    .map(({ from, to }) => ({ code: "SWAP_NOT_OFFERED", path: ["household", "swaps"], from, to }));
}
