import { z } from "zod";
import { codeSchema } from "./code-schema.js";
import { imageSchema, licenceSchema } from "./image-schema.js";
import { linesSchema, stepsSchema } from "./line-schema.js";
import {
  currencySchema,
  hourSchema,
  listSchema,
  localeSchema,
  minutesSchema,
  nameSchema,
  regionSchema,
  schemaAddress,
  slugSchema,
  textSchema,
  wholeNumberSchema,
} from "./scalar-schemas.js";
import { planWordKeys, textKeys } from "./writing-schema.js";
import { measuredInSchema } from "./shared-schemas.js";

const timeSchema = {
  at: nameSchema.meta({ description: "date and time on the clock of the zone, such as 2026-12-24T06:00" }),
  zone: nameSchema.meta({ description: "IANA name of a time zone, such as Europe/Berlin" }),
};

const mealSchema = z.strictObject({
  slug: slugSchema,
  title: nameSchema,
  day: wholeNumberSchema(0, 60),
  at: hourSchema.optional(),
  serves: wholeNumberSchema(1, 10_000).optional(),
  lines: linesSchema,
  steps: stepsSchema,
  image: imageSchema.optional(),
  ...textKeys,
});

/** A plan: meals, their days, and the kitchen that the session assumes. */
export const planSchema = z.strictObject({
  $schema: schemaAddress,
  kind: z.literal("plan"),
  publisher: slugSchema,
  slug: slugSchema,
  title: nameSchema,
  summary: textSchema.nullable().default(null),
  locale: localeSchema,
  region: regionSchema.nullable().default(null),
  currency: currencySchema.nullable().default(null),
  "measured-in": measuredInSchema,
  serves: wholeNumberSchema(1, 10_000),
  meals: listSchema(mealSchema).min(1),
  kitchen: z
    .strictObject({
      cooks: wholeNumberSchema(1, 20).default(1),
      appliances: z.record(codeSchema("appliance"), wholeNumberSchema(0, 100)).default({}),
    })
    .default({ cooks: 1, appliances: {} }),
  "promised-time": minutesSchema.nullable().default(null),
  claims: listSchema(codeSchema("diet")).default([]),
  "publish-at": z.strictObject(timeSchema).optional(),
  "withdraw-at": z.strictObject({ ...timeSchema, reason: textSchema }).optional(),
  image: imageSchema.optional(),
  licence: licenceSchema.optional(),
  ...planWordKeys,
});

export type PlanDocument = z.output<typeof planSchema>;
export type MealDocument = z.output<typeof mealSchema>;
