import type { Food } from "../../../domain/model/food.js";
import { groupMembers } from "../../../domain/nutrition/allergen-codes.js";
import type { Problem } from "../../../domain/problem.js";

const cereals = groupMembers("gluten");

/**
 * "Contains gluten" alone is refused: by the laws of several regions the cereal is what has to be named, and whoever may not eat
 * wheat may eat barley.
 */
export function checkAllergens({ allergens }: Pick<Food, "allergens">): readonly Problem[] {
  const isNamed = allergens.some(({ code, presence }) => presence === "CONTAINS" && cereals.includes(code));
  if (isNamed) return [];
  return allergens.flatMap(({ code, presence }, index): readonly Problem[] =>
    code === "gluten" && presence === "CONTAINS"
      ? [
          {
            code: "BAD_SHAPE",
            path: ["allergens", index, "code"],
            expected: `the cereal that contains the gluten: ${cereals.join(" | ")}`,
            got: code,
          },
        ]
      : [],
  );
}
