import type { AccessToken, Author, Deps } from "../deps.js";
import type { Actor } from "./actor.js";

/** A token that the caller has shown or has just made or revoked, without its secret. */
export async function findToken({ data }: Pick<Deps, "data">, id: string): Promise<AccessToken> {
  const found = await data.accessTokens.find(id);
  // Tokens are revoked, never deleted.
  if (found === null) throw new Error(`the token ${id} is gone`);
  return found.token;
}

/** When the token expires that an actor shows; null: never. Whoever was given something for a while must not keep it by a thing of their own making. */
export const expiryOf = async (deps: Pick<Deps, "data">, actor: Actor): Promise<Date | null> =>
  actor.kind === "TOKEN" ? (await findToken(deps, actor.token)).expiresAt : null;

/** When the token was revoked by which somebody made something; null: it was not. */
export const revokedAtOf = async (deps: Pick<Deps, "data">, author: Author): Promise<Date | null> =>
  author.kind === "TOKEN" ? (await findToken(deps, author.token)).revokedAt : null;
