import type { PlanAnswer } from "../../domain/plan/plan-answer.js";
import { runToEnd, type InSlices } from "../../domain/counted-work.js";
import type { Addresses } from "../addresses.js";
import { planDocumentInSlices } from "./plan-document.js";
import { renderMarkdownInSlices } from "./render-markdown.js";

/** A whole plan as CommonMark, for a newsletter. Every text of the writer's is escaped. Parameters: `planDocumentInSlices`. */
export const planMarkdown = (answer: PlanAnswer, addresses: Addresses, changeNote: string | null): string =>
  runToEnd(planMarkdownInSlices(answer, addresses, changeNote));

/** The same, turn by turn. */
export function* planMarkdownInSlices(
  answer: PlanAnswer,
  addresses: Addresses,
  changeNote: string | null,
): InSlices<string> {
  return yield* renderMarkdownInSlices(yield* planDocumentInSlices(answer, addresses, changeNote));
}
