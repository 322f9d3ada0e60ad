import type { AllergenPresence, TracesPresence } from "../model/food.js";
import type { AsIngredient } from "./ingredient.js";

/** What must be said of an ingredient and its traces together: the least safe of both. Absent is only what is absent as both. */
export function presenceOf({ presence }: Pick<AsIngredient, "presence">, traces: TracesPresence): AllergenPresence {
  if (presence === "CONTAINS" || traces === "MAY_CONTAIN") return presence === "CONTAINS" ? presence : traces;
  return presence === "UNKNOWN" ? presence : traces;
}

/**
 * Whether something counts as without an allergen: everybody vouches that no ingredient has it, and nobody says that there may be traces. Of
 * traces hardly any food says anything, so that they are shown beside it where they are not known.
 */
export const isWithout = ({
  presence,
  traces,
}: {
  readonly presence: AllergenPresence;
  readonly traces: TracesPresence;
}): boolean => presence === "DOES_NOT_CONTAIN" && traces !== "MAY_CONTAIN";
