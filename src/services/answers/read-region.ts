import { regionCode, regionInstead } from "../../domain/model/region-codes.js";
import { failed, ok, type Path, type Result } from "../../domain/problem.js";

/** A country or a part of one, in capitals; null where none was given. Problems: BAD_HOUSEHOLD with the nearest codes. */
export function readRegion(given: string | null | undefined, path: Path): Result<string | null> {
  if (given === null || given === undefined) return ok(null);
  const code = regionCode(given);
  return code === null
    ? failed([{ code: "BAD_HOUSEHOLD", path, what: regionInstead(given), value: given.slice(0, 60) }])
    : ok(code);
}
