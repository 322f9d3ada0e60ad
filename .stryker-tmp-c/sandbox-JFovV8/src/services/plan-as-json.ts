/** Answers about plans as JSON, for the layers that may not see `exports`. */
// @ts-nocheck

export { planJson, planSchema } from "../exports/json/plan.js";
