import type { Plan } from "../../domain/model/plan.js";
import type { GivenHousehold } from "./read-household.js";

/** How many eat: as asked, or else as many as the eaters are, or else as many as the plan is written for. */
export function askedServings(
  servings: number | null | undefined,
  { eaters }: GivenHousehold,
  { serves }: Pick<Plan, "serves">,
): number {
  if (servings !== null && servings !== undefined) return servings;
  const people = (eaters ?? []).reduce((sum, { count }) => sum + count, 0);
  return people >= 1 ? people : serves;
}
