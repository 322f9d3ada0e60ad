import { mostWeighedRoutes } from "../services/answers/weigh-routes.js";

/**
 * What a page, or an answer below /v1, costs of a budget: it may be computed afresh, for any household. What lies ready (style sheets, schemas) costs
 * one point, and an operation over GraphQL its published cost.
 */
export const pointsOfAnswer = 500;

/** What a plan of a list costs, and a row of a table; `pointsOfAnswer` pays for the first of them. */
export const pointsOfPlan = 100;
export const pointsOfRow = 20;

/** What the page of a plan costs: each route that is not taken is computed with its session, to say what it would change. */
export const pointsOfPlanPage = pointsOfAnswer + mostWeighedRoutes * pointsOfPlan;

/** What a picture costs beyond `pointsOfAnswer` that is handed in: a second or two of a core, and room for it. */
export const pointsOfUpload = 5_000;

/** What a picture costs that readers get: it is read from the database. */
export const pointsOfImage = 20;

/** Points of something that is computed so many times, beyond `pointsOfAnswer`. */
export const pointsBeyond = (times: number, each: number): number => Math.max(0, times * each - pointsOfAnswer);
