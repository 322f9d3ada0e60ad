import type { AllergenPresence, TracesPresence } from "../model/food.js";
import type { AsIngredient } from "./ingredient.js";

/** What must be said of an ingredient and its traces together: the least safe of both. Absent is only what is absent as both. */
export function presenceOf({ presence }: Pick<AsIngredient, "presence">, traces: TracesPresence): AllergenPresence {
  if (presence === "CONTAINS" || traces === "MAY_CONTAIN") return presence === "CONTAINS" ? presence : traces;
  return presence === "UNKNOWN" ? presence : traces;
}
