import { z } from "zod";
import { nutrientCodes, type Span } from "../../domain/nutrition/nutrients.js";
import type { NutritionOfMeals } from "../../domain/plan/contents/contents.js";
import type { LabelScheme } from "../../domain/nutrition/label-rounding.js";
import { labelNutrient } from "../sentences/label-text.js";
import { list, named, text, type Json } from "./named-schema.js";
import { namedThingSchema, type ThingsOfPlan } from "./named-thing.js";

const upToOf = ({ low, high }: Span): number | null => (high > low ? high : null);

const labelFigureSchema = named(
  "LabelFigure",
  "A figure as a label may print it.",
  z.object({
    value: z.number().describe("Rounded; the lower end of a range. 0 where `text` says less than some amount."),
    upTo: z.number().nullable().describe("The upper end. Null if it is not a range."),
    text: text("Ready to show, with its unit: `12 g`, `<0.5 g`, `less than 5 mg`.", 200),
  }),
);

const labelNutrientSchema = named(
  "LabelNutrient",
  "A nutrient as a label may print it, in the reader's language.",
  z.object({
    name: text("What the label calls it: by the rules of the Union salt in place of sodium.", 200),
    unit: text("`g`, `mg` or `kcal`.", 10),
    perServing: labelFigureSchema.describe("One serving."),
    per100g: labelFigureSchema.nullable().describe("100 g as eaten. Null where the dish cannot be weighed."),
  }),
);

export const nutritionSchema = named(
  "Nutrition",
  "What one person eats: a serving of one meal, or of all of them together. From figures of the raw foods. A nutrient that no food has a figure for is left out: unknown, never zero.",
  z.object({
    basis: z
      .enum(["RAW_FOODS_OVER_COOKED_WEIGHT", "RAW_FOODS_OVER_SERVINGS"])
      .describe("Whether the finished dish could be weighed."),
    gramsPerServing: z
      .number()
      .nullable()
      .describe("What one serving weighs. Null where not everything can be weighed."),
    labelScheme: z
      .enum(["US", "EU"])
      .nullable()
      .describe(
        "Whose rules `onLabel` rounds by, those of the region of the answer: 21 CFR 101.9(c), or the European Commission's guidance on tolerances. Null if no rules of the region are known here, or no region is named.",
      ),
    nutrients: list(
      z.object({
        nutrient: z.enum(nutrientCodes).describe("Which; the letters at the end are its unit."),
        perServing: z.number().describe("In one serving; the lower end of a range."),
        perServingUpTo: z.number().nullable().describe("The upper end. Null if it is not a range."),
        per100g: z.number().nullable().describe("In 100 g as eaten. Null where the dish cannot be weighed."),
        per100gUpTo: z.number().nullable().describe("The upper end. Null if it is not a range."),
        coverage: z
          .number()
          .min(0)
          .max(1)
          .describe("Share of the food with energy in it that has a figure, by weight without water."),
        complete: z.boolean().describe("Every food was weighed and has a figure. If false, there may be more of it."),
        atLeast: z
          .boolean()
          .describe(
            "Not complete, and what is not known can only add to it. False where something counted may be left out or is an estimate, too.",
          ),
        raw: z.boolean().describe("Of the raw foods: what cooking destroys of it is not taken off. True of vitamins."),
        onLabel: labelNutrientSchema
          .nullable()
          .describe(
            "As a label may print what is known of it. Null without a `labelScheme`, or a rule of it for the nutrient.",
          ),
        unknown: list(namedThingSchema, "Foods without a figure, or with some that nobody weighed."),
      }),
      "One entry for every nutrient that some food has a figure for.",
    ),
    unweighed: list(
      namedThingSchema,
      "Foods of which some or all counts in no sum, because nobody knows what it weighs: what is only added to taste, too.",
    ),
    added: list(
      namedThingSchema,
      "Foods of which more goes in than was weighed: to taste, or more for serving. What you add comes on top.",
    ),
    missing: list(namedThingSchema, "Foods whose energy nobody gives, so that they are missing from the figures."),
    notEaten: list(
      z.object({
        food: namedThingSchema.describe("What it is."),
        share: z
          .number()
          .min(0)
          .max(1)
          .nullable()
          .describe("Share of it that is not eaten; the lower end of a range. Null if its weight is not known."),
        reasons: z
          .array(z.enum(["STATED", "DRAINED", "DRAINED_BY_CLASS", "DRAINED_UNWEIGHED"]))
          .max(4)
          .describe(
            "`STATED`: its writer says so. `DRAINED`: a step drains it; dissolved salt goes in the share of the water that is poured away. `DRAINED_BY_CLASS`: the same of a boiled pulse or grain whose steps do not say. `DRAINED_UNWEIGHED`: nobody can say how much, so nothing is taken off.",
          ),
      }),
      "Foods that are not eaten whole: thrown away, or poured away with the water they were boiled in.",
    ),
    mealCount: z.number().int().min(0).describe("How many meals the figures are the sum of."),
  }),
);
type NutritionJson = Json<typeof nutritionSchema>;

export const nutritionJson = (
  nutrition: NutritionOfMeals,
  things: ThingsOfPlan,
  labelScheme: LabelScheme | null,
): NutritionJson => ({
  basis: nutrition.basis,
  gramsPerServing: nutrition.gramsPerServing?.low ?? null,
  labelScheme,
  nutrients: nutrientCodes.flatMap((nutrient) => {
    const figure = nutrition.nutrients[nutrient];
    if (figure === undefined) return [];
    const { perServing, per100g, coverage, complete, atLeast, raw, unknown } = figure;
    return [
      {
        nutrient,
        perServing: perServing.low,
        perServingUpTo: upToOf(perServing),
        per100g: per100g?.low ?? null,
        per100gUpTo: per100g && upToOf(per100g),
        coverage,
        complete,
        atLeast,
        raw,
        onLabel: labelNutrient(nutrient, figure, labelScheme, things.reader.locale),
        unknown: things.foods(unknown),
      },
    ];
  }),
  unweighed: things.foods(nutrition.unweighed),
  added: things.foods(nutrition.added),
  missing: things.foods(nutrition.missing),
  notEaten: nutrition.notEaten.map(({ food, share, why }) => ({
    food: things.named({ kind: "FOOD", slug: food }),
    share: share?.low ?? null,
    reasons: [...why],
  })),
  mealCount: nutrition.mealCount,
});
