import type { PlanAnswer } from "../../domain/plan/plan-answer.js";
import type { Addresses } from "../addresses.js";
import { planDocument } from "./plan-document.js";
import { renderMarkdown } from "./render-markdown.js";

/** A whole plan as CommonMark, for a newsletter. Every text of the writer's is escaped. Parameters: `planDocument`. */
export const planMarkdown = (answer: PlanAnswer, addresses: Addresses, changeNote: string | null): string =>
  renderMarkdown(planDocument(answer, addresses, changeNote));
