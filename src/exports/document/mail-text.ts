import type { PlanAnswer } from "../../domain/plan/plan-answer.js";
import type { InSlices } from "../../domain/counted-work.js";
import type { Addresses } from "../addresses.js";
import { planDocumentInSlices } from "./plan-document.js";
import { renderTextInSlices } from "./render-text.js";

/** The plain-text part of a mail: the same words as its HTML, for programs and readers that show none. Parameters: `planDocumentInSlices`. */
export function* mailTextInSlices(
  answer: PlanAnswer,
  addresses: Addresses,
  changeNote: string | null,
): InSlices<string> {
  return yield* renderTextInSlices(yield* planDocumentInSlices(answer, addresses, changeNote));
}
