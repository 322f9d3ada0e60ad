import type { Job } from "./job.js";
import { verifyRevisionsJob } from "./verify-revisions.js";

export const jobs: readonly Job[] = [verifyRevisionsJob];
