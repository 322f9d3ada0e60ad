import type { Deps } from "../services/deps.js";
import { forgetDeliveries } from "../services/webhooks/webhook-deliveries.js";
import { deleteExpiredKeys } from "../services/access/delete-expired-keys.js";
import { reportImports } from "../services/imports/reports/report-imports.js";
import { reviewRevisions } from "../services/plans/review-revisions.js";
import { runScheduled } from "../services/schedule/run-scheduled.js";
import { startDueImports } from "../services/imports/feeds/start-due-imports.js";
import { noteFactSources, workOutDueFacts } from "../services/plans/listing/work-out-due-facts.js";
import { forgetUsage } from "../services/usage/read-usage.js";
import { verifyRevisions } from "../services/plans/verify-revisions.js";

/** Something done at a time of day instead of for a caller. Running it twice does no harm. */
export interface Job {
  readonly name: string;
  /** Five fields, read in the zone the worker is set to. */
  readonly cron: string;
  /** What it did, for the log. */
  run(deps: Deps): Promise<object>;
}

/** Each morning, so that the report of the imports can name what became of plans in print; and soon after a change of rules or foods. */
export const reviewRevisionsJob: Job = { name: "review-revisions", cron: "30 4 * * *", run: reviewRevisions };

/** Soon after a change of rules, foods or prices, and each night; what lists find plans by hangs on them. */
export const noteFactSourcesJob: Job = { name: "note-fact-sources", cron: "20 4 * * *", run: noteFactSources };

/** Publishes and withdraws plans at their hours; and at the start of a worker, what was missed while none ran. */
export const runScheduledJob: Job = { name: "run-scheduled", cron: "* * * * *", run: runScheduled };

export const jobs: readonly Job[] = [
  // At an hour when few cook.
  { name: "verify-revisions", cron: "17 3 * * *", run: verifyRevisions },
  { name: "forget-keys", cron: "41 * * * *", run: deleteExpiredKeys },
  { name: "forget-usage", cron: "53 3 * * *", run: forgetUsage },
  { name: "forget-deliveries", cron: "47 3 * * *", run: forgetDeliveries },
  // Every minute: plans and feeds have times, and zones, of their own.
  runScheduledJob,
  { name: "start-due-imports", cron: "* * * * *", run: startDueImports },
  reviewRevisionsJob,
  noteFactSourcesJob,
  // Every minute: a plan that came back into force is in no list by its facts before.
  { name: "work-out-facts", cron: "* * * * *", run: workOutDueFacts },
  // Before anybody cooks.
  { name: "report-imports", cron: "0 6 * * *", run: reportImports },
];
