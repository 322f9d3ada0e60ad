/**
 * What a token may do, for its own publisher. `READ` sees what everybody sees, with points of its own; `READ_DRAFTS` sees what is not
 * published yet; `WRITE` saves drafts; `PUBLISH` publishes, corrects and withdraws; `IMPORT` runs imports; `WEBHOOKS` gives and takes
 * webhooks; `ADMIN` gives and takes tokens and webhooks and reads the audit trail. No scope holds another but that one.
 */
export const scopes = ["READ", "READ_DRAFTS", "WRITE", "PUBLISH", "IMPORT", "WEBHOOKS", "ADMIN"] as const;
export type Scope = (typeof scopes)[number];

export const isScope = (text: string): text is Scope => scopes.some((scope) => scope === text);

/**
 * Who asks. `ANYONE` has shown no token. A token belongs to one publisher; one of the operator (`publisher` null) may act for
 * every publisher, within its scopes, and alone changes what all share: publishers and foods. `PROGRAM` is the service itself: its jobs,
 * its demo, and the command line on the database.
 */
export type Actor =
  | { readonly kind: "ANYONE" }
  | {
      readonly kind: "TOKEN";
      /** Id of the token, for the audit trail; never the secret. */
      readonly token: string;
      /** Slug. */
      readonly publisher: string | null;
      readonly scopes: readonly Scope[];
      /** Its own limit. null or left out: that of the service. */
      readonly pointsPerMinute?: number | null;
    }
  | { readonly kind: "PROGRAM"; readonly name: string };

export const anyone: Actor = { kind: "ANYONE" };

/** Who asks, and in which request. A GraphQL context is one. */
export interface Caller {
  readonly actor: Actor;
  /** As in the log and in the header `x-request-id`; null outside of requests. */
  readonly requestId: string | null;
}

/** Whether the actor may use a scope on what a publisher owns; `publisher` null: on what all publishers share. */
export function mayUse(actor: Actor, scope: Scope, publisher: string | null): boolean {
  if (actor.kind === "PROGRAM") return true;
  if (actor.kind === "ANYONE") return false;
  // Tokens from before there was a scope for webhooks go on.
  const isGiven = actor.scopes.includes(scope) || (scope === "WEBHOOKS" && actor.scopes.includes("ADMIN"));
  return isGiven && (actor.publisher === null || actor.publisher === publisher);
}

/** Somebody who sees what everybody sees: without a token, or with one for that alone. */
export const isReader = (actor: Actor): boolean =>
  actor.kind === "ANYONE" || (actor.kind === "TOKEN" && actor.scopes.every((scope) => scope === "READ"));

/** The actor may not do this. Says nothing of what it asked for, so that nothing can be told from it. */
export class NotAllowed extends Error {
  override readonly name = "NotAllowed";

  constructor(
    /** UNAUTHENTICATED: no token was shown. FORBIDDEN: this one may not. */
    readonly code: "UNAUTHENTICATED" | "FORBIDDEN",
    scope: Scope,
  ) {
    super(
      code === "UNAUTHENTICATED"
        ? `This needs an access token with the scope ${scope}: send it as Authorization: Bearer and the token.`
        : `This access token may not do that: it needs the scope ${scope}, and to be the publisher's own or the operator's.`,
    );
  }
}

/** @throws NotAllowed */
export function requireScope(actor: Actor, scope: Scope, publisher: string | null): void {
  if (!mayUse(actor, scope, publisher)) {
    throw new NotAllowed(actor.kind === "ANYONE" ? "UNAUTHENTICATED" : "FORBIDDEN", scope);
  }
}
