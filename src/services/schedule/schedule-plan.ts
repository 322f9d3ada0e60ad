import { failed, ok, type Problem, type Result } from "../../domain/problem.js";
import type { Actor, Caller } from "../access/actor.js";
import type { Data, Deps, RevisionSummary, ScheduledChange, ScheduledTime } from "../deps.js";
import { checkNote } from "../drafts/check/check-note.js";
import { listsOfToday } from "../drafts/load-references.js";
import { gatherPlan, placesIn, unknownCodesIn } from "../plans/gather-plan.js";
import { missingPlan } from "../plans/missing-plan.js";
import { checkForPublishing, frozenFrom } from "../plans/publish-plan.js";
import { isStorable } from "../storable-text.js";
import { authorOf, write } from "../write.js";
import type { PlanTime } from "../../domain/model/plan.js";
import { readScheduledTime } from "./read-scheduled-time.js";

interface PublicationInput extends PlanTime {
  readonly publisher: string;
  readonly slug: string;
  /** Version of the plan's draft. */
  readonly expectedVersion: number;
  /** For readers of the revision before. */
  readonly changeNote?: string | null | undefined;
  readonly idempotencyKey?: string | null | undefined;
}

interface WithdrawalInput extends PlanTime {
  readonly publisher: string;
  readonly slug: string;
  /** Why, for readers. */
  readonly reason: string;
  readonly idempotencyKey?: string | null | undefined;
}

/** The most that one publisher may have waiting. */
const mostWaiting = 500;

/**
 * Has the draft of a plan published at an hour, in the version that it is now: with its components, own foods and pictures as they are, and
 * what all share as it will be then. It takes the place of a publication of the same plan that waits. Refused where it could not be published now.
 */
export async function schedulePublication(
  deps: Deps,
  caller: Caller,
  input: PublicationInput,
): Promise<Result<ScheduledChange>> {
  const { publisher, slug, expectedVersion, at, zone, idempotencyKey } = input;
  const changeNote = input.changeNote ?? null;
  const made = await write(
    deps,
    {
      ...{ caller, publisher, idempotencyKey },
      scope: "PUBLISH",
      action: "SCHEDULE_PLAN",
      input: { slug, expectedVersion, at, zone, changeNote },
    },
    async (inside) => {
      const { data } = inside;
      const time = await readTime(inside, caller.actor, input);
      if (!time.ok) return time;
      const wrong = changeNote === null ? [] : checkNote(changeNote, ["input", "changeNote"]);
      if (wrong.length > 0) return failed(wrong);
      await data.publishers.lock(publisher);
      const gathered = isStorable(slug) ? await gatherPlan(data, { publisher, slug }) : null;
      if (gathered === null) return failed([{ code: "UNKNOWN_DRAFT", path: ["input", "slug"], draft: "PLAN", slug }]);
      const { version } = gathered.draft;
      if (version !== expectedVersion) {
        const path = ["input", "expectedVersion"];
        return failed([{ code: "STALE_DRAFT", path, draft: "PLAN", slug, expected: expectedVersion, actual: version }]);
      }
      const unknown = await unknownCodesIn(inside, gathered, await listsOfToday(inside, []));
      if (unknown.length > 0) return failed(unknown);
      const frozen = await frozenFrom(inside, gathered.bundle);
      const checked = frozen.ok ? await checkForPublishing(inside, frozen.value) : frozen;
      if (!checked.ok || !frozen.ok) {
        const problems = checked.ok ? [] : checked.problems;
        return failed(problems.map((await placesIn(inside, gathered)).problem));
      }
      const id = await add(inside, caller.actor, time.value, {
        ...{ publisher, slug, version, changeNote },
        ...{ kind: "PUBLISH", reason: null, bundle: frozen.value },
      });
      return id.ok ? ok({ value: id.value, subject: subjectOf(id.value, version) }) : id;
    },
  );
  return made.ok ? ok(await scheduledOf(deps, made.value)) : made;
}

