import type { Deps, RevisionRef, RevisionSummary } from "../deps.js";
import { readStorable } from "../storable-text.js";

/** Several plans by name in one read, in the order asked for; null where there is none. */
export function findPlans(deps: Deps, refs: readonly RevisionRef[]): Promise<readonly (RevisionSummary | null)[]> {
  return readStorable(refs, ({ publisher, slug }) => [publisher, slug], deps.data.revisions.summaries);
}

/** The same by revision id. */
export function findPlansById(deps: Deps, ids: readonly string[]): Promise<readonly (RevisionSummary | null)[]> {
  return deps.data.revisions.summariesByIds(ids);
}
