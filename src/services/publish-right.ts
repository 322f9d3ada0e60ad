import { requireScope, mayUse, type Actor } from "./actor.js";
import type { AccessToken, Data, Feed } from "./deps.js";
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

const isOfOld = async (data: Data, actor: Actor, feed: Feed, now: Date): Promise<boolean> =>
  actor.kind === "TOKEN" && publishesOfOld((await data.accessTokens.find(actor.token))?.token, feed, now);

const publishesOfOld = (token: AccessToken | undefined, feed: Feed, now: Date): boolean =>
  token?.importPublishes === true && feed.importPublishes && now < importPublishesUntil;

/**
 * Whether an import that waited may publish what it loads: its feed may have begun to publish after it was asked for, by a token that could
 * not ask for that. @param askedBy id of a token, or the name of a program
 */
export async function askerPublishes(data: Data, askedBy: string, feed: Feed, now: Date): Promise<boolean> {
  const token = (await data.accessTokens.find(askedBy))?.token;
  return token === undefined || token.scopes.includes("PUBLISH") || publishesOfOld(token, feed, now);
}
