/** A plan's document for a number of servings and one household, or the caller's problems. */
export { scalePlanInTurns as scalePublishedPlan } from "../domain/plan/scale-plan.js";
