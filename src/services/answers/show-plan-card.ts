import { planCard } from "../../exports/page/card.js";
import type { PlanCard } from "../../exports/page/card-shape.js";
import { planPath } from "../../exports/page/page-links.js";
import { formQuery } from "../../exports/page/form/plan-form.js";
import { failed, ok, type Result } from "../../domain/problem.js";
import { answerPlan } from "./answer-plan.js";
import type { Deps } from "../deps.js";
import { householdProblems } from "./scale-for-reader.js";
import type { AskedForm } from "./show-plan-page.js";

/** A plan in ready words for other people's pages; null: there is none of that name or number. */
export async function showPlanCard(
  deps: Deps,
  named: { readonly publisher: string; readonly slug: string },
  { form, revision, asked, problems }: AskedForm,
  origin: string,
): Promise<Result<PlanCard> | null> {
  const ref = { ...named, revision };
  if (problems.length > 0) return failed([...problems, ...(await householdProblems(deps, ref, asked))]);
  const answer = await answerPlan(deps, ref, asked);
  if (answer === null || !answer.ok) return answer;
  return ok(planCard(answer.value, origin + planPath(named) + formQuery(form)));
}
