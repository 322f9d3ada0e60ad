import type { Problem } from "../domain/problem.js";
import type { AskedForm } from "../services/answers/show-plan-page.js";
import { blankForm, formFields, type PlanForm } from "../exports/page/form/plan-form.js";
import { byOneName, readHouseholdQuery } from "./household-query.js";
import { wholeNumber, type Query } from "./parameter.js";

const sets: ReadonlySet<keyof PlanForm> = new Set([
  "diets",
  "avoidAllergens",
  "dislikes",
  "swaps",
  "route",
  "appliances",
]);
/** Said twice, they are twice as much. */
const lists: ReadonlySet<keyof PlanForm> = new Set(["eaters", "onHand"]);

/** A form from the query of an address, as it was typed and as a question. Names that it does not know are passed over. */
export function readPlanForm(sentQuery: Query): AskedForm {
  const query = byOneName(sentQuery);
  const typed = (Object.keys(formFields) as (keyof PlanForm)[]).map((field) => {
    const sent = query.get(formFields[field]) ?? [];
    return [field, sets.has(field) ? [...new Set(sent)] : lists.has(field) ? sent : (sent[0] ?? "")] as const;
  });
  const problems: Problem[] = [];
  const servings = wholeNumber(query, formFields.servings, problems);
  const revision = wholeNumber(query, formFields.revision, problems);
  // A form sends the zone that it remembers with no time beside it.
  const withStart = query.has(formFields.start) ? query : without(query, formFields.zone);
  const read = readHouseholdQuery(withStart);
  return {
    form: { ...blankForm, ...Object.fromEntries(typed) },
    revision,
    asked: { servings, household: read.household },
    problems: [...problems, ...read.problems],
  };
}

const without = (query: Query, name: string): Query => new Map([...query].filter(([each]) => each !== name));
