import type { NutrientAmount, Nutrition } from "../../nutrition/nutrients.js";
import { listedNutrients, type ListedAmount, type ListedFacts } from "./listed-facts.js";

/** At least so much, if what is not known can only add to it; at most so much, if nothing is missing. */
function listedAmount({ perServing, complete, atLeast, raw }: NutrientAmount): ListedAmount {
  return {
    low: (complete && !raw) || atLeast ? perServing.low : null,
    high: complete ? perServing.high : null,
  };
}

/** What is certain of a serving's nutrients. */
export const listedNutrition = ({ nutrients }: Pick<Nutrition, "nutrients">): ListedFacts["nutrients"] =>
  Object.fromEntries(
    listedNutrients.flatMap((code) => {
      const amount = nutrients[code];
      return amount === undefined ? [] : [[code, listedAmount(amount)] as const];
    }),
  );
