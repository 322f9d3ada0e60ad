import { requireScope, type Actor } from "../../access/actor.js";
import type { Deps, Feed } from "../../deps.js";

/** The feeds of a publisher, or (null) those of the operator, by slug. @throws NotAllowed */
export async function listFeeds({ data }: Deps, actor: Actor, publisher: string | null): Promise<readonly Feed[]> {
  requireScope(actor, "IMPORT", publisher);
  return data.feeds.all(publisher);
}

/** null: there is none. @throws NotAllowed */
export async function findFeed(
  { data }: Deps,
  actor: Actor,
  publisher: string | null,
  slug: string,
): Promise<Feed | null> {
  requireScope(actor, "IMPORT", publisher);
  return data.feeds.find(publisher, slug);
}
