import { failed, type Result } from "../../../domain/problem.js";
import type { Caller } from "../../access/actor.js";
import { mayUse, requireScope } from "../../access/actor.js";
import type { Deps } from "../../deps.js";
import { requirePublishing } from "../../access/publish-right.js";
import type { FeedName } from "../feeds/save-feed.js";
import { queued, type QueuedImport } from "../start-import.js";
import { authorName, write } from "../../write.js";
import { upTo } from "../../byte-stream.js";

/** The largest file that is taken, in bytes. */
export const largestUpload = 512 * 1024 * 1024;

interface ReceivedFile extends FeedName {
  /** What problems and reports call it. */
  readonly name: string;
  readonly bytes: AsyncIterable<Uint8Array>;
  readonly dryRun: boolean;
  readonly force: boolean;
}

/**
 * Stores a file of a feed as it comes in, in memory that does not grow with it, and queues its import. The same bytes as before are
 * the file from before.
 * @throws NotAllowed before a byte is read; FileTooLarge
 */
export async function receiveFile(deps: Deps, caller: Caller, file: ReceivedFile): Promise<Result<QueuedImport>> {
  const { publisher, slug, name, bytes, dryRun, force } = file;
  requireScope(caller.actor, "IMPORT", publisher);
  const feed = await deps.data.feeds.find(publisher, slug);
  if (feed === null) return failed([{ code: "UNKNOWN_FEED", path: ["feed"], feed: slug }]);
  // Also for a trial run: the schedule of a feed imports the last file that was handed in.
  await requirePublishing(deps.data, caller.actor, feed, deps.clock());
  const from = { by: authorName(caller.actor), countsMore: mayUse(caller.actor, "PUBLISH", publisher) };
  const stored = await deps.data.importFiles.put(feed.id, name, upTo(largestUpload, bytes), deps.clock(), from);
  if (stored.size === 0) {
    return failed([{ code: "BAD_SHAPE", path: ["body"], expected: "a file", got: "nothing" }]);
  }
  return write(
    deps,
    {
      ...{ caller, scope: "IMPORT", publisher, action: "RECEIVE_FILE", idempotencyKey: null },
      input: { slug, file: stored.id, dryRun, force },
    },
    ({ data, clock }) =>
      queued(
        data,
        caller.actor,
        feed,
        { kind: dryRun ? "DRY_RUN" : "LOAD", file: stored.id, force, undoes: null },
        clock(),
      ),
  );
}
