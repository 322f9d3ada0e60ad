import type { FoodNutrients, NutrientCode } from "../../../domain/model/food.js";
import type { CatalogueFoodResolvers } from "../../generated/resolver-types.js";
import type { CatalogueFoodParent } from "../../parent-types.js";
import type { FieldsToResolve } from "../fields-to-resolve.js";

export const catalogueFoodResolvers: FieldsToResolve<CatalogueFoodResolvers, CatalogueFoodParent> = {
  ndbNo: ({ row }) => row.ndbNo,
  description: ({ row }) => row.description,
  otherNames: ({ row }) => row.otherNames,
  aisle: ({ row }) => row.aisle,
  nutrients: ({ facts }) => foodNutrients(facts.nutrients),
  edible: ({ facts }) => facts.edible,
  densities: ({ facts }) => facts.densities,
  measures: ({ facts }) => facts.measures,
  edition: ({ edition }) => edition.title,
};

/** One entry for each nutrient that is known. */
export const foodNutrients = (nutrients: FoodNutrients | null) => {
  if (nutrients === null) return [];
  const { per100g, source } = nutrients;
  return (Object.keys(per100g) as NutrientCode[]).flatMap((nutrient) => {
    const figure = per100g[nutrient];
    return figure === undefined ? [] : [{ nutrient, per100g: figure, source }];
  });
};
