import { z } from "zod";
import type { Measured } from "../../domain/model/amount.js";
import type { Food, Pack } from "../../domain/model/food.js";
import type { PlanBundle } from "../../domain/model/plan.js";
import type { Reader } from "../../domain/plan/plan-answer.js";
import type { InSlices } from "../../domain/counted-work.js";
import type { ShoppingLine, ShoppingList, Use } from "../../domain/plan/scaled.js";
import { foodNameFor } from "../words/food-name.js";
import { noFacts } from "../words/name-book.js";
import { packName } from "../words/pack-names.js";
import { partIn } from "../words/part-words.js";
import { codeName } from "../words/rule-words.js";
import { takenText, toBuyText } from "../words/packs-text.js";
import { isOptional } from "../document/shopping-text.js";
import { asWritten, showAmount, showWritten } from "../words/shown-amount.js";
import { amountSchema, moneySchema, sourceSchema } from "./amount.js";
import { costSchema } from "./cost.js";
import { day, list, named, slug, text, type Json } from "./named-schema.js";
import { namedThingSchema } from "./named-thing.js";
import { warningNames } from "../sentences/named-warning.js";
import { warningsJsonInSlices, warningSchema } from "./warning.js";
import { wordsFor } from "../words/words-for.js";

export const packSchema = named(
  "Pack",
  "Something a shop sells.",
  z.object({
    code: text("Code, unique inside the food."),
    name: text("As sold: tin, bag, punnet; on a list in the reader's language."),
    content: amountSchema.describe(
      "What is in it, in the unit of its label. Of what is loose: how much the price is for; on a list, how much is weighed out.",
    ),
    price: moneySchema.nullable().describe("Its price. Null if it is not known."),
    region: text("ISO 3166 code of where it is sold. Null if it is sold anywhere.", 10).nullable(),
    seen: day("The day the price was seen."),
    source: sourceSchema,
    loose: z.boolean().describe("Sold in any amount, not in packs."),
    step: amountSchema
      .nullable()
      .describe(
        "Of what is loose: the smallest amount that is weighed out. Null for the usual step of a shop's scales.",
      ),
  }),
);

const useSchema = named(
  "Use",
  "A meal or component that uses a food, and how much.",
  z.object({
    plan: z.object({
      publisher: slug("Slug of its publisher."),
      slug: slug("Slug of the plan."),
      title: text("Its title."),
    }),
    meal: namedThingSchema.nullable().describe("The meal, if a meal takes it."),
    component: namedThingSchema.nullable().describe("The component, if a component takes it."),
    part: text("The part of the food it takes; `amount` then counts the pieces it needs.").nullable(),
    partName: text("The same for people, in the reader's language.").nullable(),
    asWritten: text("The line in the writer's own words."),
    amount: amountSchema.nullable().describe("How much, in the unit of the need. Null if it is added to taste."),
    optional: z.boolean().describe("The line that takes it may be left out."),
  }),
);

const shoppingLineSchema = named(
  "ShoppingLine",
  "One food to buy.",
  z.object({
    food: namedThingSchema,
    aisle: text("Code of the aisle of the shop."),
    aisleName: text("The aisle for people, in the reader's language."),
    need: amountSchema
      .nullable()
      .describe(
        "How much is needed, as bought, before anything on hand is taken off. Null if it is only used to taste.",
      ),
    onHand: amountSchema.nullable().describe("How much of it was there already."),
    toBuy: amountSchema
      .nullable()
      .describe("How much the packs must cover. Its `text` counts whole pieces, which is what can be bought."),
    buy: list(
      z.object({
        count: z.number().int().min(1).describe("The number of them."),
        pack: packSchema,
        weighedFrom: packSchema
          .nullable()
          .describe(
            "Of loose goods: the price they are weighed out at; `pack` is then what is weighed out. Null for a pack.",
          ),
      }),
      "The packs that cover it at the least cost.",
    ),
    cost: costSchema,
    uses: list(useSchema, "The meals and components that use it, with amounts."),
    partsOver: list(
      z.object({
        part: text("Name of the part, as lines have it."),
        partName: text("The same for people, in the reader's language."),
        pieces: z.number().min(0).describe("Pieces of the food that it is left of."),
        amount: amountSchema
          .nullable()
          .describe("How much of the part that is. Null if it is not known what one piece gives."),
      }),
      "What is left of the pieces that parts are taken from, such as the yolks of a meringue.",
    ),
    open: z.boolean().describe("Some use asks for an amount to taste, or for an open extra."),
    optional: z.boolean().describe("Every line that takes it may be left out."),
    toTake: text(
      "What to take from the shelf, ready to show: packs, or the amount itself, of pieces whole ones. Null if there is nothing to take, or the amount is not known.",
    ).nullable(),
  }),
);

