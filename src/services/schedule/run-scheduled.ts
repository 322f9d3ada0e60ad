import type { PlanBundle } from "../../domain/model/plan.js";
import { failed, ok, type Problem, type Result } from "../../domain/problem.js";
import type { Caller } from "../access/actor.js";
import type { Deps, ScheduledChange } from "../deps.js";
import { findFoods } from "../foods/find-foods.js";
import { publishFrozen } from "../plans/publish-plan.js";
import { write, type Written } from "../write.js";
import { revokedAtOf } from "../access/find-token.js";

const caller: Caller = { actor: { kind: "PROGRAM", name: "plan schedule" }, requestId: null };

/** Taken up together. */
const batch = 50;

interface Counts {
  published: number;
  withdrawn: number;
  keptBack: number;
  cancelled: number;
}

type Outcome = keyof Counts | "nothing";

/**
 * Publishes and withdraws what is due, each in one transaction with what says that it is done: any number of workers may run this at the same time,
 * and be killed at any moment, and each is done once. What was missed while all were down is done by the first that runs again.
 */
export async function runScheduled(deps: Deps): Promise<Readonly<Counts>> {
  const counts: Counts = { published: 0, withdrawn: 0, keptBack: 0, cancelled: 0 };
  const tried = new Set<string>();
  const faults: unknown[] = [];
  for (;;) {
    const due = (await deps.data.scheduled.due(deps.clock(), batch + tried.size)).filter(({ id }) => !tried.has(id));
    if (due.length === 0) break;
    for (const change of due) {
      tried.add(change.id);
      try {
        const outcome = await runOne(deps, change);
        if (outcome !== "nothing") counts[outcome] += 1;
      } catch (error) {
        // The others are due as well. What waits still is tried again in a minute.
        deps.log.error({ err: error, scheduled: change.id }, "what was scheduled could not be done; it is tried again");
        faults.push(error);
      }
    }
  }
  if (faults.length > 0) throw faults[0];
  return counts;
}

async function runOne(deps: Deps, { id, publisher, slug, kind }: ScheduledChange): Promise<Outcome> {
  let outcome: Outcome = "nothing";
  const order = {
    caller,
    scope: "PUBLISH",
    publisher,
    idempotencyKey: null,
    input: null,
    action: kind === "PUBLISH" ? "PUBLISH_PLAN" : "WITHDRAW_PLAN",
  } as const;
  const done = await write(deps, order, async (inside) => {
    outcome = "nothing";
    const claimed = await claim(inside, id, publisher);
    if (claimed === null) return nothing;
    if ((await revokedAtOf(inside, claimed.createdBy)) !== null) {
      await inside.data.scheduled.end(id, inside.clock(), { state: "CANCELLED", because: "TOKEN_REVOKED" });
      outcome = "cancelled";
      return nothing;
    }
    const result = kind === "PUBLISH" ? await publish(inside, claimed) : await withdraw(inside, claimed);
    if (result.ok) outcome = kind === "PUBLISH" ? "published" : "withdrawn";
    return result;
  });
  if (done.ok) return outcome;
  // Nothing of the first try is left: this is a write of its own, and whoever comes between does the same.
  const problems = done.problems.map(factsOf);
  const kept = await write(deps, { ...order, action: "KEEP_BACK_PLAN" }, async (inside) => {
    outcome = "nothing";
    const claimed = await claim(inside, id, publisher);
    if (claimed === null) return nothing;
    await inside.data.scheduled.end(id, inside.clock(), { state: "KEPT_BACK", problems });
    outcome = "keptBack";
    const subject = { kind: "SCHEDULED", name: id, before: null, after: claimed.version } as const;
    return ok({ value: id, subject });
  });
  if (!kept.ok) throw new Error(`the scheduled change ${id} could not be kept back`);
  const codes = problems.map(({ code }) => code);
  deps.log.warn(
    { publisher, slug, scheduled: id, kind, problems: codes },
    "what was scheduled for a plan was kept back",
  );
  return outcome;
}

/** What a finding needs to be put into words with is no part of what is stored of it. */
const factsOf = (problem: Problem): Problem => {
  const wordy = new Set(["names", "degrees"]);
  return Object.fromEntries(Object.entries(problem).filter(([name]) => !wordy.has(name))) as unknown as Problem;
};

const nothing: Result<Written<string>> = ok({ value: "", subject: [] });

/** Of the publisher that is locked. null: another worker did it, or somebody cancelled or moved it. */
async function claim({ data, clock }: Deps, id: string, publisher: string): Promise<ScheduledChange | null> {
  await data.publishers.lock(publisher);
  const claimed = await data.scheduled.claim(id);
  return claimed !== null && claimed.dueAt <= clock() ? claimed : null;
}

async function publish(deps: Deps, change: ScheduledChange): Promise<Result<Written<string>>> {
  const { data, clock } = deps;
  const { id, publisher, slug } = change;
  const [before] = await data.revisions.summaries([{ publisher, slug, revision: null }]);
  if ((before?.id ?? null) !== change.inForce) return failed([changedSince(change)]);
  const stored = await data.scheduled.bundle(id);
  if (stored === null) throw new Error(`the scheduled publication ${id} has no document`);
  const published = await publishFrozen(deps, await withFoodsOfToday(deps, stored), change.changeNote);
  if (!published.ok) return published;
  const { revision } = published.value.summary;
  await data.scheduled.end(id, clock(), { state: "DONE", revision });
  return ok({
    value: id,
    subject: { kind: "PLAN", name: slug, before: before?.revision ?? null, after: revision },
  });
}

/** Somebody published, corrected or withdrew the plan meanwhile: what was scheduled may lack what that put right. */
const changedSince = ({ slug, createdAt }: ScheduledChange): Problem => ({
  code: "CHANGED_SINCE_SCHEDULED",
  path: [],
  plan: slug,
  at: createdAt.toISOString(),
});

/** The publisher's own foods stay as they were scheduled; those that all share are as they are known by now. */
async function withFoodsOfToday(deps: Deps, bundle: PlanBundle): Promise<PlanBundle> {
  const shared = bundle.foods.filter(({ owner }) => owner === undefined).map(({ slug }) => slug);
  const today = await findFoods(deps, shared);
  const bySlug = new Map(today.flatMap((food) => (food === null ? [] : [[food.slug, food] as const])));
  const foods = bundle.foods.flatMap((food) => (food.owner === undefined ? (bySlug.get(food.slug) ?? []) : food));
  return { ...bundle, foods };
}

async function withdraw(deps: Deps, change: ScheduledChange): Promise<Result<Written<string>>> {
  const { data, clock } = deps;
  const { id, publisher, slug, reason } = change;
  const [newest] = await data.revisions.summaries([{ publisher, slug, revision: null }]);
  if (!newest) return failed([{ code: "UNKNOWN_PLAN", path: [], publisher, plan: slug, revision: null }]);
  const { revision } = newest;
  if (!(await data.revisions.withdraw({ publisher, slug, revision }, clock(), reason, "NOTHING")))
    throw new Error(`revision ${newest.id} was in force and is not`);
  await data.scheduled.end(id, clock(), { state: "DONE", revision });
  return ok({ value: id, subject: { kind: "PLAN", name: slug, before: revision, after: null } });
}
