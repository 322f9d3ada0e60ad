import type { Food } from "../model/food.js";
import type { Household } from "../model/household.js";
import type { Line, Swap } from "../model/line.js";
import type { DietJudge } from "../nutrition/diets.js";
import type { Path, Warning } from "../problem.js";

interface ChosenSwap {
  readonly swap: Swap | null;
  readonly warnings: readonly Warning[];
}

/** A swap may serve a diet where its food is known to fit, or its writer says so and the food's facts do not contradict. */
const mayServe = (swap: Swap, diet: string, foods: ReadonlyMap<string, Food>, fitsDiet: DietJudge): boolean => {
  const food = foods.get(swap.food);
  return food !== undefined && (fitsDiet(food, diet) ?? swap.diets.includes(diet));
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
 * Which swap a line takes for this household: the one asked for by name, else, where the line's own food is not known to fit
 * every diet, the first that may serve them all. What is not known to fit after that is a warning that names the line: a
 * writer's word for a swap is taken, but it does not make an unknown fact a known one.
 */
export function chooseSwap(
  line: Line,
  household: Household,
  foods: ReadonlyMap<string, Food>,
  fitsDiet: DietJudge,
  path: Path,
): ChosenSwap {
  if (line.item.kind !== "FOOD") return { swap: null, warnings: [] };
  const own = foods.get(line.item.food);
  const fits = household.diets.every((diet) => own !== undefined && fitsDiet(own, diet) === true);
  const serving = (swap: Swap): boolean => household.diets.every((diet) => mayServe(swap, diet, foods, fitsDiet));
  const swap = asked(line, household) ?? (fits ? null : (line.swaps.find(serving) ?? null));
  const food = swap === null ? own : foods.get(swap.food);
  // "No swap is offered" is said only where none is.
  const others = line.swaps.flatMap((each) => (each === swap ? [] : [each.food]));
  const offered = { offered: others };
  const warnings = household.diets.flatMap((diet): Warning[] => {
    const known = food === undefined ? null : fitsDiet(food, diet);
    return known === true
      ? []
      : [
          {
            code: "DIET_NOT_MET",
            path,
            diet,
            item: food?.slug ?? "",
            known: known === false,
            ...(known === false && others.length > 0 ? offered : {}),
          },
        ];
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
