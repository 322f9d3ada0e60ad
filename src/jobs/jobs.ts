import { forgetDeliveriesJob } from "./forget-deliveries.js";
import { forgetKeysJob } from "./forget-keys.js";
import type { Job } from "./job.js";
import { reportImportsJob } from "./report-imports.js";
import { startDueImportsJob } from "./start-due-imports.js";
import { reviewRevisionsJob } from "./review-revisions.js";
import { verifyRevisionsJob } from "./verify-revisions.js";

export const jobs: readonly Job[] = [
  verifyRevisionsJob,
  forgetKeysJob,
  forgetDeliveriesJob,
  startDueImportsJob,
  reviewRevisionsJob,
  reportImportsJob,
];
