import { ok } from "../../../domain/problem.js";
import type { Feed, ImportChange, ImportRun, RunChunk } from "../../../persistence/imports/import-data.js";
import type { Data, Deps, DraftKind } from "../../deps.js";
import { saveDraftOf, type DraftValue } from "../../drafts/draft-of-kind.js";
import { freezeDraft } from "../../plans/publish-draft.js";
import { countsOf, noCounts, RunLost, type Loaded } from "../running-import.js";
import {
  importCaller,
  type DraftAfter,
  type DraftBefore,
  type RevisionThen,
  type ScheduledThen,
} from "../../drafts/store-draft.js";
import { write, type AuditSubject } from "../../write.js";

/** What readers are told of a revision that an import published and that is taken back. */
const undoneNote = "An import of this plan was taken back; this is the plan as it was before.";
const withdrawnNote = "The import that published this was taken back.";

/**
 * Takes back what an import of drafts did, one draft at a time, plans before the components they build on: a draft it made goes,
 * one it changed is as it was, one that somebody saved since stays. A revision it published is withdrawn, or followed by one
 * that says what the one before it said.
 */
export async function undoDrafts(
  deps: Deps,
  run: ImportRun,
  feed: Feed,
  undone: string,
  worker: string,
): Promise<Loaded> {
  const { publisher } = feed;
  if (publisher === null) throw new Error(`the feed ${feed.slug} of drafts has no publisher`);
  const changes = await deps.data.importRuns.changes(undone);
  const drafts = changes.filter(({ key }) => !isOfReaders(key));
  const later = new Map(changes.map((change) => [change.key, change]));
  const ofReaders = (slug: string) => ({
    revision: later.get(`REVISION ${slug}`) ?? null,
    scheduled: later.get(`SCHEDULED ${slug}`) ?? null,
  });
  // Plans sort behind components, and go first.
  for (const [at, change] of drafts.toReversed().entries()) {
    if (at + 1 <= run.lastLine) continue;
    const [, slug = ""] = change.key.split(" ");
    const moved = change.key.startsWith("PLAN ") ? ofReaders(slug) : { revision: null, scheduled: null };
    await undoOne(deps, { run, feed: feed.slug, publisher, worker, step: at + 1 }, { change, ...moved });
  }
  // Plans of which only what readers have moved, since a component did.
  const alone = new Set(changes.flatMap(({ key }) => (isOfReaders(key) ? (key.split(" ")[1] ?? []) : [])));
  for (const { key } of drafts) if (key.startsWith("PLAN ")) alone.delete(key.slice("PLAN ".length));
  for (const [at, slug] of [...alone].entries()) {
    const step = drafts.length + at + 1;
    if (step > run.lastLine)
      await undoOne(deps, { run, feed: feed.slug, publisher, worker, step }, { change: null, ...ofReaders(slug) });
  }
  const ended = await deps.data.importRuns.byId(run.id);
  if (ended === null) throw new RunLost(run.id);
  return ok(countsOf(ended));
}

const isOfReaders = (key: string): boolean => key.startsWith("REVISION ") || key.startsWith("SCHEDULED ");

/** What an import did of one draft, and of what readers have or will have of it. */
interface Done {
  readonly change: ImportChange | null;
  readonly revision: ImportChange | null;
  readonly scheduled: ImportChange | null;
}

interface Undoing {
  readonly run: ImportRun;
  readonly feed: string;
  readonly publisher: string;
  readonly worker: string;
  readonly step: number;
}

