import { failed, ok, type Result } from "../../domain/problem.js";
import type { Deps, Publisher } from "../deps.js";

/** Publishers by slug, in the order asked for; null where there is none. */
export function findPublishers(deps: Deps, slugs: readonly string[]): Promise<readonly (Publisher | null)[]> {
  return deps.data.publishers.bySlugs(slugs);
}

/** The same by id. */
export function findPublishersById(deps: Deps, ids: readonly string[]): Promise<readonly (Publisher | null)[]> {
  return deps.data.publishers.byIds(ids);
}

/** The one that an input names as its `publisher`. */
export async function namedPublisher({ data }: Pick<Deps, "data">, slug: string): Promise<Result<Publisher>> {
  const [found] = await data.publishers.bySlugs([slug]);
  return found ? ok(found) : failed([{ code: "UNKNOWN_PUBLISHER", path: ["publisher"], publisher: slug }]);
}
