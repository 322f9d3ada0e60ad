import type { Deps } from "./deps.js";
import { countsOf } from "./running-import.js";

const day = 24 * 60 * 60 * 1000;

/** Writes into the log what became of every import of the last day, and what waits to be mended. */
export async function reportImports({
  data,
  clock,
  log,
}: Deps): Promise<{ readonly imports: number; readonly toMend: number }> {
  const runs = await data.importRuns.endedSince(new Date(clock().getTime() - day));
  let toMend = 0;
  for (const run of runs) {
    const feed = await data.feeds.byId(run.feed);
    if (feed === null) continue;
    toMend += run.quarantined;
    const facts = { publisher: feed.publisher, feed: feed.slug, run: run.id, kind: run.kind, state: run.state };
    const say = run.state === "DONE" && run.quarantined === 0 ? log.info.bind(log) : log.warn.bind(log);
    say({ ...facts, ...countsOf(run), problems: run.problems.map(({ code }) => code) }, "what became of an import");
  }
  return { imports: runs.length, toMend };
}
