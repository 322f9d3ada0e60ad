import type { Food } from "../model/food.js";
import type { Household } from "../model/household.js";
import type { Line, Swap } from "../model/line.js";
import { avoidedIn } from "../nutrition/avoided-allergen.js";
import type { DietJudge } from "../nutrition/diets.js";
import type { Path, Warning } from "../problem.js";

interface ChosenSwap {
  readonly swap: Swap | null;
  /** Slug of the food that is then taken, where the household does not like it and did not ask for it by name. */
  readonly disliked: string | null;
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
 * every diet and to be without every allergen that is avoided, the first that may serve them all; of these rather one that is liked. A food
 * that is only disliked stays where no swap serves. What is not known to fit after that is a warning that names the line: a
 * writer's word for a swap is taken, but it does not make an unknown fact a known one.
 */
export function chooseSwap(
  line: Line,
  household: Household,
  foods: ReadonlyMap<string, Food>,
  fitsDiet: DietJudge,
  path: Path,
): ChosenSwap {
  if (line.item.kind !== "FOOD") return { swap: null, disliked: null, warnings: [] };
  const { diets, avoidAllergens, dislikes } = household;
  const own = foods.get(line.item.food);
  const isWithout = (food: Food | undefined): boolean =>
    avoidAllergens.every((code) => food !== undefined && avoidedIn(food, code, fitsDiet.rules) === null);
  const fits = diets.every((diet) => own !== undefined && fitsDiet(own, diet) === true) && isWithout(own);
  const serving = (swap: Swap): boolean =>
    diets.every((diet) => mayServe(swap, diet, foods, fitsDiet)) && isWithout(foods.get(swap.food));
  const isDisliked = (slug: string): boolean => dislikes.includes(slug);
  const ownSlug = line.item.food;
  const offeredInstead = (): Swap | null => {
    if (fits && !isDisliked(ownSlug)) return null;
    const all = line.swaps.filter(serving);
    return all.find(({ food }) => !isDisliked(food)) ?? (fits ? null : (all[0] ?? null));
  };
  const wished = asked(line, household);
  const swap = wished ?? offeredInstead();
  const food = swap === null ? own : foods.get(swap.food);
  const item = food?.slug ?? "";
  // "No swap is offered" is said only where none is.
  const others = line.swaps.flatMap((each) => (each === swap ? [] : [each.food]));
  const offered = (isCertain: boolean) => (isCertain && others.length > 0 ? { offered: others } : {});
  const ofDiets = diets.flatMap((diet): Warning[] => {
    const known = food === undefined ? null : fitsDiet(food, diet);
    if (known === true) return [];
    return [{ code: "DIET_NOT_MET", path, diet, item, known: known === false, ...offered(known === false) }];
  });
  const ofAllergens = avoidAllergens.flatMap((allergen): Warning[] => {
    const presence = food === undefined ? "UNKNOWN" : avoidedIn(food, allergen, fitsDiet.rules);
    if (presence === null) return [];
    return [{ code: "ALLERGEN_NOT_AVOIDED", path, allergen, item, presence, ...offered(presence === "CONTAINS") }];
  });
  return {
    swap,
    disliked: wished === null && isDisliked(item) ? item : null,
    warnings: [...ofDiets, ...ofAllergens],
  };
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
