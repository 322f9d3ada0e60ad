// @ts-nocheck
import { failed, ok, type Path, type Result } from "../domain/problem.js";

/** A country or a part of one, in capitals; null where none was given. */
export function readRegion(given: string | null | undefined, path: Path): Result<string | null> {
  if (given === null || given === undefined) return ok(null);
  const upper = given.toUpperCase();
  if (/^[A-Z]{2}(-[A-Z0-9]{1,3})?$/.test(upper)) return ok(upper);
  const what = "an ISO 3166 code, such as GB or US-WA";
  return failed([{ code: "BAD_HOUSEHOLD", path, what, value: given.slice(0, 60) }]);
}
