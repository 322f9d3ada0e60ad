import { failed, ok, type Problem, type Result } from "../../domain/problem.js";
import type { Actor, Caller } from "../access/actor.js";
import type { Plan } from "../../domain/model/plan.js";
import type { Deps, OwnedSlug, RevisionSummary } from "../deps.js";
import { readEnding, scheduleEnding } from "../schedule/schedule-draft.js";
import { readScheduledTime } from "../schedule/read-scheduled-time.js";
import { listsOfToday } from "../drafts/load-references.js";
import { gatherPlan, placesIn, unknownCodesIn } from "./gather-plan.js";
import { checkForPublishing, frozenFrom, publishPlan } from "./publish-plan.js";
import type { TextsToSave } from "../drafts/save-documents.js";
import { write, type Written } from "../write.js";

export interface PublishInput {
  readonly publisher: string;
  readonly slug: string;
  /** Version of the plan's draft. */
  readonly expectedVersion: number;
  readonly idempotencyKey?: string | null | undefined;
}

export type PublishedDraft = {
  readonly publisher: string;
  readonly slug: string;
  readonly revision: number;
  /** false: the newest revision already said exactly this. */
  readonly created: boolean;
};

/**
 * Publishes a draft plan with its component drafts and the foods of today, as one frozen revision or not at all. It is
 * refused where the writer's check finds what stops publishing; problems have their places in the texts of the drafts.
 */
export async function publishDraft(deps: Deps, caller: Caller, input: PublishInput): Promise<Result<PublishedDraft>> {
  const { publisher, slug, expectedVersion, idempotencyKey } = input;
  return write(
    deps,
    { caller, scope: "PUBLISH", publisher, action: "PUBLISH_PLAN", idempotencyKey, input: { slug, expectedVersion } },
    (inside) => freezeDraft(inside, caller.actor, input, null, "REFUSED"),
  );
}

/**
 * What a draft says of its own hour. Before that nothing of it is published but by a schedule; an hour that is over says nothing of a plan that is in
 * print, and is a slip of the finger in one that is not.
 */
function tooEarly({ slug, publishAt }: Plan, inForce: RevisionSummary | null, now: Date): Problem | null {
  if (publishAt === undefined) return null;
  const read = readScheduledTime(publishAt, now, ["publish-at"]);
  if (read.ok) return { code: "PUBLISH_AT_LATER", path: ["publish-at", "at"], plan: slug, ...publishAt };
  return inForce === null ? (read.problems[0] ?? null) : null;
}

/** All that keeps the draft of a plan from being published at its hour, with places; none where there is no such draft. */
export async function problemsOfPublishing(deps: Deps, name: OwnedSlug): Promise<readonly Problem[]> {
  const gathered = await gatherPlan(deps.data, name);
  if (gathered === null) return [];
  const [inForce] = await deps.data.revisions.summaries([{ ...name, revision: null }]);
  const early = tooEarly(gathered.draft.value, inForce ?? null, deps.clock());
  const frozen = await frozenFrom(deps, gathered.bundle);
  const checked = frozen.ok ? await checkForPublishing(deps, frozen.value) : frozen;
  const problems = [
    ...(early === null || early.code === "PUBLISH_AT_LATER" ? [] : [early]),
    ...(checked.ok ? [] : checked.problems),
  ];
  return problems.length === 0 ? [] : problems.map((await placesIn(deps, gathered)).problem);
}

/** The work of it, inside a transaction. The plan is withdrawn when its document says so; `maker` answers for that. */
export async function freezeDraft(
  deps: Deps,
  maker: Actor,
  { publisher, slug, expectedVersion }: PublishInput,
  changeNote: string | null,
  codes: TextsToSave["codes"],
): Promise<Result<Written<PublishedDraft>>> {
  const { data } = deps;
  await data.publishers.lock(publisher);
  const gathered = await gatherPlan(data, { publisher, slug });
  if (gathered === null) return failed([{ code: "UNKNOWN_DRAFT", path: ["input", "slug"], draft: "PLAN", slug }]);
  const { version } = gathered.draft;
  if (version !== expectedVersion) {
    const path = ["input", "expectedVersion"];
    return failed([{ code: "STALE_DRAFT", path, draft: "PLAN", slug, expected: expectedVersion, actual: version }]);
  }
  const unknown = codes === "KEPT" ? [] : await unknownCodesIn(deps, gathered, await listsOfToday(deps, []));
  if (unknown.length > 0) return failed(unknown);
  const [before] = await data.revisions.summaries([{ publisher, slug, revision: null }]);
  const early = tooEarly(gathered.draft.value, before ?? null, deps.clock());
  if (early !== null) return failed([(await placesIn(deps, gathered)).problem(early)]);
  const placed = async (problems: readonly Problem[]): Promise<Result<never>> =>
    failed(problems.map((await placesIn(deps, gathered)).problem));
  const ending = await readEnding(deps, maker, gathered.draft.value, before !== undefined && before !== null);
  if (!ending.ok) return placed(ending.problems);
  const published = await publishPlan(deps, gathered.bundle, changeNote);
  if (!published.ok) return placed(published.problems);
  const ends = ending.value === null ? ok([]) : await scheduleEnding(deps, maker, ending.value);
  if (!ends.ok) return placed(ends.problems);
  const { summary, created } = published.value;
  return ok({
    value: { publisher, slug, revision: summary.revision, created },
    subject: [{ kind: "PLAN", name: slug, before: before?.revision ?? null, after: summary.revision }, ...ends.value],
  });
}
