import type { PlanTime } from "../../domain/model/plan.js";
import { failed, ok, type Path, type Problem, type Result } from "../../domain/problem.js";
import { documentOf } from "../../persistence/plans/frozen-document.js";
import { canonicalJson } from "../../persistence/sql/canonical-json.js";
import type { Actor } from "../access/actor.js";
import { expiryOf } from "../access/find-token.js";
import type { Data, Deps, RevisionSummary, ScheduledChange, ScheduledTime } from "../deps.js";
import { authorOf } from "../write.js";
import { readScheduledTime } from "./read-scheduled-time.js";

/** The most that one publisher may have waiting. */
const mostWaiting = 500;

/** Where there is no such revision: null. */
export async function inForceOf(data: Data, publisher: string, slug: string): Promise<RevisionSummary | null> {
  const [found] = await data.revisions.summaries([{ publisher, slug, revision: null }]);
  return found ?? null;
}

type Wanted = Omit<
  Parameters<Data["scheduled"]["add"]>[0],
  keyof ScheduledTime | "inForce" | "createdAt" | "createdBy"
>;

/** `isNew` false: the very same waited already. */
export interface Added {
  readonly id: string;
  readonly isNew: boolean;
}

export async function addScheduled(
  { data, clock }: Deps,
  actor: Actor,
  time: ScheduledTime,
  wanted: Wanted,
): Promise<Result<Added>> {
  const { publisher, slug, kind } = wanted;
  const now = clock();
  const inForce = (await inForceOf(data, publisher, slug))?.id ?? null;
  const before = await waitingAs(data, wanted);
  for (const other of before)
    if (await isSame(data, other, actor, { ...time, inForce }, wanted)) return ok({ id: other.id, isNew: false });
  const full = await roomProblem(data, publisher, slug, kind);
  if (full !== null) return failed([full]);
  for (const other of before) await data.scheduled.end(other.id, now, { state: "CANCELLED", because: "REPLACED" });
  const id = await data.scheduled.add({ ...wanted, ...time, inForce, createdAt: now, createdBy: authorOf(actor) });
  return ok({ id, isNew: true });
}

const waitingAs = async (data: Data, { publisher, slug, kind }: Pick<Wanted, "publisher" | "slug" | "kind">) =>
  (await data.scheduled.waiting(publisher, slug)).filter((other) => other.kind === kind);

/** null: there is room for one more, which takes the place of one of the same plan and kind. */
export async function roomProblem(
  data: Data,
  publisher: string,
  slug: string,
  kind: ScheduledChange["kind"],
): Promise<Problem | null> {
  const size = (await data.scheduled.countWaiting(publisher)) + 1;
  if (size <= mostWaiting || size - (await waitingAs(data, { publisher, slug, kind })).length <= mostWaiting)
    return null;
  return {
    code: "TOO_LARGE",
    path: ["input"],
    what: "publications and withdrawals that wait",
    size,
    limit: mostWaiting,
  };
}

/**
 * Whether the very same waits already, asked for by the same one: asked twice, it keeps its id and its place. A publication of before another
 * revision came into force would be kept back, so whoever asks now asks for another.
 */
async function isSame(
  data: Data,
  waiting: ScheduledChange,
  actor: Actor,
  { dueAt, zone, inForce }: ScheduledTime & Pick<ScheduledChange, "inForce">,
  { kind, version, changeNote, reason, bundle }: Wanted,
): Promise<boolean> {
  const isAsked =
    waiting.dueAt.getTime() === dueAt.getTime() &&
    waiting.zone === zone &&
    waiting.version === version &&
    waiting.changeNote === changeNote &&
    waiting.reason === reason &&
    (kind === "WITHDRAW" || waiting.inForce === inForce) &&
    canonicalJson(waiting.createdBy) === canonicalJson(authorOf(actor));
  if (!isAsked || bundle === null) return isAsked;
  const stored = await data.scheduled.bundle(waiting.id);
  return stored !== null && canonicalJson(stored) === canonicalJson(documentOf(bundle));
}

/** Whoever may publish for a while must not publish after that through an hour of their own choosing. */
export async function readTime(
  deps: Deps,
  actor: Actor,
  given: PlanTime,
  path: Path = ["input"],
): Promise<Result<ScheduledTime>> {
  const read = readScheduledTime(given, deps.clock(), path);
  if (!read.ok) return read;
  const expires = await expiryOf(deps, actor);
  if (expires === null || read.value.dueAt < expires) return read;
  const expected = `a time before ${expires.toISOString()}, when the token that asks for it expires`;
  return failed([{ code: "BAD_SHAPE", path: [...path, "at"], expected, got: read.value.dueAt.toISOString() }]);
}

/** One that was just written. */
export async function scheduledOf({ data }: Deps, id: string): Promise<ScheduledChange> {
  const found = await data.scheduled.find(id);
  // They end, and are never deleted.
  if (found === null) throw new Error(`the scheduled change ${id} is gone`);
  return found;
}
