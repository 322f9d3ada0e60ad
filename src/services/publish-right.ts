import { requireScope, mayUse, type Actor } from "./actor.js";
import type { Data, Feed } from "./deps.js";
import { feedSettingsSchema, isShared } from "./feed-settings.js";

/** Until then tokens from before 0.2.0 publish with IMPORT alone, through feeds that were saved before it. */
export const importPublishesUntil = new Date("2027-06-01T00:00:00Z");

/** Whether what is imported through a feed is published. */
export const publishes = ({ kind, settings }: Feed): boolean =>
  !isShared(kind) && feedSettingsSchema.parse(settings).publish;

/**
 * What goes through a feed that publishes is published, and its undo withdraws: that takes PUBLISH beside IMPORT. Whoever only reads the
 * feed, or stops an import, needs no more than IMPORT. @param undoes id of an import that is to be taken back @throws NotAllowed
 */
export async function requirePublishing(
  data: Data,
  actor: Actor,
  feed: Feed,
  now: Date,
  undoes: string | null = null,
): Promise<void> {
  if (mayUse(actor, "PUBLISH", feed.publisher)) return;
  if (!publishes(feed) && !(undoes !== null && (await hasPublished(data, undoes)))) return;
  if (await isOfOld(data, actor, feed, now)) return;
  requireScope(actor, "PUBLISH", feed.publisher);
}

/** The feed may have stopped publishing since. */
const hasPublished = async (data: Data, run: string): Promise<boolean> =>
  (await data.importRuns.changes(run)).some(({ key }) => key.startsWith("REVISION "));

async function isOfOld(data: Data, actor: Actor, feed: Feed, now: Date): Promise<boolean> {
  if (actor.kind !== "TOKEN" || !feed.importPublishes || now >= importPublishesUntil) return false;
  return (await data.accessTokens.find(actor.token))?.token.importPublishes === true;
}
