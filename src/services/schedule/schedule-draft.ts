import type { Plan } from "../../domain/model/plan.js";
import { failed, ok, type Path, type Problem, type Result } from "../../domain/problem.js";
import type { Actor } from "../access/actor.js";
import type { Deps, ScheduledTime } from "../deps.js";
import { listsOfToday } from "../drafts/load-references.js";
import type { TextsToSave } from "../drafts/save-documents.js";
import { placesIn, unknownCodesIn, type GatheredPlan } from "../plans/gather-plan.js";
import { missingPlan } from "../plans/missing-plan.js";
import { checkForPublishing, frozenFrom } from "../plans/publish-plan.js";
import { isStorable } from "../storable-text.js";
import type { AuditSubject } from "../write.js";
import { addScheduled, inForceOf, readTime, roomProblem, type Added } from "./add-scheduled.js";

interface When {
  readonly time: ScheduledTime;
  readonly changeNote: string | null;
}

/**
 * Inside a transaction that locks the publisher: has a draft published at an hour as it is now, and withdrawn when its document says so.
 * Refused where it could not be published now.
 */
export async function scheduleGathered(
  deps: Deps,
  maker: Actor,
  gathered: GatheredPlan,
  { time, changeNote }: When,
  codes: TextsToSave["codes"],
): Promise<Result<GatheredScheduled>> {
  const { version, value: plan } = gathered.draft;
  const unknown = codes === "KEPT" ? [] : await unknownCodesIn(deps, gathered, await listsOfToday(deps, []));
  if (unknown.length > 0) return failed(unknown);
  const placed = async (problems: readonly Problem[]): Promise<Result<never>> =>
    failed(problems.map((await placesIn(deps, gathered)).problem));
  const frozen = await frozenFrom(deps, gathered.bundle);
  if (!frozen.ok) return placed(frozen.problems);
  const checked = await checkForPublishing(deps, frozen.value);
  if (!checked.ok) return placed(checked.problems);
  const { publisher, slug } = plan;
  const added = await addScheduled(deps, maker, time, {
    ...{ publisher, slug, version, changeNote },
    ...{ kind: "PUBLISH", reason: null, bundle: frozen.value },
  });
  if (!added.ok) return added;
  const end = await readEnding(deps, maker, plan);
  if (!end.ok) return placed(end.problems);
  if (end.value === null) return ok({ ...added.value, ending: [] });
  const missing = await notThereThen(deps, end.value, end.value.time, ["withdraw-at"]);
  if (missing !== null) return placed([missing]);
  const ending = await scheduleEnding(deps, maker, end.value);
  return ending.ok ? ok({ ...added.value, ending: ending.value }) : placed(ending.problems);
}

interface GatheredScheduled extends Added {
  /** For the audit trail: the withdrawal that its document asks for. */
  readonly ending: readonly AuditSubject[];
}

/**
 * When a plan is to be withdrawn by its document; null: it names no such hour. An hour that is over says nothing of a plan that was in print
 * before, and is a slip of the finger in one that was not. Whatever would keep it from being scheduled is found here, before anything is published.
 */
export async function readEnding(
  deps: Deps,
  maker: Actor,
  { publisher, slug, withdrawAt }: Plan,
  wasInForce = false,
): Promise<Result<Ending | null>> {
  if (withdrawAt === undefined) return ok(null);
  const time = await readTime(deps, maker, withdrawAt, ["withdraw-at"]);
  const isOver = !time.ok && time.problems.some((each) => each.code === "BAD_TIME" && each.why === "PAST");
  if (isOver && wasInForce) return ok(null);
  if (!time.ok) return time;
  const full = await roomProblem(deps.data, publisher, slug, "WITHDRAW");
  return full === null
    ? ok({ publisher, slug, reason: withdrawAt.reason, time: time.value })
    : failed([{ ...full, path: ["withdraw-at"] }]);
}

/** Inside a transaction, once the plan is published or waits to be. For the audit trail: what was not scheduled already. */
export async function scheduleEnding(
  deps: Deps,
  maker: Actor,
  { time, ...plan }: Ending,
): Promise<Result<readonly AuditSubject[]>> {
  const added = await addScheduled(deps, maker, time, withdrawalOf(plan));
  if (!added.ok) return added;
  const { id, isNew } = added.value;
  // As one that somebody asks for by itself.
  return ok(isNew ? [{ ...scheduledSubject(id, null), action: "SCHEDULE_PLAN" }] : []);
}

export const scheduledSubject = (id: string, after: number | null) =>
  ({ kind: "SCHEDULED", name: id, before: null, after }) as const satisfies AuditSubject;

interface Withdrawal {
  readonly publisher: string;
  readonly slug: string;
  readonly reason: string;
}

interface Ending extends Withdrawal {
  readonly time: ScheduledTime;
}

const withdrawalOf = ({ publisher, slug, reason }: Withdrawal) =>
  ({ publisher, slug, reason, kind: "WITHDRAW", version: null, changeNote: null, bundle: null }) as const;

/** Inside a transaction that locks the publisher: has a plan withdrawn at an hour at which it is published. */
export async function addWithdrawal(
  deps: Deps,
  maker: Actor,
  plan: Withdrawal,
  time: ScheduledTime,
): Promise<Result<Added>> {
  const missing = await notThereThen(deps, plan, time, ["input"]);
  return missing === null ? addScheduled(deps, maker, time, withdrawalOf(plan)) : failed([missing]);
}

/** A plan can be withdrawn that is published by then. */
async function notThereThen(
  deps: Deps,
  { publisher, slug }: Withdrawal,
  time: ScheduledTime,
  path: Path,
): Promise<Problem | null> {
  const ref = { publisher, slug, revision: null };
  if (!isStorable(slug))
    return { code: "UNKNOWN_PLAN", path: [...path, "slug"], publisher, plan: slug, revision: null };
  if ((await inForceOf(deps.data, publisher, slug)) !== null) return null;
  const published = (await deps.data.scheduled.waiting(publisher, slug)).find(({ kind }) => kind === "PUBLISH");
  if (published === undefined) return missingPlan(deps, ref, [...path, "slug"]);
  if (published.dueAt < time.dueAt) return null;
  const expected = `a time after ${published.localTime} in ${published.zone}, when the plan is published`;
  return { code: "BAD_SHAPE", path: [...path, "at"], expected, got: time.localTime };
}
