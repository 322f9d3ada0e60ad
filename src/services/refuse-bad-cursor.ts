import { failed, ok, type Result } from "../domain/problem.js";
import { BadCursor } from "../persistence/errors.js";
import type { PageRequest } from "./deps.js";

/** Runs a paged read; a cursor that this service never gave out becomes a problem instead of a fault. */
export async function refuseBadCursor<T>(request: PageRequest, read: () => Promise<T>): Promise<Result<T>> {
  try {
    return ok(await read());
  } catch (error) {
    if (!(error instanceof BadCursor)) throw error;
    const name = request.after !== null ? "after" : "before";
    return failed([
      { code: "BAD_SHAPE", path: [name], expected: "a cursor from a page of this same list", got: "something else" },
    ]);
  }
}
