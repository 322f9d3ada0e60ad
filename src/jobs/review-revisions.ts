import { reviewRevisions } from "../services/review-revisions.js";
import type { Job } from "./job.js";

/** Each morning, so that the report of the imports can name what became of plans in print. */
export const reviewRevisionsJob: Job = {
  name: "review-revisions",
  cron: "30 4 * * *",
  run: async (deps) => ({ ...(await reviewRevisions(deps)) }),
};
