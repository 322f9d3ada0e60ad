import { z } from "zod";
import type { MeasureSystem } from "../../../domain/model/amount.js";
import type { StoragePlace } from "../../../domain/model/keeping.js";
import type { SourceKind } from "../../../domain/model/source.js";
import {
  daysSchema,
  listSchema,
  nameSchema,
  numberSchema,
  regionSchema,
  slugSchema,
  textSchema,
} from "./scalar-schemas.js";
import { wordSchema } from "./word-schema.js";

export const sourceKindWords = {
  PUBLISHED: "published",
  WRITER: "writer",
  COMMON_PRACTICE: "common practice",
  INVENTED: "invented",
} satisfies Record<SourceKind, string>;

export const placeWords = { FRIDGE: "fridge", FREEZER: "freezer", ROOM: "room" } satisfies Record<StoragePlace, string>;

export const purposeWords = { SAFETY: "safety", QUALITY: "quality" } as const;

export const measureSystemWords = {
  US_CUSTOMARY: "us customary",
  METRIC_CUP: "metric cup",
  AUSTRALIAN: "australian",
  UK_IMPERIAL: "uk imperial",
  METRIC: "metric",
} satisfies Record<MeasureSystem, string>;

/** A source written out. */
const wholeSource = z.strictObject({
  kind: wordSchema(sourceKindWords).default("PUBLISHED"),
  title: textSchema,
  section: textSchema.nullable().default(null),
});

/** At the head of a document: a short name for each source it leans on. A bare text is a published title. */
export const sourcesSchema = z.record(nameSchema, z.union([textSchema, wholeSource])).optional();

/** `sr28 / Weight file, NDB 11215`, `writer`, `common practice / …`, or a source written out. */
export const sourceSchema = z.union([textSchema, wholeSource]);

const keepingSchema = z.strictObject({
  place: wordSchema(placeWords),
  days: daysSchema,
  container: textSchema.nullable().default(null),
  condition: textSchema.nullable().default(null),
  purpose: wordSchema(purposeWords).optional(),
  region: regionSchema.optional(),
  source: sourceSchema.default("writer"),
});

/** A measure of its own: one clove, one stick, one tin. */
const ownMeasureSchema = z
  .strictObject({
    name: slugSchema,
    one: nameSchema.optional(),
    many: nameSchema.optional(),
    grams: numberSchema(0, 1_000_000).nullable().default(null),
    millilitres: numberSchema(0, 1_000_000).nullable().default(null),
    pieces: numberSchema(0, 1_000_000).nullable().default(null),
    source: sourceSchema,
  })
  .refine((measure) => measure.grams !== null || measure.millilitres !== null || measure.pieces !== null, {
    params: { expected: "grams, millilitres or pieces", got: "none of them" },
  });

/** Either the density itself, or the weight of a measure as a table prints it. */
const densitySchema = z
  .strictObject({
    form: textSchema.nullable().default(null),
    "grams-per-ml": numberSchema(0.001, 25).optional(),
    grams: numberSchema(0.001, 1_000_000).optional(),
    per: textSchema.optional(),
    source: sourceSchema,
  })
  .refine(
    (density) =>
      (density["grams-per-ml"] !== undefined) !== (density.grams !== undefined) &&
      (density.grams !== undefined) === (density.per !== undefined),
    { params: { expected: "grams-per-ml, or grams with per", got: "something else" } },
  );

export const keepingListSchema = listSchema(keepingSchema).default([]);
export const ownMeasuresSchema = listSchema(ownMeasureSchema).default([]);
export const densitiesSchema = listSchema(densitySchema).default([]);
export const measuredInSchema = wordSchema(measureSystemWords);

export type SourceWritten = z.output<typeof sourceSchema>;
export type SourcesWritten = z.output<typeof sourcesSchema>;
