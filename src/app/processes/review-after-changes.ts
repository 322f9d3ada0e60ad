import { noteFactSourcesJob, reviewRevisionsJob } from "../../jobs/jobs.js";
import type { Followed, FollowSignals, Signal } from "../../persistence/database/change-signals.js";
import type { Log } from "../../services/deps.js";
import type { JobQueue } from "./job-queue.js";

/** What published plans are answered by beside their own documents. */
const answeredBy: ReadonlySet<Signal> = new Set(["foods", "rules", "publishers"]);

/** Seconds. A price list that is loaded is many changes, and none of them needs a review of its own. */
const usualReviewPause = 300;

/**
 * Asks for a review of what is published whenever a food, a publisher's word of itself or a rule set is saved, by whatever process, so
 * that a plan that became less safe is told of within minutes and not the next morning. Whatever is missed waits for that review.
 */
export function reviewAfterChanges(
  follow: FollowSignals,
  queue: Pick<JobQueue, "enqueueOften">,
  log: Log,
  seconds = usualReviewPause,
): Promise<Followed> {
  let hasListened = false;
  const ask = (): void => {
    for (const { name } of [reviewRevisionsJob, noteFactSourcesJob])
      queue.enqueueOften(name, seconds).catch((error: unknown) => {
        log.error(
          { err: error, job: name },
          "a review of published plans could not be queued; the next one is in the morning",
        );
      });
  };
  return follow({
    heard: (signal) => {
      if (answeredBy.has(signal)) ask();
    },
    listening: (is) => {
      // What changed while nobody listened was not heard.
      if (is && hasListened) ask();
      hasListened ||= is;
    },
  });
}
