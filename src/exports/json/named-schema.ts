import { z } from "zod";

/**
 * Every shape that answers over REST, by the name it has in the OpenAPI document. A registry of our own: the shapes of
 * writers' documents have names too.
 */
export const namedSchemas = z.registry<{ readonly id: string }>();

/** Names a shape and says what it is. */
export function named<Schema extends z.ZodType>(id: string, description: string, schema: Schema): Schema {
  const described = schema.describe(description);
  namedSchemas.add(described, { id });
  return described;
}

type Frozen<T> = T extends readonly (infer Item)[]
  ? readonly Frozen<Item>[]
  : T extends object
    ? { readonly [Key in keyof T]: Frozen<T[Key]> }
    : T;

/** What a shape describes, as a value nobody changes. */
export type Json<Schema extends z.ZodType> = Frozen<z.output<Schema>>;

/** Text bounded in length, as every text here is. */
export const text = (description: string, max = 4_000) => z.string().max(max).describe(description);
export const slug = (description: string) => text(description, 2_000);
export const slugs = (description: string) => z.array(z.string().max(2_000)).max(20_000).describe(description);
export const texts = (description: string) => z.array(z.string().max(4_000)).max(20_000).describe(description);
export const list = <Item extends z.ZodType>(item: Item, description: string) =>
  z.array(item).max(20_000).describe(description);
export const count = (description: string) => z.number().int().min(0).describe(description);
/** An instant in UTC, ISO 8601. */
export const instant = (description: string) => z.string().max(40).meta({ format: "date-time", description });
/** A calendar day, ISO 8601. */
export const day = (description: string) => z.string().max(20).meta({ format: "date", description });
