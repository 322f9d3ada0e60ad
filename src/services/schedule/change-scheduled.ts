import { failed, ok, type Problem, type Result } from "../../domain/problem.js";
import { requireScope, type Actor, type Caller } from "../access/actor.js";
import { findOwner } from "../access/find-owner.js";
import { namedPublisher } from "../access/find-publishers.js";
import { readPageRequest, type WantedPage } from "../answers/page-request.js";
import type { Deps, Page, ScheduledChange, ScheduledState } from "../deps.js";
import { refuseBadCursor } from "../refuse-bad-cursor.js";
import { write } from "../write.js";
import type { PlanTime } from "../../domain/model/plan.js";
import { readTime, scheduledOf } from "./add-scheduled.js";

interface CancelInput {
  readonly id: string;
  readonly idempotencyKey?: string | null | undefined;
}

type ChangeInput = CancelInput & PlanTime;

/** Has what waits done at another hour. What is published stays the version that it was scheduled with. */
export const changeScheduled = (deps: Deps, caller: Caller, input: ChangeInput): Promise<Result<ScheduledChange>> =>
  onWaiting(deps, caller, input, { at: input.at, zone: input.zone }, async (inside) => {
    const time = await readTime(inside, caller.actor, input);
    if (!time.ok) return time.problems;
    await inside.data.scheduled.move(input.id, time.value);
    return [];
  });

/** Has what waits not done at all. */
export const cancelScheduled = (deps: Deps, caller: Caller, input: CancelInput): Promise<Result<ScheduledChange>> =>
  onWaiting(deps, caller, input, {}, async ({ data, clock }) => {
    await data.scheduled.end(input.id, clock(), { state: "CANCELLED", because: "ASKED" });
    return [];
  });

async function onWaiting(
  deps: Deps,
  caller: Caller,
  { id, idempotencyKey }: CancelInput,
  asked: object,
  work: (inside: Deps) => Promise<readonly Problem[]>,
): Promise<Result<ScheduledChange>> {
  const find = async () => (await deps.data.scheduled.find(id))?.publisher ?? null;
  const publisher = await findOwner(caller.actor, "PUBLISH", find);
  const action = "at" in asked ? "CHANGE_SCHEDULED" : "CANCEL_SCHEDULED";
  const done = await write(
    deps,
    { caller, scope: "PUBLISH", publisher, action, idempotencyKey, input: { id, ...asked } },
    async (inside) => {
      const { data } = inside;
      const path = ["input", "id"];
      const found = await data.scheduled.find(id);
      // Of another publisher: the same as none at all.
      if (found === null || found.publisher !== publisher)
        return failed([{ code: "UNKNOWN_SCHEDULED", path, scheduled: id }]);
      await data.publishers.lock(found.publisher);
      const waiting = await data.scheduled.claim(id);
      if (waiting === null)
        return failed([{ code: "NOT_WAITING", path, scheduled: id, state: (await scheduledOf(inside, id)).state }]);
      const problems = await work(inside);
      if (problems.length > 0) return failed(problems);
      return ok({ value: id, subject: { kind: "SCHEDULED", name: id, before: null, after: waiting.version } });
    },
  );
  return done.ok ? ok(await scheduledOf(deps, done.value)) : done;
}

/** What of a publisher is to be published and withdrawn, and what became of it, the next first. @throws NotAllowed */
export async function listScheduled(
  { data }: Deps,
  actor: Actor,
  wanted: { readonly publisher: string; readonly states: readonly ScheduledState[]; readonly page: WantedPage },
): Promise<Result<Page<ScheduledChange>>> {
  const { publisher, states } = wanted;
  requireScope(actor, "READ_DRAFTS", publisher);
  const request = readPageRequest(wanted.page);
  if (!request.ok) return request;
  const known = await namedPublisher({ data }, publisher);
  if (!known.ok) return known;
  return refuseBadCursor(request.value, () => data.scheduled.page(publisher, states, request.value));
}
