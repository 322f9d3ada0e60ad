import { z } from "zod";
import { failed, ok, type Result } from "../../domain/problem.js";
import { keysAt, type Shape } from "../../imports/documents/allowed-keys.js";
import { shapeProblems } from "../../imports/documents/schemas/shape-problems.js";

/** A value of that shape, or every place where it is another, each with what should stand there. */
export function readShape<Schema extends z.ZodType>(schema: Schema, value: unknown): Result<z.output<Schema>> {
  const read = schema.safeParse(value);
  if (read.success) return ok(read.data);
  const shape = z.toJSONSchema(schema, { io: "input" }) as Shape;
  return failed(shapeProblems(read.error.issues, value, (path) => keysAt(shape, path)).map(({ problem }) => problem));
}
