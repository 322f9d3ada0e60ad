import { labelNutrient, labelText } from "../../../exports/sentences/label-text.js";
import type {
  AllergenFindingResolvers,
  AllergenStatementResolvers,
  AsIngredientResolvers,
  CautionResolvers,
  DietResolvers,
  NotEatenResolvers,
  FoodAsIngredientResolvers,
  LabelToReadResolvers,
  NutrientFigureResolvers,
  NutritionPerServingResolvers,
} from "../../generated/resolver-types.js";
import type {
  AllergenFindingParent,
  AllergenStatementParent,
  AsIngredientParent,
  CautionParent,
  DietParent,
  NotEatenParent,
  FoodAsIngredientParent,
  LabelToReadParent,
  NutrientFigureParent,
  NutritionParent,
} from "../../parent-types.js";
import type { FieldsToResolve } from "../fields-to-resolve.js";
import { foodsIn, keepable } from "./keepable.js";
import { foodOfPlan } from "../make-parents.js";

export const allergenStatementResolvers: FieldsToResolve<AllergenStatementResolvers, AllergenStatementParent> = {
  whose: ({ whose }) => whose ?? null,
  lists: ({ lists }) => lists.map(({ id, region, law }) => ({ code: id, region, law })),
  findings: ({ findings, frozen }) => findings.map((finding) => ({ ...finding, frozen })),
  labelsToRead: ({ labelsToRead, frozen }) => labelsToRead.map((label) => ({ ...label, frozen })),
  alsoContains: ({ alsoContains }) => alsoContains.map(({ code }) => code),
};

export const allergenFindingResolvers: FieldsToResolve<AllergenFindingResolvers, AllergenFindingParent> = {
  asIngredient: ({ asIngredient, frozen }) => ({ ...asIngredient, frozen }),
  contains: ({ frozen, contains }) => foodsIn(frozen, contains),
  mayContain: ({ frozen, mayContain }) => foodsIn(frozen, mayContain),
  unknown: ({ frozen, unknown }) => foodsIn(frozen, unknown),
};

export const asIngredientResolvers: FieldsToResolve<AsIngredientResolvers, AsIngredientParent> = {
  unknown: ({ frozen, unknown }) => foodsIn(frozen, unknown),
  glutenFreeOnly: ({ frozen, glutenFreeOnly }) => foodsIn(frozen, glutenFreeOnly),
  foods: ({ frozen, foods }) => foods.map((each) => ({ ...each, frozen })),
};

export const foodAsIngredientResolvers: FieldsToResolve<FoodAsIngredientResolvers, FoodAsIngredientParent> = {
  food: ({ frozen, food }) => foodOfPlan(frozen, food),
};

export const labelToReadResolvers: FieldsToResolve<LabelToReadResolvers, LabelToReadParent> = {
  food: ({ frozen, food }) => foodOfPlan(frozen, food),
};

export const dietResolvers: FieldsToResolve<DietResolvers, DietParent> = {
  code: ({ diet }) => diet,
  breaks: ({ frozen, breaks }) => foodsIn(frozen, breaks),
  unknown: ({ frozen, unknown }) => foodsIn(frozen, unknown),
};

export const nutritionResolvers: FieldsToResolve<NutritionPerServingResolvers, NutritionParent> = {
  gramsPerServing: ({ gramsPerServing }) => gramsPerServing?.low ?? null,
  nutrients: ({ nutrients, frozen, labelScheme }) =>
    Object.entries(nutrients).map(([nutrient, figure]) => ({
      nutrient: nutrient as NutrientFigureParent["nutrient"],
      figure,
      frozen,
      labelScheme,
    })),
  unweighed: ({ frozen, unweighed }) => foodsIn(frozen, unweighed),
  added: ({ frozen, added }) => foodsIn(frozen, added),
  missing: ({ frozen, missing }) => foodsIn(frozen, missing),
  notEaten: ({ frozen, notEaten }) => notEaten.map((each) => ({ ...each, frozen })),
};

export const notEatenResolvers: FieldsToResolve<NotEatenResolvers, NotEatenParent> = {
  food: ({ frozen, food }) => foodOfPlan(frozen, food),
  share: ({ share }) => share?.low ?? null,
  reasons: ({ why }) => why,
};

const upTo = ({ low, high }: { readonly low: number; readonly high: number }): number | null =>
  high > low ? high : null;

export const nutrientFigureResolvers: FieldsToResolve<NutrientFigureResolvers, NutrientFigureParent> = {
  perServing: ({ figure }) => figure.perServing.low,
  perServingUpTo: ({ figure }) => upTo(figure.perServing),
  per100g: ({ figure }) => figure.per100g?.low ?? null,
  per100gUpTo: ({ figure }) => figure.per100g && upTo(figure.per100g),
  coverage: ({ figure }) => figure.coverage,
  complete: ({ figure }) => figure.complete,
  atLeast: ({ figure }) => figure.atLeast,
  raw: ({ figure }) => figure.raw,
  unknown: ({ figure, frozen }) => foodsIn(frozen, figure.unknown),
  label: ({ nutrient, figure, frozen }, { scheme }) => labelText(nutrient, figure.perServing, scheme, frozen.locale),
  onLabel: ({ nutrient, figure, frozen, labelScheme }) => labelNutrient(nutrient, figure, labelScheme, frozen.locale),
};

export const cautionResolvers: FieldsToResolve<CautionResolvers, CautionParent> = {
  about: ({ about, frozen }) => about.map((subject) => keepable(frozen, subject)),
};
