import type { Path, Problem } from "../../domain/problem.js";
import type { ReadDocument } from "../../imports/documents/read-documents.js";

/** Problems of documents that are not this writer's to save: foods, which all share, plans of another publisher, and what another says of itself. */
export function ownershipProblems(
  documents: readonly ReadDocument[],
  publisher: string,
  mayFoods: boolean,
): readonly Problem[] {
  return documents.flatMap(({ document, file, place }): readonly Problem[] => {
    const at = (path: Path) => ({ path, place: { file, ...place(path, "VALUE") } });
    if (document.kind === "food" && !mayFoods) {
      return [{ code: "FOOD_IS_SHARED", food: document.slug, ...at(["kind"]) }];
    }
    if (document.kind === "plan" && document.publisher !== publisher) {
      return [{ code: "BAD_SHAPE", expected: publisher, got: document.publisher, ...at(["publisher"]) }];
    }
    if (document.kind === "publisher" && document.slug !== publisher) {
      return [{ code: "BAD_SHAPE", expected: publisher, got: document.slug, ...at(["slug"]) }];
    }
    return [];
  });
}
