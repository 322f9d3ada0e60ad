import { failed, ok, type Result } from "../../domain/problem.js";
import { namedPublisher } from "../access/find-publishers.js";
import { largestPage } from "../answers/page-request.js";
import type { Change, Deps } from "../deps.js";
import { signalsOf } from "./change-signals.js";
import { findPlans } from "./find-plans.js";
import { followChanges, newestPosition } from "./follow-changes.js";
import { listChanges } from "./list-changes.js";
import { listChangesWithPlans } from "./list-changes-with-plans.js";
import { missingPlan } from "./missing-plan.js";

interface FollowedPlan {
  readonly publisher: string;
  readonly slug: string;
  /** Position to begin after; null: now. */
  readonly after: string | null;
  readonly over: AbortSignal;
}

/** A change with its position in the list of changes. */
interface PlacedChange {
  readonly cursor: string;
  readonly change: Change;
}

/** Each change of a plan, also one that was withdrawn and may come back. Problems: there is no such publisher, plan or position. */
export async function followPlan(
  deps: Deps,
  { publisher, slug, after, over }: FollowedPlan,
): Promise<Result<AsyncGenerator<PlacedChange, void, undefined>>> {
  const named = await namedPublisher(deps, publisher);
  if (!named.ok) return named;
  const ref = { publisher, slug, revision: null };
  const [plan] = await findPlans(deps, [ref]);
  if (plan === undefined || plan === null) {
    const problem = await missingPlan(deps, ref, ["slug"]);
    if (problem.code !== "WITHDRAWN") return failed([problem]);
  }
  const position = after ?? (await newestPosition(deps));
  const looked = await listChanges(deps, { publisher, page: { first: 1, after: position } });
  return looked.ok ? ok(changesOfPlan(deps, { publisher, slug, after: position, over })) : looked;
}

async function* changesOfPlan(
  deps: Deps,
  { publisher, slug, after, over }: FollowedPlan & { readonly after: string },
): AsyncGenerator<PlacedChange, void, undefined> {
  const read = (position: string) =>
    signalsOf(deps).share(JSON.stringify(["changes of", publisher, position]), () =>
      readChanges(deps, publisher, position),
    );
  for await (const { items } of followChanges(deps, { publisher, after, read, over })) {
    for (const { cursor, item } of items) {
      if (item.plan.slug === slug) yield { cursor, change: item };
    }
  }
}

/** Changes of all plans of a publisher after a position, once for all who follow one of them. */
async function readChanges(deps: Deps, publisher: string, after: string) {
  const page = await listChangesWithPlans(deps, { publisher, page: { first: largestPage, after } });
  // Its position was good when this began.
  if (!page.ok) throw new Error(`changes cannot be followed: ${JSON.stringify(page.problems)}`);
  const { items, hasNext } = page.value;
  return { items, hasNext, end: items.at(-1)?.cursor ?? null };
}
