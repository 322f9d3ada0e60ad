import { requireScope, type Actor, type Scope } from "./actor.js";

/**
 * The publisher among whose things an actor may look for an id. A publisher's token only ever looks among its own, so that
 * what others have is to it as if it did not exist; the operator finds everybody's.
 * @param find the owner of the id, or null
 * @throws NotAllowed
 */
export async function findOwner(
  actor: Actor,
  scope: Scope,
  find: () => Promise<string | null>,
): Promise<string | null> {
  const own = actor.kind === "TOKEN" ? actor.publisher : null;
  requireScope(actor, scope, own);
  return own ?? find();
}
