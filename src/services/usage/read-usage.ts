import { failed, ok, type Result } from "../../domain/problem.js";
import { requireScope, type Actor } from "../access/actor.js";
import { namedPublisher } from "../access/find-publishers.js";
import { readPageRequest, type WantedPage } from "../answers/page-request.js";
import type { AccessToken, Deps, Page, PlanRequests, TokenUsage } from "../deps.js";
import { missingPlan } from "../plans/missing-plan.js";
import { readStorable } from "../storable-text.js";
import { refuseBadCursor } from "../refuse-bad-cursor.js";

/** Days that usage is kept, so that a month stands beside the same one of the year before. */
const keptDays = 400;

/** The most days of one answer. */
const mostDays = 366;

const dayLength = 24 * 60 * 60 * 1000;

/** What the requests with a token came to, newest day first. Whoever may see the token may see it. */
export async function usageOfToken(
  { data }: Deps,
  { id }: AccessToken,
  days: number,
): Promise<Result<readonly TokenUsage[]>> {
  if (days >= 1 && days <= mostDays) return ok(await data.usage.ofToken(id, days));
  return failed([{ code: "BAD_SHAPE", path: ["days"], expected: `1 to ${String(mostDays)}`, got: String(days) }]);
}

interface WantedRequests {
  /** Slug. */
  readonly publisher: string;
  /** Slug; null: all of the publisher. */
  readonly plan: string | null;
  readonly page: WantedPage;
}

/** How often readers asked for a publisher's plans, newest day first. @throws NotAllowed */
export async function planRequests(
  deps: Deps,
  actor: Actor,
  { publisher, plan, page }: WantedRequests,
): Promise<Result<Page<PlanRequests>>> {
  requireScope(actor, "READ_DRAFTS", publisher);
  const request = readPageRequest(page);
  if (!request.ok) return request;
  const known = await namedPublisher(deps, publisher);
  if (!known.ok) return known;
  if (plan !== null) {
    const [found = null] = await readStorable(
      [plan],
      (slug) => [slug],
      (slugs) => deps.data.revisions.summaries(slugs.map((slug) => ({ publisher, slug, revision: null }))),
    );
    const missing =
      found === null ? await missingPlan(deps, { publisher, slug: plan, revision: null }, ["slug"]) : null;
    // Of a withdrawn one the counts stay.
    if (missing !== null && missing.code !== "WITHDRAWN") return failed([missing]);
  }
  return refuseBadCursor(request.value, () => deps.data.usage.plans(publisher, plan, request.value));
}

/** Forgets what is older than a year and a month. */
export async function forgetUsage({ data, clock }: Deps): Promise<{ readonly forgotten: number }> {
  const before = new Date(clock().getTime() - keptDays * dayLength);
  return { forgotten: await data.usage.forget(before.toISOString().slice(0, 10)) };
}
