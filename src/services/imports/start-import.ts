import { failed, ok, type Problem, type Result } from "../../domain/problem.js";
import type { Actor, Caller } from "../access/actor.js";
import type { Data, Deps, Feed, RunKind } from "../deps.js";
import { feedSettingsSchema } from "./feeds/feed-settings.js";
import { findImport } from "./find-imports.js";
import { requirePublishing } from "../access/publish-right.js";
import type { FeedName } from "./feeds/save-feed.js";
import { authorName, write, type Written } from "../write.js";

interface StartInput extends FeedName {
  /** Id of a file that the feed has had; null: one is fetched from the feed's place, or the last that was handed in. */
  readonly file?: string | null | undefined;
  readonly dryRun?: boolean | null | undefined;
  /** Load although a limit is passed. */
  readonly force?: boolean | null | undefined;
  readonly idempotencyKey?: string | null | undefined;
}

export type QueuedImport = { readonly run: string };

/** Queues an import of a feed; some worker takes it up. Of one feed only one waits or goes on. @throws NotAllowed */
export async function startImport(deps: Deps, caller: Caller, input: StartInput): Promise<Result<QueuedImport>> {
  const { publisher, slug, file = null, dryRun, force, idempotencyKey } = input;
  const asked = { slug, file, dryRun: dryRun ?? false, force: force ?? false };
  return write(
    deps,
    { caller, scope: "IMPORT", publisher, action: "START_IMPORT", idempotencyKey, input: asked },
    async ({ data, clock }) => {
      const feed = await data.feeds.find(publisher, slug);
      if (feed === null) return failed([{ code: "UNKNOWN_FEED", path: ["input", "slug"], feed: slug }]);
      await requirePublishing(data, caller.actor, feed, clock());
      const chosen = await chooseFile(data, feed, file);
      if (!chosen.ok) return chosen;
      const kind = asked.dryRun ? "DRY_RUN" : "LOAD";
      return queued(data, caller.actor, feed, { kind, file: chosen.value, force: asked.force, undoes: null }, clock());
    },
  );
}

async function chooseFile(data: Data, feed: Feed, file: string | null): Promise<Result<string | null>> {
  if (file !== null) {
    const found = await data.importFiles.byId(file);
    return found?.feed === feed.id ? ok(found.id) : failed([{ code: "UNKNOWN_FILE", path: ["input", "file"], file }]);
  }
  if (feedSettingsSchema.parse(feed.settings).place.kind !== "UPLOAD") return ok(null);
  const last = await data.importFiles.newest(feed.id);
  if (last !== null) return ok(last.id);
  return failed([{ code: "BAD_SHAPE", path: ["input", "file"], expected: "a file handed in before", got: "none" }]);
}

interface Order {
  readonly kind: RunKind;
  readonly file: string | null;
  readonly force: boolean;
  readonly undoes: string | null;
}

/** The work of it, inside a transaction. */
export async function queued(
  data: Data,
  actor: Actor,
  feed: Feed,
  order: Order,
  at: Date,
): Promise<Result<Written<QueuedImport>>> {
  const askedBy = authorName(actor);
  const run = await data.importRuns.queue({ feed: feed.id, askedBy, ...order }, at);
  if (run === null) return failed([{ code: "IMPORT_GOING_ON", path: ["input"], feed: feed.slug }]);
  return ok({ value: { run }, subject: { kind: "IMPORT", name: run, before: null, after: null } });
}

interface RunInput {
  /** Id. */
  readonly run: string;
  readonly idempotencyKey?: string | null | undefined;
}

const unknownRun = (run: string): Problem => ({ code: "UNKNOWN_RUN", path: ["input", "run"], run });

/** Queues an undo of an import that loaded something. @throws NotAllowed */
export async function undoImport(deps: Deps, caller: Caller, input: RunInput): Promise<Result<QueuedImport>> {
  const found = await findImport(deps, caller.actor, input.run);
  if (found === null) return failed([unknownRun(input.run)]);
  const { run, feed } = found;
  return write(
    deps,
    {
      ...{ caller, scope: "IMPORT", publisher: feed.publisher, action: "START_IMPORT" },
      ...{ idempotencyKey: input.idempotencyKey, input: { undo: input.run } },
    },
    async ({ data, clock }) => {
      await requirePublishing(data, caller.actor, feed, clock(), run.id);
      if (run.kind !== "LOAD" || run.state !== "DONE") {
        const got = `${run.kind} that is ${run.state}`;
        return failed([{ code: "BAD_SHAPE", path: ["input", "run"], expected: "a LOAD that is DONE", got }]);
      }
      return queued(data, caller.actor, feed, { kind: "UNDO", file: null, force: false, undoes: run.id }, clock());
    },
  );
}

interface ReplayInput extends RunInput {
  readonly dryRun?: boolean | null | undefined;
  readonly force?: boolean | null | undefined;
}

/** Queues an import of the file of an earlier one, with the rules and foods of today. @throws NotAllowed */
export async function replayImport(deps: Deps, caller: Caller, input: ReplayInput): Promise<Result<QueuedImport>> {
  const found = await findImport(deps, caller.actor, input.run);
  if (found === null) return failed([unknownRun(input.run)]);
  const { run, feed } = found;
  if (run.file === null) {
    return failed([
      { code: "BAD_SHAPE", path: ["input", "run"], expected: "an import with a file that is kept", got: "one without" },
    ]);
  }
  return startImport(deps, caller, { publisher: feed.publisher, slug: feed.slug, ...input, file: run.file });
}

/** Stops an import that waits or goes on; what it loaded so far stays, and can be undone by importing the file before. @throws NotAllowed */
export async function cancelImport(deps: Deps, caller: Caller, input: RunInput): Promise<Result<QueuedImport>> {
  const found = await findImport(deps, caller.actor, input.run);
  if (found === null) return failed([unknownRun(input.run)]);
  const { run, feed } = found;
  return write(
    deps,
    {
      ...{ caller, scope: "IMPORT", publisher: feed.publisher, action: "CANCEL_IMPORT" },
      ...{ idempotencyKey: input.idempotencyKey, input: { run: run.id } },
    },
    async ({ data, clock }) => {
      if (!(await data.importRuns.cancel(run.id, clock()))) {
        return failed([{ code: "IMPORT_ENDED", path: ["input", "run"], run: run.id }]);
      }
      return ok({ value: { run: run.id }, subject: { kind: "IMPORT", name: run.id, before: null, after: null } });
    },
  );
}