async function undoOne(
  deps: Deps,
  { run, feed, publisher, worker, step }: Undoing,
  { change, revision, scheduled }: Done,
): Promise<void> {
  const caller = importCaller(feed);
  const done = await write(
    deps,
    { caller, scope: "WRITE", publisher, action: "UNDO_IMPORT", idempotencyKey: null, input: null },
    async (inside) => {
      const { data } = inside;
      await data.publishers.lock(publisher);
      const subjects: AuditSubject[] = [];
      const isBack = change !== null && (await restore(data, publisher, change, `import ${feed}`, subjects));
      const isCancelled = scheduled !== null && (await cancel(inside, scheduled, subjects));
      const isRetold =
        revision !== null && (await retell(inside, { publisher, feed }, revision, isBack || change === null, subjects));
      const chunk: RunChunk = {
        ...{ ...noCounts, lastLine: step, quarantine: [], changes: [] },
        ...(isBack || isCancelled || isRetold ? { changed: 1 } : { unchanged: 1 }),
      };
      if (!(await data.importRuns.advance(run.id, worker, chunk))) throw new RunLost(run.id);
      return ok({ value: null, subject: subjects });
    },
  );
  if (!done.ok) throw new Error(`an undo was refused: ${JSON.stringify(done.problems)}`);
}

/** false: it is not as the import left it. */
async function restore(
  data: Data,
  publisher: string,
  change: ImportChange,
  by: string,
  subjects: AuditSubject[],
): Promise<boolean> {
  const [word, slug = ""] = change.key.split(" ");
  const isOther = word === "PLAN" || word === "FOOD" || word === "PACKS" || word === "TRANSLATION";
  const kind: DraftKind = isOther ? word : "COMPONENT";
  const after = change.after as DraftAfter;
  const before = change.before as DraftBefore | null;
  const [now] = await data.drafts.versions([{ kind, publisher, slug }]);
  if (now !== after.version) return false;
  const subject = { kind: `${kind}_DRAFT`, name: slug, before: now } as const;
  if (before === null) {
    await data.drafts.discard({ kind, publisher, slug }, now);
    subjects.push({ ...subject, after: null });
    return true;
  }
  // As it was, and not checked again: it was the publisher's own draft, and is theirs to mend.
  const writing = { document: before.document, by: before.updatedBy ?? by };
  const version = await saveDraftOf(data, publisher, { kind, value: before.value } as DraftValue, now, writing);
  subjects.push({ ...subject, after: version });
  return true;
}

/** Before the plan is told again, which may schedule anew. false: nothing of it waits any more. */
async function cancel({ data, clock }: Deps, change: ImportChange, subjects: AuditSubject[]): Promise<boolean> {
  const waiting = (await Promise.all((change.after as ScheduledThen).ids.map((id) => data.scheduled.claim(id)))).filter(
    (each) => each !== null,
  );
  for (const { id, version } of waiting) {
    await data.scheduled.end(id, clock(), { state: "CANCELLED", because: "ASKED" });
    subjects.push({ kind: "SCHEDULED", name: id, before: version, after: null });
  }
  return waiting.length > 0;
}

/** false: another revision is in force by now. */
async function retell(
  deps: Deps,
  { publisher, feed }: Pick<Undoing, "publisher" | "feed">,
  change: ImportChange,
  isDraftBack: boolean,
  subjects: AuditSubject[],
): Promise<boolean> {
  const { data, clock } = deps;
  const slug = change.key.slice("REVISION ".length);
  const { revision } = change.after as RevisionThen;
  const [inForce] = await data.revisions.summaries([{ publisher, slug, revision: null }]);
  if (inForce?.revision !== revision) return false;
  const [version] = await data.drafts.versions([{ kind: "PLAN", publisher, slug }]);
  if (change.before !== null && isDraftBack && version !== null && version !== undefined) {
    const frozen = await freezeDraft(
      deps,
      importCaller(feed).actor,
      { publisher, slug, expectedVersion: version },
      undoneNote,
      "KEPT",
    );
    if (frozen.ok && frozen.value.value.created) {
      subjects.push(...[frozen.value.subject].flat());
      return true;
    }
  }
  await data.revisions.withdraw({ publisher, slug, revision }, clock(), withdrawnNote);
  const before = change.before as RevisionThen | null;
  subjects.push({ kind: "PLAN", name: slug, before: revision, after: before?.revision ?? null });
  return true;
}
