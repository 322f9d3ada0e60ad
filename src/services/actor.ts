/**
 * What a token may do, for its own publisher. `READ_DRAFTS` sees what is not published yet; `WRITE` saves drafts; `PUBLISH`
 * publishes, corrects and withdraws; `IMPORT` runs imports; `ADMIN` gives and takes tokens and webhooks and reads the audit
 * trail. No scope holds another.
 */
export const scopes = ["READ_DRAFTS", "WRITE", "PUBLISH", "IMPORT", "ADMIN"] as const;
export type Scope = (typeof scopes)[number];

/**
 * Who asks. `ANYONE` has shown no token. A token belongs to one publisher; one of the operator (`publisher` null) may act for
 * every publisher, within its scopes, and alone changes what all share: publishers and foods. `PROGRAM` is the service itself: its jobs,
 * its demo, and the command line on the database.
 */
export type Actor =
  | { readonly kind: "ANYONE" }
  | {
      readonly kind: "TOKEN";
      /** Id of the token's row, for the audit trail; never the secret. */
      readonly token: string;
      /** Slug. */
      readonly publisher: string | null;
      readonly scopes: readonly Scope[];
    }
  | { readonly kind: "PROGRAM"; readonly name: string };

export const anyone: Actor = { kind: "ANYONE" };

/** Whether the actor may use a scope on what a publisher owns; `publisher` null: on what all publishers share. */
export function mayUse(actor: Actor, scope: Scope, publisher: string | null): boolean {
  if (actor.kind === "PROGRAM") return true;
  if (actor.kind === "ANYONE") return false;
  return actor.scopes.includes(scope) && (actor.publisher === null || actor.publisher === publisher);
}
