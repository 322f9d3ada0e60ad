import { z } from "zod";
import { moneySchema } from "./amount.js";
import { named, slugs, text } from "./named-schema.js";

/** The domain's `Cost` as it is. */
export const costSchema = named(
  "Cost",
  "What something costs. A food whose price nobody knows is in no sum.",
  z.object({
    currency: text("ISO 4217 code. Null if no price is known.", 3).nullable(),
    atTill: moneySchema.nullable().describe("What the till asks for."),
    used: moneySchema.nullable().describe("The share of it that these servings eat."),
    carriedOver: moneySchema.nullable().describe("What stays in the cupboard."),
    perServing: moneySchema.nullable().describe("`used` for each serving."),
    unpriced: slugs("Slugs of the foods without a price."),
  }),
);
