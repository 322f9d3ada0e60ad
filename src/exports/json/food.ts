import { z } from "zod";
import type { Food } from "../../domain/model/food.js";
import { asWritten, showWritten } from "../words/shown-amount.js";
import { amountSchema } from "./amount.js";
import { frozenFoodSchema } from "./frozen-food.js";
import { list, named, text, texts, type Json } from "./named-schema.js";
import { packJson, packSchema } from "./shopping-list.js";
import { sourceSchema } from "./amount.js";

export const foodSchema = named(
  "Food",
  "A food as it is known today, with who says so.",
  z.object({
    ...frozenFoodSchema.shape,
    parts: list(
      z.object({
        name: text("Name of the part."),
        perPiece: amountSchema.describe("What one piece gives."),
        after: texts("Parts that must be taken before this one."),
        source: sourceSchema,
      }),
      "What one piece gives besides the rest of it.",
    ),
    packs: list(packSchema, "What shops sell."),
  }),
);
type FoodJson = Json<typeof foodSchema>;

export function foodJson(food: Food): FoodJson {
  const show = asWritten(food);
  return {
    ...food,
    parts: food.parts.map(({ name, perPiece, after, source }) => ({
      name,
      perPiece: showWritten(perPiece, food, show),
      after,
      source,
    })),
    packs: food.packs.map((pack) => packJson(pack, food, null)),
  };
}
