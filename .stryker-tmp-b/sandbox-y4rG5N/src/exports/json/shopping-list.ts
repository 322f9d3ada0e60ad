// @ts-nocheck
import { z } from "zod";
import type { Food } from "../../domain/model/food.js";
import type { Reader } from "../../domain/plan/plan-answer.js";
import type { PackCount, ShoppingLine, ShoppingList, Use } from "../../domain/plan/scaled.js";
import { foodNameFor } from "../food-name.js";
import { showAmount, showWritten } from "../shown-amount.js";
import { amountSchema, moneySchema, sourceSchema } from "./amount.js";
import { costSchema } from "./cost.js";
import { day, list, named, slug, text, type Json } from "./named-schema.js";
import { namedThingSchema } from "./named-thing.js";
import { warningJson, warningSchema } from "./warning.js";

export const packSchema = named(
  "Pack",
  "Something a shop sells.",
  z.object({
    code: text("Code, unique inside the food."),
    name: text("As sold: tin, bag, punnet."),
    content: amountSchema.describe("What is in it."),
    price: moneySchema.nullable().describe("Its price. Null: nobody knows."),
    region: text("ISO 3166 code of where it is sold. Null: anywhere.", 10).nullable(),
    seen: day("The day the price was seen."),
    source: sourceSchema,
  }),
);

export const useSchema = named(
  "Use",
  "Who takes how much of a food.",
  z.object({
    plan: z.object({
      publisher: slug("Slug of its publisher."),
      slug: slug("Slug of the plan."),
      title: text("Its title."),
    }),
    meal: namedThingSchema.nullable().describe("The meal, if a meal takes it."),
    component: namedThingSchema.nullable().describe("The component, if a component takes it."),
    part: text("The part of the food it takes; `amount` then counts the pieces it needs.").nullable(),
    asWritten: text("The line in the writer's own words."),
    amount: amountSchema.nullable().describe("How much, in the unit of the need. Null: to taste."),
  }),
);

export const shoppingLineSchema = named(
  "ShoppingLine",
  "One food to buy.",
  z.object({
    food: namedThingSchema,
    aisle: text("Part of the shop it is found in."),
    need: amountSchema
      .nullable()
      .describe("How much is needed, as bought, before anything on hand is taken off. Null: only to taste."),
    onHand: amountSchema.nullable().describe("How much of it was there already."),
    toBuy: amountSchema.nullable().describe("How much the packs must cover."),
    buy: list(
      z.object({ count: z.number().int().min(1).describe("How many."), pack: packSchema }),
      "The packs that cover it at the least cost.",
    ),
    cost: costSchema,
    uses: list(useSchema, "Who takes how much of it."),
    partsOver: list(
      z.object({
        part: text("Name of the part."),
        pieces: z.number().min(0).describe("Pieces of the food that it is left of."),
        amount: amountSchema
          .nullable()
          .describe("How much of the part that is. Null: what one piece gives is not known."),
      }),
      "What is left of the pieces that parts are taken from, such as the yolks of a meringue.",
    ),
    open: z.boolean().describe("Some use asks for an amount to taste, or for an open extra."),
  }),
);

export const shoppingListSchema = named(
  "ShoppingList",
  "What to buy, one line a food, by part of the shop.",
  z.object({
    lines: list(shoppingLineSchema, "Lines of one aisle stand together."),
    cost: costSchema,
    warnings: list(warningSchema, "What the reader should know beside the list."),
  }),
);
export type ShoppingListJson = Json<typeof shoppingListSchema>;

const noFacts = { densities: [], measures: [] };

const foodJson = (food: Food, { locale }: Reader) => ({
  kind: "FOOD" as const,
  slug: food.slug,
  name: foodNameFor(food, locale),
});

const packJson = ({ pack, count }: PackCount, food: Food) => ({
  count,
  pack: {
    code: pack.id,
    name: pack.name,
    // In the units it is labelled with, whoever reads it.
    content: showWritten(pack.content, food, {
      measures: "METRIC",
      locale: food.names[0]?.language ?? "en",
      converts: false,
    }),
    price: pack.price,
    region: pack.region,
    seen: pack.seen,
    source: pack.source,
  },
});

const useJson = ({ bundle, meal, component, part, asWritten, amount }: Use, food: Food, reader: Reader) => ({
  plan: { publisher: bundle.plan.publisher, slug: bundle.plan.slug, title: bundle.plan.title },
  meal: meal && { kind: "MEAL" as const, slug: meal.slug, name: meal.title },
  component: component && { kind: "COMPONENT" as const, slug: component.slug, name: component.title },
  part,
  asWritten,
  amount: amount && showAmount(amount, food, reader),
});

const lineJson = (line: ShoppingLine, reader: Reader): ShoppingListJson["lines"][number] => {
  const { food, need, onHand, toBuy, buy, cost, uses, partsOver, open } = line;
  return {
    food: foodJson(food, reader),
    aisle: food.aisle,
    need: need && showAmount(need, food, reader),
    onHand: onHand && showAmount(onHand, food, reader),
    toBuy: toBuy && showAmount(toBuy, food, reader),
    buy: buy.map((packs) => packJson(packs, food)),
    cost,
    uses: uses.map((use) => useJson(use, food, reader)),
    // The food's own words and densities are those of whole pieces.
    partsOver: partsOver.map((over) => ({ ...over, amount: over.amount && showAmount(over.amount, noFacts, reader) })),
    open,
  };
};

/** Lines of one aisle stand together, aisles in the order of their first line. */
export function shoppingListJson({ lines, cost, warnings }: ShoppingList, reader: Reader): ShoppingListJson {
  const aisles = [...new Set(lines.map(({ food }) => food.aisle))];
  return {
    lines: aisles.flatMap((aisle) =>
      lines.filter(({ food }) => food.aisle === aisle).map((line) => lineJson(line, reader)),
    ),
    cost,
    warnings: warnings.map(warningJson),
  };
}
