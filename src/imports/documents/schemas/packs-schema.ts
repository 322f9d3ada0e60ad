import { z } from "zod";
import { foodSlug } from "../../../domain/model/open-table-slug.js";
import { packSchema } from "./food-schema.js";
import { listSchema, localeSchema, schemaAddress, slugSchema } from "./scalar-schemas.js";
import { measuredInSchema, sourcesSchema } from "./shared-schemas.js";

/** Packs and prices that a publisher adds to a food: its own, or one that all share. */
export const packsSchema = z.strictObject({
  $schema: schemaAddress,
  kind: z.literal("packs"),
  slug: z
    .string()
    .transform(foodSlug)
    .pipe(slugSchema)
    .meta({ description: "slug of the food, or usda and its number in the open food table, such as usda 11233" }),
  locale: localeSchema.default("en"),
  "measured-in": measuredInSchema.default("METRIC"),
  sources: sourcesSchema,
  packs: listSchema(packSchema).min(1),
});

export type PacksDocument = z.output<typeof packsSchema>;
