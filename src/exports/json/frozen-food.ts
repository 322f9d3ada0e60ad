import { z } from "zod";
import { nutrientCodes } from "../../domain/nutrition/nutrients.js";
import { moneySchema, sourceSchema } from "./amount.js";
import { densitySchema, keepingRuleSchema, measuredSchema, ownMeasureSchema } from "./frozen-line.js";
import { day, list, named, slug, text, texts } from "./named-schema.js";

/** A food with every fact that is known about it. */
const nutrientsSchema = z.object({
  per100g: z
    .partialRecord(z.enum(nutrientCodes), z.number())
    .describe("What is missing was not measured; it is never zero."),
  source: sourceSchema,
});

export const frozenFoodSchema = named(
  "FoodFacts",
  "A food that is bought, with every fact that is known about it and the source of each.",
  z.object({
    slug: slug("Short name, the same for the food of today and every frozen copy of it."),
    names: list(
      z.object({
        language: text("BCP 47 language.", 60),
        region: text("ISO 3166 code, if it is called so only there.", 10).nullable(),
        one: text("The singular."),
        many: text("The plural."),
        counted: text(
          'What numbers of the CLDR category "many" take, where that is another form than the plural: Polish 2 jabłka, 5 jabłek. If absent, the plural.',
        ).optional(),
        also: texts("Other words for exactly the same food."),
      }),
      "Its names; the first is the fallback.",
    ),
    aisle: text("The aisle of the shop."),
    shoppedBy: z.enum(["MASS", "VOLUME", "COUNT"]).describe("How a shopper asks for it."),
    ndbNo: text("Number in the open USDA table.", 40).nullable(),
    densities: list(densitySchema, "How heavy a millilitre of it is, by form."),
    measures: list(ownMeasureSchema, "Measures that only this food has, such as a clove."),
    parts: list(
      z.object({
        name: text("Name of the part."),
        perPiece: measuredSchema.describe("What one piece gives."),
        after: texts("Parts that must be taken before this one."),
        source: sourceSchema,
        keepsAs: text("Class of published keeping rules of the part by itself.").nullable().exactOptional(),
        keeping: list(keepingRuleSchema, "How long the part by itself keeps.").exactOptional(),
        nutrients: nutrientsSchema.describe("Per 100 g of the part by itself.").exactOptional(),
      }),
      "What one piece gives besides the rest of it.",
    ),
    edible: list(
      z.object({
        form: text("The preparation. Null for the usual trimming.").nullable(),
        share: z.number(),
        source: sourceSchema,
      }),
      "The share that is left once prepared.",
    ),
    yields: list(
      z.object({ food: slug("Slug of the other food."), gramsPerGram: z.number(), source: sourceSchema }),
      "Foods it turns into.",
    ),
    allergens: list(
      z.object({
        code: text("Code of the allergen."),
        presence: z.enum(["CONTAINS", "MAY_CONTAIN", "DOES_NOT_CONTAIN", "UNKNOWN"]),
        traces: z
          .enum(["MAY_CONTAIN", "DOES_NOT_CONTAIN", "UNKNOWN"])
          .describe("What is said of traces, where that is not what `presence` says.")
          .exactOptional(),
        source: sourceSchema,
      }),
      "What is known. An allergen that is not listed is not known; it is never absent.",
    ),
    diets: list(
      z.object({
        diet: text("Code of the diet."),
        fits: z.boolean().nullable().describe("Null if it is not known."),
        source: sourceSchema,
      }),
      "What is known about diets.",
    ),
    singleIngredient: z
      .object({
        is: texts("Codes of the allergens that the ingredient is itself."),
        source: sourceSchema,
      })
      .nullable()
      .describe("One ingredient with nothing added: no other allergen is an ingredient of it, by nature.")
      .exactOptional(),
    nutrients: nutrientsSchema.nullable().describe("Per 100 g of edible portion."),
    keepsAs: text("Class of published keeping rules.").nullable(),
    keeping: list(keepingRuleSchema, "How long it keeps, as its writer or its label says."),
    shelfStable: z
      .boolean()
      .describe("Sold unchilled and kept on a shelf until it is opened. Absent if it is not stated.")
      .exactOptional(),
    packs: list(
      z.object({
        id: text("Unique inside the food."),
        name: text("As sold: tin, bag, punnet."),
        content: measuredSchema,
        price: moneySchema.nullable().describe("Null if it is not known."),
        region: text("ISO 3166 code of where it is sold. Null if it is sold anywhere.", 10).nullable(),
        seen: day("The day the price was seen."),
        source: sourceSchema,
        loose: z
          .object({ step: measuredSchema.nullable().describe("The smallest amount that is weighed out.") })
          .describe("Sold in any amount; `content` is then how much the price is for.")
          .exactOptional(),
      }),
      "What shops sell.",
    ),
    alwaysThere: z.boolean().describe("In every kitchen: counted and named, but never on a shopping list."),
    owner: slug("The publisher whose own food it is. Absent if all publishers share it.").exactOptional(),
    extends: z
      .object({
        food: slug("Slug of the food it builds on, which all publishers share."),
        sameIngredients: z.boolean().describe("Both are made of the same."),
        adds: texts("Codes of allergens that it contains beside those of that food.").exactOptional(),
        packs: texts("Ids of the packs that are its own.").exactOptional(),
      })
      .describe("The food it builds on. Absent if there is none.")
      .exactOptional(),
  }),
);
