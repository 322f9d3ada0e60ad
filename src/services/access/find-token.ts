import type { AccessToken, Deps } from "../deps.js";

/** A token that the caller has shown or has just made or revoked, without its secret. */
export async function findToken({ data }: Deps, id: string): Promise<AccessToken> {
  const found = await data.accessTokens.find(id);
  // Tokens are revoked, never deleted.
  if (found === null) throw new Error(`the token ${id} is gone`);
  return found.token;
}