export const shoppingListSchema = named(
  "ShoppingList",
  "What to buy, one line for each food, by part of the shop.",
  z.object({
    lines: list(shoppingLineSchema, "Lines of one aisle stand together."),
    cost: costSchema,
    warnings: list(warningSchema, "What the reader should know beside the list."),
  }),
);
type ShoppingListJson = Json<typeof shoppingListSchema>;

const foodJson = (food: Food, { locale }: Reader) => ({
  kind: "FOOD" as const,
  slug: food.slug,
  name: foodNameFor(food, locale),
});

/** In the units it is labelled with, whoever reads it; `reader` null: in the writer's words. */
export const packJson = (pack: Pack, food: Food, reader: Reader | null): Json<typeof packSchema> => {
  const label = (amount: Measured) => showWritten(amount, food, reader ?? asWritten(food));
  return {
    code: pack.id,
    name: reader === null ? pack.name : packName(pack.name, reader.locale),
    content: label(pack.content),
    price: pack.price,
    region: pack.region,
    seen: pack.seen,
    source: pack.source,
    loose: pack.loose !== undefined,
    step: pack.loose?.step ? label(pack.loose.step) : null,
  };
};

const useJson = (
  { bundle, meal, component, part, asWritten: written, amount, optional }: Use,
  food: Food,
  reader: Reader,
) => ({
  plan: { publisher: bundle.plan.publisher, slug: bundle.plan.slug, title: bundle.plan.title },
  meal: meal && { kind: "MEAL" as const, slug: meal.slug, name: meal.title },
  component: component && { kind: "COMPONENT" as const, slug: component.slug, name: component.title },
  part,
  partName: part && partIn(reader.locale, part),
  asWritten: written,
  amount: amount && showAmount(amount, food, reader),
  optional,
});

const lineJson = (line: ShoppingLine, reader: Reader): ShoppingListJson["lines"][number] => {
  const { food, need, onHand, toBuy, buy, cost, uses, partsOver, open } = line;
  return {
    food: foodJson(food, reader),
    aisle: food.aisle,
    aisleName: codeName("aisles", food.aisle, wordsFor(reader.locale)),
    need: need && showAmount(need, food, reader),
    onHand: onHand && showAmount(onHand, food, reader),
    toBuy: toBuy && { ...showAmount(toBuy, food, reader), text: toBuyText(toBuy, food, reader) },
    buy: buy.map(({ pack, count, weighedFrom }) => ({
      count,
      pack: packJson(pack, food, reader),
      weighedFrom: weighedFrom === undefined ? null : packJson(weighedFrom, food, reader),
    })),
    cost,
    uses: uses.map((use) => useJson(use, food, reader)),
    // The food's own words and densities are those of whole pieces.
    partsOver: partsOver.map((over) => ({
      ...over,
      partName: partIn(reader.locale, over.part),
      amount: over.amount && showAmount(over.amount, noFacts, reader),
    })),
    open,
    optional: isOptional(line),
    toTake: takenText(line, reader),
  };
};

/** Lines of one aisle stand together, aisles in the order of their first line. */
export function* shoppingListJsonInSlices(
  { lines, cost, warnings }: ShoppingList,
  reader: Reader,
  bundles: readonly PlanBundle[],
): InSlices<ShoppingListJson> {
  const words = wordsFor(reader.locale);
  const names = warningNames(bundles, reader);
  const aisles = [...new Set(lines.map(({ food }) => food.aisle))];
  const written: ShoppingListJson["lines"][number][] = [];
  for (const aisle of aisles) {
    for (const line of lines) {
      if (line.food.aisle !== aisle) continue;
      yield;
      written.push(lineJson(line, reader));
    }
  }
  return {
    lines: written,
    cost,
    warnings: yield* warningsJsonInSlices(warnings, words, names),
  };
}

export const listAnswerSchema = named(
  "ShoppingListAnswer",
  "One shopping list, and the plans it is for.",
  z.object({
    plans: list(
      z.object({
        publisher: slug("Slug of its publisher."),
        slug: slug("Slug of the plan."),
        title: text("Its title."),
        revision: z.number().int().min(1).describe("The revision that was computed."),
        servings: z.number().int().min(1).describe("How many it was computed for."),
      }),
      "The plans, in the order asked for.",
    ),
    ...shoppingListSchema.shape,
  }),
);

interface ListAnswer {
  readonly plans: readonly { readonly bundle: PlanBundle; readonly revision: number; readonly servings: number }[];
  readonly list: ShoppingList;
  readonly reader: Reader;
}

export function* listAnswerJsonInSlices({
  plans,
  list: of,
  reader,
}: ListAnswer): InSlices<Json<typeof listAnswerSchema>> {
  return {
    plans: plans.map(({ bundle: { plan }, revision, servings }) => ({
      publisher: plan.publisher,
      slug: plan.slug,
      title: plan.title,
      revision,
      servings,
    })),
    ...(yield* shoppingListJsonInSlices(
      of,
      reader,
      plans.map(({ bundle }) => bundle),
    )),
  };
}
