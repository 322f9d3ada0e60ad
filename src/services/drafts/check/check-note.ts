import type { Path, Problem } from "../../../domain/problem.js";
import { documentLimits } from "../../../imports/documents/schemas/scalar-schemas.js";
import { isStorable } from "../../storable-text.js";

/** Problems of a note for readers: a sentence or a few. */
export function checkNote(note: string, path: Path): readonly Problem[] {
  const limit = documentLimits.text;
  if (note.length > limit) return [{ code: "TOO_LARGE", path, what: "characters", size: note.length, limit }];
  if (note.trim() === "") return [{ code: "BAD_SHAPE", path, expected: "a sentence for readers", got: "nothing" }];
  return isStorable(note) ? [] : [{ code: "BAD_SHAPE", path, expected: "text", got: "a NUL or half a character" }];
}
