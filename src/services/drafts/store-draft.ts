import { failed, ok, type Problem, type Result } from "../../domain/problem.js";
import type { ImportChange, RunChunk } from "../../persistence/imports/import-data.js";
import type { Actor, Caller } from "../access/actor.js";
import { importActor } from "../access/publish-right.js";
import type { Data, Deps, DraftDocument, OwnedSlug } from "../deps.js";
import type { NewText, TakenVerdict } from "./draft-row.js";
import { gatherPlan, placesIn } from "../plans/gather-plan.js";
import { freezeDraft, problemsOfPublishing, type PublishedDraft, type PublishInput } from "../plans/publish-draft.js";
import { readTime } from "../schedule/add-scheduled.js";
import { scheduledSubject, scheduleGathered } from "../schedule/schedule-draft.js";
import { RunLost, type RunningImport } from "../imports/running-import.js";
import { findDraftOf } from "./draft-of-kind.js";
import { saveTexts } from "./save-documents.js";
import { write, type AuditSubject } from "../write.js";

/** A draft as an import found it, kept so that it can be put back exactly as it was. */
export interface DraftBefore {
  readonly version: number;
  readonly updatedBy: string | null;
  readonly value: unknown;
  readonly document: DraftDocument | null;
}

export interface DraftAfter {
  readonly version: number;
  readonly text: string;
}

/** Number of the revision in force. */
export interface RevisionThen {
  readonly revision: number;
}

/** Ids of what an import has done at an hour. */
export interface ScheduledThen {
  readonly ids: readonly string[];
}

/** Who an import of a feed is, for drafts and the audit trail. */
export const importCaller = (feed: string): Caller => ({
  actor: importActor(feed),
  requestId: null,
});

/**
 * Saves one text as a draft, publishes the plan that is to be published with it, and notes the run's progress with what was before: all of
 * it or nothing.
 */
export async function storeDraft(
  deps: Deps,
  { run, worker, feed, fileName, settings, maker }: RunningImport,
  publisher: string,
  text: NewText,
  { kind, publishes }: TakenVerdict,
  chunk: RunChunk,
): Promise<Result<null>> {
  const caller = importCaller(feed.slug);
  const { draft, slug } = text;
  const onlyPublish = kind === "PUBLISH";
  return write(
    deps,
    { caller, scope: "WRITE", publisher, action: "IMPORT_DRAFT", idempotencyKey: null, input: null },
    async (inside) => {
      const { data } = inside;
      await data.publishers.lock(publisher);
      const before = await draftNow(data, publisher, text);
      const subjects: AuditSubject[] = [];
      const changes: ImportChange[] = [];
      let version = before?.version ?? null;
      if (!onlyPublish) {
        const saved = await saveTexts(inside, caller.actor, {
          publisher,
          texts: [{ name: fileName, text: text.text }],
          expected: version === null ? [] : [{ kind: draft, slug, version }],
          path: ["document"],
          codes: "KEPT",
        });
        if (!saved.ok) return saved;
        subjects.push(...[saved.value.subject].flat());
        version = saved.value.value.drafts[0]?.version ?? null;
        const after: DraftAfter = { version: version ?? 1, text: text.text };
        changes.push({ key: `${draft} ${slug}`, before, after });
      }
      let isPublished = false;
      if (publishes !== null) {
        const published = await publishOf(inside, maker, { publisher, slug: publishes });
        if (!published.ok) return published;
        isPublished = published.value.changes.length > 0;
        subjects.push(...published.value.subjects);
        changes.push(...published.value.changes);
      } else if (settings.publish && draft === "PLAN" && !onlyPublish) {
        // Its translations follow, and it is published with the last of them; their numbers are still those of before.
        const stops = await problemsOfPublishing(inside, { publisher, slug });
        const own = stops.filter(({ code }) => code !== "TRANSLATION_NUMBERS");
        if (own.length > 0) return failed(own);
      }
      const isChange = !onlyPublish || isPublished;
      const isNew = !onlyPublish && before === null;
      const counted: RunChunk = {
        ...chunk,
        created: chunk.created + (isNew ? 1 : 0),
        changed: chunk.changed + (isChange && !isNew ? 1 : 0),
        unchanged: chunk.unchanged + (isChange ? 0 : 1),
        changes: [...chunk.changes, ...changes],
      };
      if (!(await data.importRuns.advance(run.id, worker, counted))) throw new RunLost(run.id);
      return ok({ value: null, subject: subjects });
    },
  );
}

