// @ts-nocheck
import { z } from "zod";
import { nutrientCodes, type Nutrition, type Span } from "../../domain/nutrition/nutrients.js";
import { list, named, type Json } from "./named-schema.js";
import { namedThingSchema, type ThingsOfPlan } from "./named-thing.js";

const upToOf = ({ low, high }: Span): number | null => (high > low ? high : null);

export const nutritionSchema = named(
  "Nutrition",
  "What one serving gives, from figures of the raw foods. A nutrient that no food has a figure for is left out: unknown, never zero.",
  z.object({
    basis: z
      .enum(["RAW_FOODS_OVER_COOKED_WEIGHT", "RAW_FOODS_OVER_SERVINGS"])
      .describe("Whether the finished dish could be weighed."),
    gramsPerServing: z
      .number()
      .nullable()
      .describe("What one serving weighs. Null where not everything can be weighed."),
    nutrients: list(
      z.object({
        nutrient: z.enum(nutrientCodes).describe("Which; the letters at the end are its unit."),
        perServing: z.number().describe("In one serving; the lower end of a range."),
        perServingUpTo: z.number().nullable().describe("The upper end. Null: no range."),
        per100g: z.number().nullable().describe("In 100 g as eaten. Null where the dish cannot be weighed."),
        per100gUpTo: z.number().nullable().describe("The upper end. Null: no range."),
        coverage: z.number().min(0).max(1).describe("Share of the weighed food that has a figure."),
        complete: z.boolean().describe("Every food was weighed and has a figure. False: there may be more of it."),
        unknown: list(namedThingSchema, "Foods without a figure."),
      }),
      "One entry for every nutrient that some food has a figure for.",
    ),
    unweighed: list(namedThingSchema, "Foods that count in no sum, because nobody knows what they weigh."),
  }),
);
export type NutritionJson = Json<typeof nutritionSchema>;

export const nutritionJson = (nutrition: Nutrition, things: ThingsOfPlan): NutritionJson => ({
  basis: nutrition.basis,
  gramsPerServing: nutrition.gramsPerServing?.low ?? null,
  nutrients: nutrientCodes.flatMap((nutrient) => {
    const figure = nutrition.nutrients[nutrient];
    if (figure === undefined) return [];
    const { perServing, per100g, coverage, complete, unknown } = figure;
    return [
      {
        nutrient,
        perServing: perServing.low,
        perServingUpTo: upToOf(perServing),
        per100g: per100g?.low ?? null,
        per100gUpTo: per100g && upToOf(per100g),
        coverage,
        complete,
        unknown: things.foods(unknown),
      },
    ];
  }),
  unweighed: things.foods(nutrition.unweighed),
});
