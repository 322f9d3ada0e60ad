import type { Image } from "../../domain/model/image.js";
import type { PlanBundle } from "../../domain/model/plan.js";
import { ok, type Result } from "../../domain/problem.js";
import type { Deps, Page, RevisionSummary } from "../deps.js";
import { findPlans } from "./find-plans.js";
import { listPlans } from "./list-plans.js";
import { loadDocuments } from "../drafts/load-documents.js";
import type { WantedPage } from "../answers/page-request.js";

/** A plan as followers of a feed get it. */
export interface FollowedPlan {
  /** Its first revision, withdrawn or not: its id stays the same whatever is published later. */
  readonly first: RevisionSummary;
  /** Its newest revision in force. */
  readonly newest: RevisionSummary;
  readonly summary: string | null;
  readonly image: Image | null;
  /** In CommonMark. */
  readonly introduction: string | null;
  readonly tags: readonly string[];
}

/** A plan that was withdrawn as a whole. */
export interface WithdrawnPlan {
  /** As of `FollowedPlan`. */
  readonly first: RevisionSummary;
  /** The revision that was withdrawn last. */
  readonly last: RevisionSummary;
}

/** Withdrawn plans that a feed names: nobody who follows it reads more of them at once. */
const mostWithdrawn = 100;

/** Plans that a publisher took back as a whole, the last first. */
export async function listWithdrawn(deps: Deps, publisher: string): Promise<readonly WithdrawnPlan[]> {
  const last = await deps.data.revisions.withdrawnOf(publisher, mostWithdrawn);
  const firsts = await findPlans(
    deps,
    last.map(({ slug }) => ({ publisher, slug, revision: 1 })),
  );
  return last.flatMap((each, at) => {
    const first = firsts[at];
    return first ? [{ first, last: each }] : [];
  });
}

const feedWords = ({ plan }: PlanBundle): Pick<FollowedPlan, "summary" | "introduction" | "tags"> => ({
  summary: plan.summary,
  introduction: plan.introduction ?? null,
  tags: plan.tags ?? [],
});

/** A page of what a publisher has published, newest first. Problems: those of `listPlans`. */
export async function listFeed(deps: Deps, publisher: string, page: WantedPage): Promise<Result<Page<FollowedPlan>>> {
  const filter = { publisher, search: null, usesFood: null, usesComponent: null };
  const listed = await listPlans(deps, { filter, page });
  if (!listed.ok) return listed;
  const newest = listed.value.items.map(({ item }) => item);
  const [firsts, documents] = await Promise.all([
    findPlans(
      deps,
      newest.map(({ slug }) => ({ publisher, slug, revision: 1 })),
    ),
    loadDocuments(
      deps,
      newest.map(({ id }) => id),
    ),
  ]);
  const items = listed.value.items.map(({ cursor, item }, at) => {
    const [first, document] = [firsts[at], documents[at]];
    if (!first || !document) throw new Error(`revision ${item.id} has no first revision or no document`);
    return { cursor, item: { first, newest: item, image: document.plan.image ?? null, ...feedWords(document) } };
  });
  return ok({ ...listed.value, items });
}
