import { z } from "zod";
import { allergenCodes } from "../../domain/nutrition/allergen-codes.js";
import { listedNutrients } from "../../domain/plan/listing/listed-facts.js";
import { moneySchema } from "./amount.js";
import { count, day, instant, list, named, text } from "./named-schema.js";
import { planSummarySchema } from "./plan-parts.js";

const presence = z.enum(["CONTAINS", "MAY_CONTAIN", "DOES_NOT_CONTAIN", "UNKNOWN"]);

const planFactsSchema = named(
  "PlanFacts",
  "What a list finds a plan by, of its own servings and routes, without swaps. For one household ask the plan itself.",
  z.object({
    workedOutAt: instant("When it was worked out. Allergens and diets are those of now."),
    sessionMinutes: z
      .number()
      .nullable()
      .describe("Minutes of its longest session. Null where its steps fit no order."),
    handsOnMinutes: z.number().nullable().describe("Minutes of hands in all its sessions."),
    days: count("Days from its first meal to its last, both counted."),
    servings: count("People that it is written for."),
    foodsToBuy: count("How many foods are to be bought."),
    foodsAtHand: count("How many of them are at hand. Null if nobody said what is.").nullable(),
    costs: list(
      z.object({ perServing: moneySchema, date: day("The day of the prices.") }),
      "What a serving costs in the region asked for, in every currency in which the price of every food is known.",
    ),
    nutrients: list(
      z.object({
        nutrient: z.enum(listedNutrients as [string, ...string[]]).describe("The nutrient."),
        min: z.number().nullable().describe("So much at least. Null if that is not known."),
        max: z.number().nullable().describe("So much at most. Null if that is not known."),
      }),
      "What is certain of the nutrients of a serving, in all its meals together.",
    ),
    diets: list(text("Code of a diet.", 200), "Diets that it keeps in the region asked for."),
    allergens: list(
      z.object({
        allergen: z.enum(allergenCodes).describe("Its code."),
        presence: presence.describe("As an ingredient."),
        traces: presence.describe("As traces. UNKNOWN unless every food says."),
      }),
      "Every allergen, by the lists of the region asked for.",
    ),
  }),
);

const planFacetSchema = named(
  "PlanFacet",
  "Plans of a list by what they have in common.",
  z.object({
    kind: z.enum(["DIET", "WITHOUT_ALLERGEN", "LANGUAGE", "TAG", "APPLIANCE"]).describe("What it counts by."),
    values: list(
      z.object({ value: text("A code, tag or language.", 2_000), count: count("How many plans have it.") }),
      "The commonest values first, at most 50.",
    ),
    isExact: z.boolean().describe("Whether every plan of the list is counted; false: 10,000 of them."),
  }),
);

export const listedPlanSchema = named(
  "PlanSummary",
  "A plan in a list, in its newest revision.",
  planSummarySchema.extend({
    facts: planFactsSchema.nullable().optional().describe("With `include=facts`. Null where it is not worked out yet."),
  }),
);

export const planCountSchema = {
  totalCount: count("With `include=count`: how many plans the list has, exactly up to 10,000.").optional(),
  totalCountIsExact: z.boolean().optional().describe("With `include=count`: false where there are more."),
  facets: list(planFacetSchema, "With `include=facets`.").optional(),
};
