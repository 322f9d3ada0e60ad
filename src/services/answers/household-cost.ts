/** Points of every entry of a household's lists, wherever a plan is computed for it. */
const pointsOfEntry = { onHand: 0.5, swaps: 0.5, eaters: 0.1, diets: 5, avoidAllergens: 5, dislikes: 0.5 } as const;

/** More for an amount in words, which is read in several languages. */
const pointsOfWords = 0.2;

/** Points of looking for the routes that cost, or work, least, or keep out what is avoided. */
const pointsOfRoutes = 20;

/**
 * Points for each time a plan is computed for a household: what it wishes is held against every line.
 *
 * @param household as it was given, not looked at yet; what has no such lists costs nothing, and is refused elsewhere
 */
export function householdCost(household: unknown): number {
  if (typeof household !== "object" || household === null) return 0;
  const given = household as Readonly<Record<string, unknown>>;
  const entries = Object.entries(pointsOfEntry).reduce((sum, [list, points]) => {
    const entered = given[list];
    return sum + (Array.isArray(entered) ? entered.length * points : 0);
  }, 0);
  const onHand: readonly unknown[] = Array.isArray(given["onHand"]) ? given["onHand"] : [];
  const words = onHand.filter((each) => !hasUnit(each)).length * pointsOfWords;
  const { routes } = given;
  const mode = typeof routes === "object" && routes !== null && "mode" in routes ? routes.mode : null;
  const avoids = isSome(given["avoidAllergens"]) || isSome(given["dislikes"]);
  return Math.ceil(entries + words) + (mode === "CHEAPEST" || mode === "LEAST_WORK" || avoids ? pointsOfRoutes : 0);
}

const hasUnit = (each: unknown): boolean =>
  typeof each === "object" && each !== null && "unit" in each && typeof each.unit === "string" && each.unit !== "";

const isSome = (list: unknown): boolean => Array.isArray(list) && list.length > 0;
