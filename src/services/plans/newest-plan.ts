import type { Deps, RevisionSummary } from "../deps.js";

/** The newest plan of all that are in force, or null: nothing was published yet. */
export async function newestPlan(deps: Deps): Promise<RevisionSummary | null> {
  const page = await deps.data.revisions.page(
    { publisher: null, search: null, usesFood: null, usesComponent: null },
    { first: 1, after: null, last: null, before: null },
  );
  return page.items[0]?.item ?? null;
}
