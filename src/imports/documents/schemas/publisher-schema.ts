import { z } from "zod";
import { imageSchema } from "./image-schema.js";
import {
  currencySchema,
  listSchema,
  localeSchema,
  regionSchema,
  schemaAddress,
  slugSchema,
  textSchema,
} from "./scalar-schemas.js";
import { webAddressOrNull } from "./writing-schema.js";

/** What a publisher says of itself. Its slug, its name and how much it may do are the operator's. */
export const publisherSchema = z.strictObject({
  $schema: schemaAddress,
  kind: z.literal("publisher"),
  slug: slugSchema,
  region: regionSchema.nullable().default(null),
  currency: currencySchema.nullable().default(null),
  languages: listSchema(localeSchema).default([]),
  description: textSchema.nullable().default(null),
  image: imageSchema.nullable().default(null),
  website: webAddressOrNull,
});

export type PublisherDocument = z.output<typeof publisherSchema>;
