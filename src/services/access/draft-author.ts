import type { Actor } from "./actor.js";

/**
 * What a draft says about who saved it: the id of a publisher's own token, or the name of a program. Which of the operator's
 * tokens it was is the operator's business.
 */
export function draftAuthorOf(actor: Actor): string {
  if (actor.kind === "ANYONE") throw new Error("a write by nobody");
  if (actor.kind === "PROGRAM") return actor.name;
  return actor.publisher === null ? "operator" : actor.token;
}
