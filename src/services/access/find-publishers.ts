import type { Deps, Publisher } from "../deps.js";

/** Publishers by slug, in the order asked for; null where there is none. */
export function findPublishers(deps: Deps, slugs: readonly string[]): Promise<readonly (Publisher | null)[]> {
  return deps.data.publishers.bySlugs(slugs);
}

/** The same by id. */
export function findPublishersById(deps: Deps, ids: readonly string[]): Promise<readonly (Publisher | null)[]> {
  return deps.data.publishers.byIds(ids);
}
