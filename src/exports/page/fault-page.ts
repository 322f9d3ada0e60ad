import type { Problem } from "../../domain/problem.js";
import { readerProblemText } from "../sentences/reader-problem-text.js";
import type { Words } from "../words/words.js";
import { sharedQuery } from "./ask.js";
import type { PlanForm } from "./form/plan-form.js";
import { noticePage } from "./notice-page.js";
import { planPath, type PageLinks } from "./page-links.js";

interface FaultyQuestion {
  /** The plan whose form was sent. */
  readonly plan: { readonly publisher: string; readonly slug: string };
  readonly form: PlanForm;
  readonly problems: readonly Problem[];
}

/** A page beside that of a plan that could not be made: what is wrong, and back to the form that holds what was typed. */
export function faultPage(
  title: string,
  { plan, form, problems }: FaultyQuestion,
  words: Words,
  links: PageLinks,
): string {
  const text = problems.map((problem) => readerProblemText(problem, words)).join(" ");
  const onward = { path: planPath(plan, links) + sharedQuery(form), text: words.page.backToForm };
  return noticePage({ title, text, onward }, words, links);
}