/** Has a plan withdrawn as a whole at an hour. It takes the place of a withdrawal of the same plan that waits. */
export async function scheduleWithdrawal(
  deps: Deps,
  caller: Caller,
  input: WithdrawalInput,
): Promise<Result<ScheduledChange>> {
  const { publisher, slug, reason, at, zone, idempotencyKey } = input;
  const made = await write(
    deps,
    {
      ...{ caller, publisher, idempotencyKey },
      scope: "PUBLISH",
      action: "SCHEDULE_PLAN",
      input: { slug, reason, at, zone },
    },
    async (inside) => {
      const { data } = inside;
      const time = await readTime(inside, caller.actor, input);
      if (!time.ok) return time;
      const wrong = checkNote(reason, ["input", "reason"]);
      if (wrong.length > 0) return failed(wrong);
      await data.publishers.lock(publisher);
      const missing = await notThereThen(inside, input, time.value);
      if (missing !== null) return failed([missing]);
      const id = await add(inside, caller.actor, time.value, {
        ...{ publisher, slug, reason },
        ...{ kind: "WITHDRAW", version: null, changeNote: null, bundle: null },
      });
      return id.ok ? ok({ value: id.value, subject: subjectOf(id.value, null) }) : id;
    },
  );
  return made.ok ? ok(await scheduledOf(deps, made.value)) : made;
}

/** A plan can be withdrawn that is published by then. */
async function notThereThen(
  deps: Deps,
  { publisher, slug }: WithdrawalInput,
  time: ScheduledTime,
): Promise<Problem | null> {
  const ref = { publisher, slug, revision: null };
  if (!isStorable(slug))
    return { code: "UNKNOWN_PLAN", path: ["input", "slug"], publisher, plan: slug, revision: null };
  if ((await inForceOf(deps.data, publisher, slug)) !== null) return null;
  const published = (await deps.data.scheduled.waiting(publisher, slug)).find(({ kind }) => kind === "PUBLISH");
  if (published === undefined) return missingPlan(deps, ref, ["input", "slug"]);
  if (published.dueAt < time.dueAt) return null;
  const expected = `a time after ${published.localTime} in ${published.zone}, when the plan is published`;
  return { code: "BAD_SHAPE", path: ["input", "at"], expected, got: time.localTime };
}

const subjectOf = (id: string, after: number | null) => ({ kind: "SCHEDULED", name: id, before: null, after }) as const;

/** Where there is no such revision: null. */
async function inForceOf(data: Data, publisher: string, slug: string): Promise<RevisionSummary | null> {
  const [found] = await data.revisions.summaries([{ publisher, slug, revision: null }]);
  return found ?? null;
}

type Wanted = Omit<
  Parameters<Data["scheduled"]["add"]>[0],
  keyof ScheduledTime | "inForce" | "createdAt" | "createdBy"
>;

async function add({ data, clock }: Deps, actor: Actor, time: ScheduledTime, wanted: Wanted): Promise<Result<string>> {
  const { publisher, slug, kind } = wanted;
  const now = clock();
  for (const other of await data.scheduled.waiting(publisher, slug))
    if (other.kind === kind) await data.scheduled.end(other.id, now, { state: "CANCELLED", because: "REPLACED" });
  const waiting = await data.scheduled.countWaiting(publisher);
  if (waiting >= mostWaiting) {
    const what = "publications and withdrawals that wait";
    return failed([{ code: "TOO_LARGE", path: ["input"], what, size: waiting + 1, limit: mostWaiting }]);
  }
  const inForce = (await inForceOf(data, publisher, slug))?.id ?? null;
  return ok(await data.scheduled.add({ ...wanted, ...time, inForce, createdAt: now, createdBy: authorOf(actor) }));
}

/** Whoever may publish for a while must not publish after that through an hour of their own choosing. */
export async function readTime({ data, clock }: Deps, actor: Actor, given: PlanTime): Promise<Result<ScheduledTime>> {
  const read = readScheduledTime(given, clock(), ["input"]);
  if (!read.ok || actor.kind !== "TOKEN") return read;
  const expires = (await data.accessTokens.find(actor.token))?.token.expiresAt ?? null;
  if (expires === null || read.value.dueAt < expires) return read;
  const expected = `a time before ${expires.toISOString()}, when the token that asks for it expires`;
  return failed([{ code: "BAD_SHAPE", path: ["input", "at"], expected, got: read.value.dueAt.toISOString() }]);
}

/** One that was just written. */
export async function scheduledOf({ data }: Deps, id: string): Promise<ScheduledChange> {
  const found = await data.scheduled.find(id);
  // They end, and are never deleted.
  if (found === null) throw new Error(`the scheduled change ${id} is gone`);
  return found;
}
