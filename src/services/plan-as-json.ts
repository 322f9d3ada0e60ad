/** Answers about plans as JSON, for the layers that may not see `exports`. */
export { planJson, planSchema } from "../exports/json/plan.js";
