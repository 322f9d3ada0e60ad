// @ts-nocheck
import { answerPlan } from "../../services/answer-plan.js";
import { planJson, planSchema } from "../../services/plan-as-json.js";
import { asJson, endpoint } from "../endpoint.js";
import { aboutPlan, planParameters } from "../plan-question.js";

/** One plan for one household, in every form. */
export const planEndpoint = endpoint(
  {
    method: "GET",
    path: "/v1/plans/{publisher}/{slug}",
    operationId: "getPlan",
    tag: "plans",
    summary: "A plan, computed for one household",
    description:
      "The newest revision, or the one named by `revision`, with everything the service says about it: meals, components," +
      " shopping list, session, keeping, allergens, diets, nutrition, cautions.",
    parameters: planParameters,
    refusals: ["bad-parameters", "not-found"],
    caching: "LIVE",
  },
  (question) => aboutPlan(question, answerPlan),
  [asJson(planSchema, "The plan computed.", planJson)],
);
