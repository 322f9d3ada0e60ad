import { ok, type Result } from "../../domain/problem.js";
import { requireScope, type Actor, type Scope } from "./actor.js";
import type { AuditAction, SubjectKind } from "./audit-actions.js";
import { refuseBadCursor } from "../refuse-bad-cursor.js";
import type { AccessToken, AuditRecord, Deps, Page, PageRequest, Webhook } from "../deps.js";
import { readPageRequest, type WantedPage } from "../answers/page-request.js";
import { namedPublisher } from "./find-publishers.js";

interface WantedList {
  /** Slug; null: the actor's own, and for the operator all. */
  readonly publisher: string | null;
  readonly page: WantedPage;
}

/** A page of tokens, newest first, without their secrets. @throws NotAllowed */
export const listTokens = (deps: Deps, actor: Actor, wanted: WantedList): Promise<Result<Page<AccessToken>>> =>
  adminPage(deps, actor, wanted, deps.data.accessTokens.page);

/** A page of webhooks, newest first, without their secrets. @throws NotAllowed */
export const listWebhooks = (deps: Deps, actor: Actor, wanted: WantedList): Promise<Result<Page<Webhook>>> =>
  adminPage(deps, actor, wanted, deps.data.webhooks.page, "WEBHOOKS");

/** An entry of the audit trail as one actor may see it. */
export interface AuditEntry extends Omit<
  AuditRecord,
  "author" | "tokenName" | "tokenPublisher" | "action" | "subjectKind"
> {
  readonly action: AuditAction;
  readonly subjectKind: SubjectKind;
  readonly by: {
    readonly kind: "TOKEN" | "OPERATOR" | "PROGRAM";
    /** Both null: the token is none of the actor's. */
    readonly token: string | null;
    readonly name: string | null;
  };
}

/** A page of the audit trail, newest first. What the operator calls its tokens is not shown to others. @throws NotAllowed */
export async function readAuditTrail(deps: Deps, actor: Actor, wanted: WantedList): Promise<Result<Page<AuditEntry>>> {
  const page = await adminPage(deps, actor, wanted, deps.data.auditTrail.page);
  if (!page.ok) return page;
  const seesAll = actor.kind === "PROGRAM" || (actor.kind === "TOKEN" && actor.publisher === null);
  const items = page.value.items.map(({ cursor, item }) => ({ cursor, item: entryOf(item, seesAll) }));
  return ok({ ...page.value, items });
}

function entryOf(record: AuditRecord, seesAll: boolean): AuditEntry {
  const { author, tokenName, tokenPublisher, ...rest } = record;
  // Only write.ts adds entries, and in these words.
  const words = { action: rest.action as AuditAction, subjectKind: rest.subjectKind as SubjectKind };
  if (author.kind === "PROGRAM") return { ...rest, ...words, by: { kind: "PROGRAM", token: null, name: author.name } };
  if (tokenPublisher !== null)
    return { ...rest, ...words, by: { kind: "TOKEN", token: author.token, name: tokenName } };
  const shown = seesAll ? { token: author.token, name: tokenName } : { token: null, name: null };
  return { ...rest, ...words, by: { kind: "OPERATOR", ...shown } };
}

async function adminPage<T>(
  { data }: Deps,
  actor: Actor,
  wanted: WantedList,
  read: (publisher: string | null, request: PageRequest) => Promise<Page<T>>,
  scope: Scope = "ADMIN",
): Promise<Result<Page<T>>> {
  const publisher = wanted.publisher ?? (actor.kind === "TOKEN" ? actor.publisher : null);
  requireScope(actor, scope, publisher);
  const request = readPageRequest(wanted.page);
  if (!request.ok) return request;
  if (publisher !== null) {
    const known = await namedPublisher({ data }, publisher);
    if (!known.ok) return known;
  }
  return refuseBadCursor(request.value, () => read(publisher, request.value));
}
