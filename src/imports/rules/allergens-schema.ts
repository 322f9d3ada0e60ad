import { z } from "zod";
import { listSchema, slugSchema, textSchema } from "../documents/schemas/scalar-schemas.js";
import { sourceSchema } from "../documents/schemas/shared-schemas.js";
import { wordSchema } from "../documents/schemas/word-schema.js";
import { datedFields, ruleHead } from "./rule-texts.js";

const { region, "from-date": from, "to-date": to } = datedFields;

const breakSchema = z.strictObject({
  code: slugSchema,
  when: wordSchema({
    ALWAYS: "always",
    UNLESS_STATED: "unless stated",
    UNKNOWN_UNLESS_STATED: "unknown unless stated",
  }).default("ALWAYS"),
  region: region.nullable().default(null),
});

/** Allergen lists, diets and claims: seeds/rules/allergens.yaml. */
export const allergensSchema = z.strictObject({
  kind: z.literal("allergens"),
  ...ruleHead,
  lists: listSchema(
    z.strictObject({
      id: slugSchema,
      region,
      law: textSchema,
      "from-date": from,
      "to-date": to,
      entries: listSchema(
        z.strictObject({
          code: slugSchema,
          name: textSchema,
          includes: listSchema(slugSchema).min(1),
          threshold: textSchema.nullable().default(null),
          exempt: textSchema.nullable().default(null),
          source: sourceSchema,
        }),
      ),
    }),
  ),
  diets: listSchema(
    z.strictObject({
      code: slugSchema,
      name: textSchema,
      "settled-by": wordSchema({ ABSENCE: "absence", STATED: "statement" }),
      breaks: listSchema(breakSchema).min(1),
      implies: listSchema(slugSchema).optional(),
      source: sourceSchema,
    }),
  ),
  claims: listSchema(
    z.strictObject({
      id: slugSchema,
      diet: slugSchema,
      region,
      law: textSchema,
      threshold: textSchema,
      note: textSchema.nullable().default(null),
      source: sourceSchema,
    }),
  ).default([]),
});

export type AllergensDocument = z.output<typeof allergensSchema>;
