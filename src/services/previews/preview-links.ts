import { failed, ok, type Problem, type Result } from "../../domain/problem.js";
import { requireScope, type Actor, type Caller } from "../access/actor.js";
import { findOwner } from "../access/find-owner.js";
import { randomDigits, secretHash } from "../access/token-text.js";
import { readPageRequest, type WantedPage } from "../answers/page-request.js";
import type { Deps, Page, PreviewLink } from "../deps.js";
import { refuseBadCursor } from "../refuse-bad-cursor.js";
import { authorOf, write } from "../write.js";
import { namedPublisher } from "../access/find-publishers.js";
import { expiryOf } from "../access/find-token.js";

interface PreviewLinkInput {
  readonly publisher: string;
  /** Slug of the plan. */
  readonly slug: string;
  /** Left out: `usualDays`, or as long as the token that makes it. */
  readonly days?: number | null | undefined;
  readonly idempotencyKey?: string | null | undefined;
}

interface MadePreviewLink {
  readonly link: PreviewLink;
  /** Path of the page, with the secret. Shown this once; null: the answer is given again, and the secret is not known any more. */
  readonly path: string | null;
}

const usualDays = 7;
export const mostDays = 90;
/** The most links of one publisher that show something at the same time. */
const mostOpen = 200;
const day = 86_400_000;
/** 62 to the 40th is more than 238 bits. */
const secretLength = 40;

/** Where a link leads, below the address of the service. */
export const previewPath = ({ publisher, slug }: Pick<PreviewLink, "publisher" | "slug">, secret: string): string =>
  `/preview/${encodeURIComponent(publisher)}/${encodeURIComponent(slug)}/${encodeURIComponent(secret)}`;

/**
 * Makes a link that shows the draft of a plan, as readers would see it, to whoever has its address. It shows the newest version at each
 * moment, until it expires, is taken back, or the token that made it is revoked.
 */
export async function createPreviewLink(
  deps: Deps,
  caller: Caller,
  input: PreviewLinkInput,
): Promise<Result<MadePreviewLink>> {
  const { publisher, slug, idempotencyKey } = input;
  let path: string | null = null;
  const made = await write(
    deps,
    {
      ...{ caller, publisher, idempotencyKey },
      scope: "READ_DRAFTS",
      action: "CREATE_PREVIEW_LINK",
      input: { slug, days: input.days ?? null },
    },
    async ({ data, clock }) => {
      const now = clock();
      const latest = await expiryOf({ data }, caller.actor);
      const wrong = dayProblems(input.days ?? null, now, latest);
      if (wrong.length > 0) return failed(wrong);
      await data.publishers.lock(publisher);
      const [draft] = await data.plans.drafts([{ publisher, slug }]);
      if (!draft) return failed([{ code: "UNKNOWN_DRAFT", path: ["input", "slug"], draft: "PLAN", slug }]);
      const open = await data.previewLinks.countOpen(publisher, now);
      if (open >= mostOpen) {
        const what = "preview links that are open at the same time; take some back";
        return failed([{ code: "TOO_LARGE", path: ["input"], what, size: open + 1, limit: mostOpen }]);
      }
      const until = new Date(now.getTime() + (input.days ?? usualDays) * day);
      const secret = randomDigits(secretLength);
      const id = await data.previewLinks.create({
        ...{ publisher, slug },
        secretHash: secretHash(secret),
        createdAt: now,
        createdBy: authorOf(caller.actor),
        expiresAt: latest !== null && latest < until ? latest : until,
      });
      path = previewPath({ publisher, slug }, secret);
      return ok({ value: id, subject: { kind: "PREVIEW_LINK", name: id, before: null, after: null } });
    },
  );
  return made.ok ? ok({ link: await linkOf(deps, made.value), path }) : made;
}

async function linkOf({ data }: Deps, id: string): Promise<PreviewLink> {
  const link = await data.previewLinks.find(id);
  // Links are taken back, never deleted.
  if (link === null) throw new Error(`the preview link ${id} is gone`);
  return link;
}

/** Whoever may see drafts for a while must not go on seeing them through a link of their own making. */
function dayProblems(days: number | null, now: Date, latest: Date | null): readonly Problem[] {
  if (days === null) return [];
  const path = ["input", "days"];
  if (!Number.isInteger(days) || days < 1 || days > mostDays)
    return [{ code: "AMOUNT_OUT_OF_RANGE", path, value: String(days), min: 1, max: mostDays }];
  if (latest === null || now.getTime() + days * day <= latest.getTime()) return [];
  const expected = `a time up to ${latest.toISOString()}, when the token that makes it expires`;
  return [{ code: "BAD_SHAPE", path, expected, got: `${days} days` }];
}

interface RevokeInput {
  readonly id: string;
  readonly idempotencyKey?: string | null | undefined;
}

/** Takes a link back: from now on its address says so. */
export async function revokePreviewLink(deps: Deps, caller: Caller, input: RevokeInput): Promise<Result<PreviewLink>> {
  const { id, idempotencyKey } = input;
  const find = async () => (await deps.data.previewLinks.find(id))?.publisher ?? null;
  const publisher = await findOwner(caller.actor, "READ_DRAFTS", find);
  const done = await write(
    deps,
    { caller, scope: "READ_DRAFTS", publisher, action: "REVOKE_PREVIEW_LINK", idempotencyKey, input: { id } },
    async ({ data, clock }) => {
      const found = await data.previewLinks.find(id);
      // Of another publisher: the same as none at all.
      if (found === null || found.publisher !== publisher)
        return failed([{ code: "UNKNOWN_PREVIEW_LINK", path: ["input", "id"], link: id }]);
      await data.previewLinks.revoke(id, clock());
      return ok({ value: id, subject: { kind: "PREVIEW_LINK", name: id, before: null, after: null } });
    },
  );
  return done.ok ? ok(await linkOf(deps, done.value)) : done;
}

/** A page of a publisher's links, newest first, those that have ended too; never their secrets. @throws NotAllowed */
export async function listPreviewLinks(
  { data }: Deps,
  actor: Actor,
  wanted: { readonly publisher: string; readonly page: WantedPage },
): Promise<Result<Page<PreviewLink>>> {
  const { publisher } = wanted;
  requireScope(actor, "READ_DRAFTS", publisher);
  const request = readPageRequest(wanted.page);
  if (!request.ok) return request;
  const known = await namedPublisher({ data }, publisher);
  if (!known.ok) return known;
  return refuseBadCursor(request.value, () => data.previewLinks.page(publisher, request.value));
}
