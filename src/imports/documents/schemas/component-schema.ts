import { z } from "zod";
import type { Route } from "../../../domain/model/component.js";
import { codeSchema } from "./code-schema.js";
import { imageSchema } from "./image-schema.js";
import { linesSchema, stepsSchema } from "./line-schema.js";
import { amountSchema, listSchema, localeSchema, nameSchema, schemaAddress, slugSchema } from "./scalar-schemas.js";
import {
  densitiesSchema,
  keepingListSchema,
  measuredInSchema,
  ownMeasuresSchema,
  sourceSchema,
  sourcesSchema,
} from "./shared-schemas.js";
import { wordKeys } from "./writing-schema.js";
import { wordSchema } from "./word-schema.js";

export const routeKindWords = { MAKE: "make", BUY: "buy" } satisfies Record<Route["kind"], string>;
const batchWords = { ANY: "any size", WHOLE: "whole" } as const;

const batchSchema = z.union([
  z.strictObject({
    "at-least": amountSchema.default("0"),
    "at-most": amountSchema.nullable().default(null),
    "in-steps-of": amountSchema.nullable().default(null),
  }),
  wordSchema(batchWords),
]);

const routeSchema = z.strictObject({
  name: nameSchema,
  kind: wordSchema(routeKindWords),
  lines: linesSchema,
  steps: stepsSchema,
  "keeps-as": codeSchema("keeping-class").nullable().default(null),
  keeping: keepingListSchema,
});

/** A component: something made ahead. */
export const componentSchema = z.strictObject({
  $schema: schemaAddress,
  kind: z.literal("component"),
  slug: slugSchema,
  title: nameSchema,
  locale: localeSchema.default("en"),
  "measured-in": measuredInSchema.default("METRIC"),
  sources: sourcesSchema,
  lines: linesSchema,
  steps: stepsSchema,
  yield: z.strictObject({ amount: amountSchema, source: sourceSchema.default("writer") }),
  batches: batchSchema.default("ANY"),
  densities: densitiesSchema,
  measures: ownMeasuresSchema,
  "keeps-as": codeSchema("keeping-class").nullable().default(null),
  keeping: keepingListSchema,
  routes: listSchema(routeSchema).default([]),
  cautions: listSchema(codeSchema("caution")).default([]),
  image: imageSchema.optional(),
  ...wordKeys,
});

export type ComponentDocument = z.output<typeof componentSchema>;
export type BatchesWritten = z.output<typeof batchSchema>;
export type RouteDocument = z.output<typeof routeSchema>;
