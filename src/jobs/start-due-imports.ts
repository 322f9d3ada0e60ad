import { startDueImports } from "../services/start-due-imports.js";
import type { Job } from "./job.js";

/** Every minute: feeds have times, and zones, of their own. */
export const startDueImportsJob: Job = { name: "start-due-imports", cron: "* * * * *", run: startDueImports };