interface PublishedOf {
  readonly subjects: readonly AuditSubject[];
  /** None: readers have it already. */
  readonly changes: readonly ImportChange[];
}

/** Publishes the draft of a plan as it is now, and what is to be noted of that. */
async function publishOf(deps: Deps, maker: Actor, name: OwnedSlug): Promise<Result<PublishedOf>> {
  const { data } = deps;
  const { publisher, slug } = name;
  const [version] = await data.drafts.versions([{ kind: "PLAN", publisher, slug }]);
  if (version === null || version === undefined)
    return failed([{ code: "UNKNOWN_DRAFT", path: ["plan"], draft: "PLAN", slug }]);
  const [inForce] = await data.revisions.summaries([{ publisher, slug, revision: null }]);
  const taken = await publishOrSchedule(deps, maker, { publisher, slug, expectedVersion: version });
  if (!taken.ok) return failed(taken.problems);
  const { published, subjects } = taken.value;
  const changes: ImportChange[] = [];
  if (published?.created === true) {
    const was: RevisionThen | null = inForce ? { revision: inForce.revision } : null;
    const { revision } = published;
    changes.push({ key: `REVISION ${slug}`, before: was, after: { revision } satisfies RevisionThen });
  }
  const ids = subjects.flatMap((each) => (each.kind === "SCHEDULED" ? each.name : []));
  if (ids.length > 0) changes.push({ key: `SCHEDULED ${slug}`, before: null, after: { ids } satisfies ScheduledThen });
  return ok({ subjects: subjects.filter(({ kind }) => kind !== "PLAN" || published?.created === true), changes });
}

interface Taken {
  /** null: it waits. */
  readonly published: PublishedDraft | null;
  readonly subjects: readonly AuditSubject[];
}

/** Publishes a draft, or has it published when its document says so. */
async function publishOrSchedule(deps: Deps, maker: Actor, input: PublishInput): Promise<Result<Taken>> {
  const frozen = await freezeDraft(deps, maker, input, null, "KEPT");
  if (frozen.ok) return ok({ published: frozen.value.value, subjects: [frozen.value.subject].flat() });
  if (!frozen.problems.some(({ code }) => code === "PUBLISH_AT_LATER")) return frozen;
  const gathered = await gatherPlan(deps.data, input);
  const publishAt = gathered?.draft.value.publishAt;
  if (gathered === null || publishAt === undefined) throw new Error(`the draft of ${input.slug} is gone`);
  const placed = async (problems: readonly Problem[]): Promise<Result<never>> =>
    failed(problems.map((await placesIn(deps, gathered)).problem));
  const time = await readTime(deps, maker, publishAt, ["publish-at"]);
  if (!time.ok) return placed(time.problems);
  const made = await scheduleGathered(deps, maker, gathered, { time: time.value, changeNote: null }, "KEPT");
  if (!made.ok) return made;
  const { id, isNew, ending } = made.value;
  const own = isNew ? [scheduledSubject(id, gathered.draft.version)] : [];
  return ok({ published: null, subjects: [...own, ...ending] });
}

async function draftNow(data: Data, publisher: string, { draft, slug }: NewText): Promise<DraftBefore | null> {
  const found = await findDraftOf(data, draft, { publisher, slug });
  if (found === null) return null;
  const { version, updatedBy, value, document } = found;
  return { version, updatedBy, value, document };
}
