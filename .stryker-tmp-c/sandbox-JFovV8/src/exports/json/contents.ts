// @ts-nocheck
import { z } from "zod";
import type { Contents } from "../../domain/plan/plan-answer.js";
import type { CautionsFound } from "../../domain/storage/cautions.js";
import { sourceSchema } from "./amount.js";
import { list, named, slug, text, texts, type Json } from "./named-schema.js";
import { namedThingSchema, type ThingsOfPlan } from "./named-thing.js";

const foods = (description: string) => list(namedThingSchema, description);

export const allergenStatementSchema = named(
  "AllergenStatement",
  'Allergens, as far as the foods\' own data say. Unknown is never "free from": read the labels of what you buy, and follow your local rules for declaring allergens.',
  z.object({
    asked: text("Region asked for. Null: none.").nullable(),
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
        name: text("As it must be declared."),
        presence: z
          .enum(["CONTAINS", "MAY_CONTAIN", "DOES_NOT_CONTAIN", "UNKNOWN"])
          .describe("What is known, over all foods. Unknown spreads."),
        contains: foods("Foods that contain it."),
        mayContain: foods("Foods whose own data say they may contain it."),
        unknown: foods("Foods of which it is not known."),
        threshold: text("The amount from which it must be declared. Null: any.").nullable(),
      }),
      "One entry for every allergen on the lists.",
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
    fits: z.boolean().nullable().describe("Null: not known."),
    breaks: foods("Foods that break it."),
    unknown: foods("Foods of which it is not known."),
    claims: list(
      z.object({ law: text("The law."), threshold: text("The number it sets."), source: sourceSchema }),
      "What the law of the region ties the claim to.",
    ),
  }),
);

export const contentsJson = ({ allergens, diets }: Contents, things: ThingsOfPlan) => ({
  allergens: {
    asked: allergens.asked,
    reach: allergens.reach,
    lists: allergens.lists.map(({ id, region, law }) => ({ code: id, region, law })),
    findings: allergens.findings.map(({ code, name, presence, contains, mayContain, unknown, threshold }) => ({
      code,
      name,
      presence,
      contains: things.foods(contains),
      mayContain: things.foods(mayContain),
      unknown: things.foods(unknown),
      threshold,
    })),
    alsoContains: allergens.alsoContains.map(({ code }) => code),
  } satisfies Json<typeof allergenStatementSchema>,
  diets: diets.map(
    ({ diet, name, fits, breaks, unknown, claims }) =>
      ({
        code: diet,
        name,
        fits,
        breaks: things.foods(breaks),
        unknown: things.foods(unknown),
        claims: claims.map(({ law, threshold, source }) => ({ law, threshold, source })),
      }) satisfies Json<typeof dietSchema>,
  ),
});

export const cautionSchema = named(
  "Caution",
  "A caution, with where it comes from. It does not replace local food-safety codes or licensed practice.",
  z.object({
    code: text("Which."),
    text: text("The words, the same in every output."),
    source: sourceSchema,
    restsOn: list(sourceSchema, "The published rules it rests on."),
    about: list(namedThingSchema, "What it is about. Empty: everything."),
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
