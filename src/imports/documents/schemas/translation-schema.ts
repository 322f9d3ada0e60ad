import { z } from "zod";
import { translationSlug } from "../../../domain/model/translation.js";
import {
  byFoodSchema,
  documentLimits,
  listSchema,
  localeSchema,
  nameSchema,
  schemaAddress,
  slugSchema,
  textSchema,
} from "./scalar-schemas.js";
import { textKeys } from "./writing-schema.js";

/** As many entries as a list may have. */
const few = <Map extends z.ZodType<object>>(map: Map) =>
  map.refine((entries) => Object.keys(entries).length <= documentLimits.entries, {
    params: { expected: `at most ${documentLimits.entries} entries` },
  });

const mapOf = <Key extends z.core.$ZodRecordKey, Value extends z.ZodType>(key: Key, value: Value) =>
  few(z.record(key, value));

const stepsSchema = mapOf(nameSchema, textSchema).meta({ description: "texts of steps, by the names of the steps" });

const swapsSchema = mapOf(
  nameSchema,
  few(byFoodSchema(z.strictObject({ note: textSchema.optional(), steps: stepsSchema.optional() }))),
).meta({ description: "notes and steps of swaps, by the name of the line and the food that stands in" });

const made = { steps: stepsSchema.optional(), swaps: swapsSchema.optional() } as const;

const shown = { title: textSchema.optional(), ...textKeys, alt: textSchema.optional() } as const;

const titles = { description: "texts of meals, by their slugs" };

/** The texts of a plan or a component in another language. */
export const translationSchema = z
  .strictObject({
    $schema: schemaAddress,
    kind: z.literal("translation"),
    plan: slugSchema.optional(),
    component: slugSchema.optional(),
    language: localeSchema,
    checked: nameSchema.optional(),
    ...shown,
    summary: textSchema.optional(),
    meals: mapOf(slugSchema, z.strictObject({ ...shown, ...made }))
      .meta(titles)
      .optional(),
    ...made,
    routes: mapOf(nameSchema, z.strictObject(made)).optional(),
    words: mapOf(textSchema, textSchema)
      .meta({ description: "a few words as they are written, and what they are in the language" })
      .optional(),
    "numbers-differ": listSchema(textSchema).default([]),
  })
  .superRefine(({ plan, component }, context) => {
    if ((plan === undefined) !== (component === undefined)) return;
    const got = plan === undefined ? "neither" : "both";
    context.addIssue({
      code: "custom",
      params: { expected: "`plan` or `component`, the one that it translates", got },
    });
  })
  .transform((document) => {
    const { plan, component, language } = document;
    const of =
      component === undefined
        ? { kind: "PLAN" as const, slug: plan ?? "" }
        : { kind: "COMPONENT" as const, slug: component };
    return { ...document, of, slug: translationSlug({ of, language }) };
  });

export type TranslationDocument = z.output<typeof translationSchema>;
