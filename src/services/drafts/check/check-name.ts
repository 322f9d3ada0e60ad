import type { Path, Problem } from "../../../domain/problem.js";
import { documentLimits } from "../../../imports/documents/schemas/scalar-schemas.js";
import { isStorable } from "../../storable-text.js";

/** Problems of a name for people to read. */
export function checkName(name: string, path: Path): readonly Problem[] {
  const limit = documentLimits.words;
  if (name.length > limit) return [{ code: "TOO_LARGE", path, what: "characters", size: name.length, limit }];
  if (name.trim() === "") return [{ code: "BAD_SHAPE", path, expected: "a name", got: "nothing" }];
  return isStorable(name) ? [] : [{ code: "BAD_SHAPE", path, expected: "text", got: "a NUL or half a character" }];
}
