import { reportImports } from "../services/report-imports.js";
import type { Job } from "./job.js";

/** Each morning, before anybody cooks. */
export const reportImportsJob: Job = { name: "report-imports", cron: "0 6 * * *", run: reportImports };
