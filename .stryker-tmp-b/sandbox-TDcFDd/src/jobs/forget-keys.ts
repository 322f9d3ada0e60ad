// @ts-nocheck
import { forgetKeys } from "../services/forget-keys.js";
import type { Job } from "./job.js";

/** Every hour. */
export const forgetKeysJob: Job = { name: "forget-keys", cron: "41 * * * *", run: forgetKeys };
