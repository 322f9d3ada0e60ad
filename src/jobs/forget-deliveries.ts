import { forgetDeliveries } from "../services/webhook-deliveries.js";
import type { Job } from "./job.js";

/** Nightly. */
export const forgetDeliveriesJob: Job = { name: "forget-deliveries", cron: "47 3 * * *", run: forgetDeliveries };
