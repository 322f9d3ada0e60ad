import { isScope, requireScope, mayUse, type Actor } from "./actor.js";
import type { AccessToken, Data, Feed, ImportFile } from "../deps.js";
import { feedSettingsSchema, isShared } from "../imports/feeds/feed-settings.js";

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
  (await data.importRuns.changes(run)).some(({ key }) => /^(?:REVISION|SCHEDULED) /.test(key));

const isOfOld = async (data: Data, actor: Actor, feed: Feed, now: Date): Promise<boolean> =>
  actor.kind === "TOKEN" && publishesOfOld((await data.accessTokens.find(actor.token))?.token, feed, now);

const publishesOfOld = (token: AccessToken | undefined, feed: Feed, now: Date): boolean =>
  token?.importPublishes === true && feed.importPublishes && now < importPublishesUntil;

/**
 * Whether an import publishes what it loads through a feed that publishes. Its feed may have begun to after a token asked that could not ask for
 * that; and a schedule, which is nobody, publishes what whoever handed the file in could.
 * @param askedBy id of a token, or the name of a program
 */
export async function importPublishes(
  data: Data,
  askedBy: string,
  { handedInBy }: ImportFile,
  feed: Feed,
  now: Date,
): Promise<boolean> {
  const asker = (await data.accessTokens.find(askedBy))?.token;
  if (asker !== undefined) return tokenPublishes(asker, feed, now);
  // Nobody wrote it down before 0.2.0, when whoever could hand in could publish.
  if (handedInBy === null) return feed.importPublishes && now < importPublishesUntil;
  const giver = (await data.accessTokens.find(handedInBy))?.token;
  return giver === undefined || tokenPublishes(giver, feed, now);
}

/**
 * Who answers for what an import has done later: a token, so that its end or its being taken back is the end of that too; else the feed.
 * @param askedBy id of a token, or the name of a program
 */
export async function importMaker(
  data: Data,
  askedBy: string,
  { handedInBy }: ImportFile,
  feed: string,
): Promise<Actor> {
  const asked = await data.accessTokens.find(askedBy);
  const found = asked ?? (handedInBy === null ? null : await data.accessTokens.find(handedInBy));
  if (found === null) return importActor(feed);
  const { id, publisher, scopes } = found.token;
  return { kind: "TOKEN", token: id, publisher, scopes: scopes.filter(isScope) };
}

/** Who an import of a feed is, for drafts and the audit trail. */
export const importActor = (feed: string): Actor => ({ kind: "PROGRAM", name: `import ${feed}` });

const tokenPublishes = (token: AccessToken, feed: Feed, now: Date): boolean =>
  token.scopes.includes("PUBLISH") || publishesOfOld(token, feed, now);
