import type { Problem } from "../../../domain/problem.js";
import { readerProblemText } from "../../sentences/reader-problem-text.js";
import type { PageWords, Words } from "../../words/words.js";
import { formFields, type PlanForm } from "./plan-form.js";

/** What is wrong with what was typed, each beside its field; "form" is for what belongs to none. */
export type FormFaults = ReadonlyMap<keyof PlanForm | "form", readonly string[]>;

/** Names in a problem's path: those of the address, and those inside a household where they differ. */
const fieldOf: ReadonlyMap<string, keyof PlanForm> = new Map([
  ...(Object.entries(formFields) as [keyof PlanForm, string][]).map(([field, name]) => [name, field] as const),
  ["diets", "diets"],
  ["avoidAllergens", "avoidAllergens"],
  ["dislikes", "dislikes"],
  ["swaps", "swaps"],
  ["onHand", "onHand"],
  ["appliances", "appliances"],
  ["local", "start"],
]);

/** The last part of a path that is a field of the form: `household > sessionStart > zone` is the zone. */
function fieldAt({ path }: Problem): keyof PlanForm | "form" {
  // One of the routes by name, not the rule for all of them.
  if (path.includes("byName")) return "route";
  const named = path.toReversed().flatMap((each) => fieldOf.get(String(each)) ?? []);
  if (named[0] !== undefined) return named[0];
  return path.includes("sessionStart") || path.includes("session") ? "start" : "form";
}

const saysItself = (field: keyof PlanForm | "form"): field is Exclude<keyof PageWords["fault"], "zoneMissing"> =>
  ["servings", "region", "currency", "measures", "diets", "eaters", "onHand", "start", "zone", "cooks"].includes(field);

/** What was typed and cannot be read; null where the problem is another. */
function unreadable(problem: Problem): string | null {
  if (problem.code === "BAD_SHAPE") return problem.got;
  return problem.code === "BAD_HOUSEHOLD" ? problem.value : null;
}

function faultText(field: keyof PlanForm | "form", problem: Problem, words: Words): string {
  const typed = unreadable(problem);
  if (field === "zone" && typed === "nothing") return words.page.fault.zoneMissing;
  return typed !== null && saysItself(field) ? words.page.fault[field]({ typed }) : readerProblemText(problem, words);
}

export function formFaults(problems: readonly Problem[], words: Words): FormFaults {
  const faults = new Map<keyof PlanForm | "form", string[]>();
  for (const problem of problems) {
    const field = fieldAt(problem);
    faults.set(field, [...(faults.get(field) ?? []), faultText(field, problem, words)]);
  }
  return faults;
}
