import { timingSafeEqual } from "node:crypto";
import { anyone, isScope, type Actor } from "./actor.js";
import type { AccessToken, Deps } from "../deps.js";
import { readTokenText, secretHash } from "./token-text.js";

/** Who asks; or, in words for the caller, why the token that was shown is not taken. */
type Authenticated =
  | { readonly ok: true; readonly actor: Actor }
  /** `lookedUp`: it took the database to find out. */
  | { readonly ok: false; readonly message: string; readonly lookedUp: boolean };

/** A use is noted at most so often, in milliseconds. */
const noteEvery = 60_000;

const malformed = (message: string): Authenticated => ({ ok: false, message, lookedUp: false });
const refused = (message: string): Authenticated => ({ ok: false, message, lookedUp: true });

const unknown = refused("There is no such access token. Check that it was copied whole and is from this service.");

/**
 * Reads the `Authorization` header of a request. Without one, anyone asks. A token that is not taken is refused rather than
 * forgotten: who shows one means to be somebody. It is looked up each time, so a revoked one is refused from then on, by
 * every process.
 */
export async function authenticate(deps: Deps, header: string | undefined): Promise<Authenticated> {
  if (header === undefined) return { ok: true, actor: anyone };
  const text = /^Bearer +(\S+) *$/i.exec(header)?.[1];
  if (text === undefined) {
    return malformed("The Authorization header must be: Bearer, a space, and an access token.");
  }
  const parts = readTokenText(text);
  if (parts === null) {
    return malformed("This is not an access token of this service, or it was not copied whole: its checksum is wrong.");
  }
  const found = await deps.data.accessTokens.find(parts.id);
  if (found === null || !sameHash(found.secretHash, secretHash(parts.secret))) return unknown;
  const { token } = found;
  const now = deps.clock();
  if (token.revokedAt !== null) return refused("This access token was revoked. Ask for a new one.");
  if (token.expiresAt !== null && token.expiresAt <= now) {
    return refused(`This access token expired at ${token.expiresAt.toISOString()}. Ask for a new one.`);
  }
  await noteUse(deps, token, now);
  return { ok: true, actor: actorOf(token) };
}

const sameHash = (a: string, b: string): boolean =>
  a.length === b.length && timingSafeEqual(Buffer.from(a), Buffer.from(b));

async function noteUse({ data }: Deps, { id, lastUsedAt }: AccessToken, now: Date): Promise<void> {
  const unlessSince = new Date(now.getTime() - noteEvery);
  if (lastUsedAt === null || lastUsedAt < unlessSince) await data.accessTokens.noteUse(id, now, unlessSince);
}

/** A scope that this version does not know, given by a newer one, is no right here. */
const actorOf = ({ id, publisher, scopes, pointsPerMinute }: AccessToken): Actor => ({
  kind: "TOKEN",
  token: id,
  publisher,
  scopes: scopes.filter(isScope),
  pointsPerMinute,
});
