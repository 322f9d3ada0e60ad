import type { Path, Problem } from "../../domain/problem.js";
import type { Actor } from "../access/actor.js";
import type { Data } from "../deps.js";
import { isShared, ownFoods, sharedFoods } from "../foods/find-foods-of.js";
import type { ReadDocument } from "../../imports/documents/read-documents.js";

/**
 * Problems of documents that are not this writer's to save: plans of another publisher, and what another says of itself; and of
 * foods with the slug of one that all share, which may be another food.
 *
 * @param taken slugs of foods that all share
 */
export function ownershipProblems(
  documents: readonly ReadDocument[],
  publisher: string,
  taken: ReadonlySet<string>,
): readonly Problem[] {
  return documents.flatMap(({ document, file, place }): readonly Problem[] => {
    const at = (path: Path) => ({ path, place: { file, ...place(path, "VALUE") } });
    if (document.kind === "food" && taken.has(document.slug) && document.extends === null) {
      return [{ code: "FOOD_IS_SHARED", food: document.slug, ...at(["slug"]) }];
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

/**
 * Slugs of foods among the documents that would be a publisher's own and that all publishers share already. What the publisher
 * saved before the others had it stays its own.
 */
export async function takenSlugs(
  data: Data,
  actor: Actor,
  publisher: string,
  documents: readonly ReadDocument[],
): Promise<ReadonlySet<string>> {
  const slugs = documents.flatMap(({ document }) =>
    document.kind === "food" && document.extends === null && !isShared(actor, document) ? [document.slug] : [],
  );
  if (slugs.length === 0) return new Set();
  const shared = await sharedFoods(data, slugs);
  const own = await ownFoods(data, publisher, slugs);
  return new Set(slugs.filter((slug, at) => shared.has(slug) && (own[at] ?? null) === null));
}
