import type { Deps, Feed } from "../../deps.js";
import { lastTick } from "./crontab.js";
import { draftAuthorOf } from "../../access/draft-author.js";

/** How long after its time an import is still started, in milliseconds: the service may have been down. */
const patience = 60 * 60 * 1000;

/** By how much clocks of several workers may differ, in milliseconds. */
const skew = 60_000;

const scheduler = { kind: "PROGRAM", name: "feed schedule" } as const;

/** Queues an import of every feed whose time has come since it was last imported. Counts them. */
export async function startDueImports({ data, clock, log }: Deps): Promise<{ readonly started: number }> {
  const now = clock();
  let started = 0;
  for (const feed of await data.feeds.all()) {
    const due = dueSince(feed, now);
    // A run from the time to come was made while a clock was wrong; it keeps nothing from being started today.
    const soon = new Date(now.getTime() + skew);
    if (due === null || (await data.importRuns.newestBetween(feed.id, due, soon)) !== null) continue;
    const order = { feed: feed.id, kind: "LOAD", force: false, undoes: null } as const;
    const file = hasPlace(feed) ? null : ((await data.importFiles.newest(feed.id))?.id ?? null);
    const run = await data.importRuns.queue({ ...order, file, askedBy: draftAuthorOf(scheduler) }, now);
    if (run === null) log.warn({ feed: feed.slug }, "a feed is due, but its last import is still running");
    else started += 1;
  }
  return { started };
}

const hasPlace = ({ settings }: Feed): boolean =>
  (settings as { readonly place?: { readonly kind?: string } }).place?.kind !== "UPLOAD";

/** null: it is not due. */
function dueSince({ cron, zone, enabled }: Feed, now: Date): Date | null {
  if (!enabled || cron === null) return null;
  const tick = lastTick(cron, zone, now);
  return now.getTime() - tick.getTime() < patience ? tick : null;
}
