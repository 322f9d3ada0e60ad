import { z } from "zod";
import { memoize } from "../../domain/memoize.js";
import { failed, ok, type Result } from "../../domain/problem.js";
import { keysAt, type Shape } from "../../imports/documents/allowed-keys.js";
import { shapeProblems } from "../../imports/documents/schemas/shape-problems.js";

interface BoundedShape extends Shape {
  readonly maxItems?: number;
}

const shapeOf = memoize((schema: z.ZodType) => z.toJSONSchema(schema, { io: "input" }) as BoundedShape);

/** A value of that shape, or every place where it is another, each with what should stand there. */
export function parseWithSchema<Schema extends z.ZodType>(schema: Schema, value: unknown): Result<z.output<Schema>> {
  const shape = shapeOf(schema);
  const read = schema.safeParse(withoutExcess(value, shape));
  if (read.success) return ok(read.data);
  return failed(shapeProblems(read.error.issues, value, (path) => keysAt(shape, path)).map(({ problem }) => problem));
}

/** Of lists that are too long no more than says so: each entry would be looked at before the length is. */
function withoutExcess(value: unknown, { maxItems = Infinity, items, properties }: BoundedShape): unknown {
  if (Array.isArray(value)) {
    const entries = value.slice(0, maxItems + 1) as readonly unknown[];
    return items === undefined ? entries : entries.map((entry) => withoutExcess(entry, items));
  }
  if (properties === undefined || typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, member]) => {
      const below = Object.hasOwn(properties, key) ? properties[key] : undefined;
      return [key, below === undefined ? member : withoutExcess(member, below)];
    }),
  );
}
