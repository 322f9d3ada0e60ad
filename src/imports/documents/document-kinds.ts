import { z } from "zod";
import { componentSchema } from "./schemas/component-schema.js";
import { foodSchema } from "./schemas/food-schema.js";
import { packsSchema } from "./schemas/packs-schema.js";
import { planSchema } from "./schemas/plan-schema.js";
import { translationSchema } from "./schemas/translation-schema.js";
import { publisherSchema } from "./schemas/publisher-schema.js";

/** Every kind of document a writer can hand in. */
export const documentSchemas = {
  food: foodSchema,
  packs: packsSchema,
  component: componentSchema,
  plan: planSchema,
  publisher: publisherSchema,
  translation: translationSchema,
} as const;

export type DocumentKind = keyof typeof documentSchemas;
export type AnyDocument = z.output<(typeof documentSchemas)[DocumentKind]>;

export const documentKinds = Object.keys(documentSchemas) as readonly DocumentKind[];

/** JSON Schemas of what a writer may write, by kind: for completion in an editor. */
export const jsonSchemas = (): Readonly<Record<DocumentKind, z.core.JSONSchema.BaseSchema>> => ({
  food: jsonSchema("food"),
  packs: jsonSchema("packs"),
  component: jsonSchema("component"),
  plan: jsonSchema("plan"),
  publisher: jsonSchema("publisher"),
  translation: jsonSchema("translation"),
});

// What a check does beyond the shape (a known word, a fraction) has no JSON Schema; it is left open there.
const jsonSchema = (kind: DocumentKind): z.core.JSONSchema.BaseSchema => ({
  ...z.toJSONSchema(documentSchemas[kind], { io: "input", unrepresentable: "any" }),
  title: `Prepwright ${kind}`,
  ...(kind === "food" ? { anyOf: [asksFor("names", "aisle", "shopped-by"), asksFor("extends")] } : {}),
});

/** A food says these itself or builds on another. */
const asksFor = (...keys: readonly string[]): z.core.JSONSchema.BaseSchema => ({
  type: "object",
  properties: Object.fromEntries(keys.map((key) => [key, {}])),
  required: [...keys],
});
