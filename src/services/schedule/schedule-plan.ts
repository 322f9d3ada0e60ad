import { failed, ok, type Result } from "../../domain/problem.js";
import type { Caller } from "../access/actor.js";
import type { Deps, ScheduledChange } from "../deps.js";
import { checkNote } from "../drafts/check/check-note.js";
import { gatherPlan } from "../plans/gather-plan.js";
import { isStorable } from "../storable-text.js";
import { write } from "../write.js";
import { readTime, scheduledOf } from "./add-scheduled.js";
import type { PlanTime } from "../../domain/model/plan.js";
import { addWithdrawal, scheduledSubject, scheduleGathered } from "./schedule-draft.js";

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
      const when = { time: time.value, changeNote };
      const made = await scheduleGathered(inside, caller.actor, gathered, when, "REFUSED");
      if (!made.ok) return made;
      const { id, ending } = made.value;
      return ok({ value: id, subject: [scheduledSubject(id, version), ...ending] });
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
      const added = await addWithdrawal(inside, caller.actor, input, time.value);
      return added.ok ? ok({ value: added.value.id, subject: scheduledSubject(added.value.id, null) }) : added;
    },
  );
  return made.ok ? ok(await scheduledOf(deps, made.value)) : made;
}
