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
import { addScheduled, inForceOf, readTime } from "./add-scheduled.js";

interface When {
  readonly time: ScheduledTime;
  readonly changeNote: string | null;
}

/**
 * Inside a transaction that locks the publisher: has a draft published at an hour as it is now, and withdrawn when its document says so.
 * Refused where it could not be published now. The id of what was scheduled.
 */
export async function scheduleGathered(
  deps: Deps,
  maker: Actor,
  gathered: GatheredPlan,
  { time, changeNote }: When,
  codes: TextsToSave["codes"],
): Promise<Result<string>> {
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
  const id = await addScheduled(deps, maker, time, {
    ...{ publisher, slug, version, changeNote },
    ...{ kind: "PUBLISH", reason: null, bundle: frozen.value },
  });
  if (!id.ok) return id;
  const ending = await scheduleEnding(deps, maker, plan);
  return ending.ok ? id : placed(ending.problems);
}

/**
 * Inside a transaction, once the plan is published or waits to be: has it withdrawn when its document says so. An hour that is over says nothing of a
 * plan that was in print before, and is a slip of the finger in one that was not. The id of what was scheduled; null: the document names no such hour.
 */
export async function scheduleEnding(
  deps: Deps,
  maker: Actor,
  { publisher, slug, withdrawAt }: Plan,
  wasInForce = false,
): Promise<Result<string | null>> {
  if (withdrawAt === undefined) return ok(null);
  const time = await readTime(deps, maker, withdrawAt, ["withdraw-at"]);
  const isOver = !time.ok && time.problems.some((each) => each.code === "BAD_TIME" && each.why === "PAST");
  if (isOver && wasInForce) return ok(null);
  if (!time.ok) return time;
  return addWithdrawal(deps, maker, { publisher, slug, reason: withdrawAt.reason }, time.value, ["withdraw-at"]);
}

interface Withdrawal {
  readonly publisher: string;
  readonly slug: string;
  readonly reason: string;
}

/** Inside a transaction that locks the publisher: has a plan withdrawn at an hour at which it is published. */
export async function addWithdrawal(
  deps: Deps,
  maker: Actor,
  plan: Withdrawal,
  time: ScheduledTime,
  path: Path = ["input"],
): Promise<Result<string>> {
  const missing = await notThereThen(deps, plan, time, path);
  if (missing !== null) return failed([missing]);
  const { publisher, slug, reason } = plan;
  return addScheduled(deps, maker, time, {
    ...{ publisher, slug, reason },
    ...{ kind: "WITHDRAW", version: null, changeNote: null, bundle: null },
  });
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
