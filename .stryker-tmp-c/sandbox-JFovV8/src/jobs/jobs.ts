// @ts-nocheck
import { forgetKeysJob } from "./forget-keys.js";
import type { Job } from "./job.js";
import { verifyRevisionsJob } from "./verify-revisions.js";

export const jobs: readonly Job[] = [verifyRevisionsJob, forgetKeysJob];
