import { failed, ok, type Result } from "../../domain/problem.js";
import type { ImportChange, RunChunk } from "../../persistence/imports/import-data.js";
import type { Caller } from "../access/actor.js";
import type { Data, Deps, DraftDocument } from "../deps.js";
import type { NewText } from "./draft-row.js";
import { freezeDraft } from "../plans/publish-draft.js";
import { RunLost, type RunningImport } from "../imports/running-import.js";
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

/** Who an import of a feed is, for drafts and the audit trail. */
export const importCaller = (feed: string): Caller => ({
  actor: { kind: "PROGRAM", name: `import ${feed}` },
  requestId: null,
});

/**
 * Saves one text as a draft, publishes a plan where the feed says so, and notes the run's progress with what was before: all of
 * it or nothing.
 */
export async function storeDraft(
  deps: Deps,
  { run, worker, feed, fileName, settings }: RunningImport,
  publisher: string,
  text: NewText,
  onlyPublish: boolean,
  chunk: RunChunk,
): Promise<Result<null>> {
  const caller = importCaller(feed.slug);
  const { draft, slug } = text;
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
      if (settings.publish && draft === "PLAN" && version !== null) {
        const [inForce] = await data.revisions.summaries([{ publisher, slug, revision: null }]);
        const frozen = await freezeDraft(inside, { publisher, slug, expectedVersion: version }, null, "KEPT");
        if (!frozen.ok) return failed(frozen.problems);
        const { created, revision } = frozen.value.value;
        if (created) {
          isPublished = true;
          subjects.push(...[frozen.value.subject].flat());
          const was: RevisionThen | null = inForce ? { revision: inForce.revision } : null;
          changes.push({ key: `REVISION ${slug}`, before: was, after: { revision } satisfies RevisionThen });
        }
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

async function draftNow(data: Data, publisher: string, { draft, slug }: NewText): Promise<DraftBefore | null> {
  const name = { publisher, slug };
  const [found] =
    draft === "PLAN"
      ? await data.plans.drafts([name])
      : draft === "FOOD"
        ? await data.publisherFoods.drafts([name])
        : draft === "PACKS"
          ? await data.publisherPacks.drafts([name])
          : await data.components.drafts([name]);
  if (!found) return null;
  const { version, updatedBy, value, document } = found;
  return { version, updatedBy, value, document };
}
