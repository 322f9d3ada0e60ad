// @ts-nocheck
import type { Deps } from "../services/deps.js";
import { verifyRevisions } from "../services/verify-revisions.js";
import type { Job } from "./job.js";

/** Nightly, at an hour when few cook. */
export const verifyRevisionsJob: Job = {
  name: "verify-revisions",
  cron: "17 3 * * *",
  run: async (deps: Deps) => ({ ...(await verifyRevisions(deps)) }),
};
