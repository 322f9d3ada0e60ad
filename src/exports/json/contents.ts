import { z } from "zod";
import type { Contents } from "../../domain/plan/plan-answer.js";
import type { CautionsFound } from "../../domain/storage/cautions.js";
import { sourceSchema } from "./amount.js";
import { list, named, slug, text, texts, type Json } from "./named-schema.js";
import { regionOwnerSchema } from "./owned-region.js";
import { namedThingSchema, type ThingsOfPlan } from "./named-thing.js";

const foods = (description: string) => list(namedThingSchema, description);

export const allergenStatementSchema = named(
  "AllergenStatement",
  'Allergens, as far as the foods\' own data say. Unknown is never "free from": read the labels of what you buy, and follow your local rules for declaring allergens.',
  z.object({
    asked: text("The region that the reader asked for. Null if the reader named none.").nullable(),
    whose: regionOwnerSchema
      .nullable()
      .describe(
        "Who named the region whose list was used. Null if nobody did; every allergen of any list is then answered.",
      ),
    reach: z
      .enum(["REGION", "REGION_NOT_GIVEN", "REGION_WITHOUT_LIST"])
      .describe("Whose list was used. Without a region, or a list of its own: everything on any list."),
    lists: list(
      z.object({ code: text("Code of the list."), region: text("Its region."), law: text("The law.") }),
      "The lists that are answered to.",
    ),
    findings: list(
      z.object({
        code: text("Code of the allergen."),
        name: text("The name that it must be declared by."),
        presence: z
          .enum(["CONTAINS", "MAY_CONTAIN", "DOES_NOT_CONTAIN", "UNKNOWN"])
          .describe("What is known, over all foods: the least safe of `asIngredient` and `traces`. Unknown spreads."),
        asIngredient: z
          .object({
            presence: z.enum(["CONTAINS", "DOES_NOT_CONTAIN", "UNKNOWN"]),
            basis: z
              .enum(["STATED", "DERIVED", "BY_NATURE"])
              .nullable()
              .describe(
                "What it rests on: said of this very allergen, following from a diet or a group, or from the nature of a single ingredient. Null if it is not known.",
              ),
            source: sourceSchema.nullable().describe("The source of the statement. Null if it is not known."),
            unknown: foods("Foods that say nothing of it: look at their labels."),
            glutenFreeOnly: foods(
              "Those of them that are called gluten-free, which says nothing of wheat, rye, barley or oats as such.",
            ),
          })
          .describe("Whether any of the foods is made with it. Says nothing of traces."),
        traces: z
          .enum(["MAY_CONTAIN", "DOES_NOT_CONTAIN", "UNKNOWN"])
          .describe("Whether traces are possible; not known until it is stated of every food."),
        contains: foods("Foods that contain it."),
        mayContain: foods("Foods whose own data say they may contain it."),
        unknown: foods("Foods of which it is not known."),
        threshold: text("The amount from which it must be declared. Null if any amount must be.").nullable(),
      }),
      "One entry for every allergen on the lists.",
    ),
    labelsToRead: list(
      z.object({ food: namedThingSchema, allergens: texts("Codes of the allergens it may have as ingredients.") }),
      "Foods whose labels are to be read, without the allergens that the dish contains anyway.",
    ),
    alsoContains: texts("Contained, but on none of the lists."),
  }),
);

export const dietSchema = named(
  "Diet",
  "A dish held against a diet.",
  z.object({
    code: slug("Code, as the parameter `diets` takes it."),
    name: text("What is stated; never a promise."),
    fits: z.boolean().nullable().describe("Null if it is not known."),
    breaks: foods("Foods that break it."),
    unknown: foods("Foods of which it is not known."),
    traces: z
      .enum(["MAY_CONTAIN", "DOES_NOT_CONTAIN", "UNKNOWN"])
      .describe("Traces of what breaks it; not known until stated of every food. `fits` is about ingredients."),
    claims: list(
      z.object({ law: text("The law."), threshold: text("The number it sets."), source: sourceSchema }),
      "What the law of the region ties the claim to.",
    ),
  }),
);

export const contentsJson = ({ allergens, diets }: Contents, things: ThingsOfPlan) => ({
  allergens: {
    asked: allergens.asked,
    whose: allergens.whose ?? null,
    reach: allergens.reach,
    lists: allergens.lists.map(({ id, region, law }) => ({ code: id, region, law })),
    findings: allergens.findings.map(({ code, name, presence, contains, mayContain, unknown, threshold, ...more }) => ({
      code,
      name,
      presence,
      asIngredient: {
        presence: more.asIngredient.presence,
        basis: more.asIngredient.basis,
        source: more.asIngredient.source,
        unknown: things.foods(more.asIngredient.unknown),
        glutenFreeOnly: things.foods(more.asIngredient.glutenFreeOnly),
      },
      traces: more.traces,
      contains: things.foods(contains),
      mayContain: things.foods(mayContain),
      unknown: things.foods(unknown),
      threshold,
    })),
    labelsToRead: allergens.labelsToRead.map(({ food, allergens: codes }) => ({
      food: things.named({ kind: "FOOD", slug: food }),
      allergens: [...codes],
    })),
    alsoContains: allergens.alsoContains.map(({ code }) => code),
  } satisfies Json<typeof allergenStatementSchema>,
  diets: diets.map(
    ({ diet, name, fits, breaks, unknown, traces, claims }) =>
      ({
        code: diet,
        name,
        fits,
        breaks: things.foods(breaks),
        unknown: things.foods(unknown),
        traces,
        claims: claims.map(({ law, threshold, source }) => ({ law, threshold, source })),
      }) satisfies Json<typeof dietSchema>,
  ),
});

export const cautionSchema = named(
  "Caution",
  "A caution, with where it comes from. It does not replace local food-safety codes or licensed practice.",
  z.object({
    code: text("What it is."),
    text: text("The words, the same in every output."),
    source: sourceSchema,
    restsOn: list(sourceSchema, "The published rules it rests on."),
    about: list(namedThingSchema, "What it is about. Empty if it is about everything."),
  }),
);

export const cautionsJson = (
  { cautions }: CautionsFound,
  things: ThingsOfPlan,
): readonly Json<typeof cautionSchema>[] =>
  cautions.map(({ code, text: words, source, restsOn, about }) => ({
    code,
    text: words,
    source,
    restsOn,
    about: about.map(things.named),
  }));
