import type { Problem } from "../../domain/problem.js";
import { withdrawnText } from "../page/withdrawn-text.js";
import { missingWords } from "../words/missing-fact-words.js";
import type { Words } from "../words/words.js";
import { limitsOf, problemText } from "./problem-text.js";

const list = (values: readonly string[]): string => (values.length === 0 ? "none" : values.join(", "));

/** What is wrong with what a reader typed, in the reader's language. What only a program can get wrong is said in English. */
export function readerProblemText(problem: Problem, words: Words): string {
  const say = words.mistake;
  if (problem.code === "UNKNOWN_PLAN") return words.page.notInPrint;
  if (problem.code === "WITHDRAWN") return withdrawnText(problem, words);
  // The same in English as everywhere else.
  if (words.language === "en") return problemText({ ...problem, path: [] });
  switch (problem.code) {
    case "BAD_AMOUNT":
      return say.BAD_AMOUNT({ written: problem.written });
    case "UNKNOWN_UNIT":
      return say.UNKNOWN_UNIT({ unit: problem.unit, nearest: list(problem.nearest) });
    case "AMBIGUOUS_UNIT":
      return say.AMBIGUOUS_UNIT({ unit: problem.unit, candidates: list(problem.candidates) });
    case "UNKNOWN_FOOD":
      return say.UNKNOWN_FOOD({ food: problem.food, nearest: list(problem.offer?.nearest ?? []) });
    case "AMBIGUOUS_FOOD":
      return say.AMBIGUOUS_FOOD({ food: problem.food, candidates: list(problem.candidates) });
    case "UNKNOWN_CODE":
      return say.UNKNOWN_CODE({ written: problem.written, nearest: list(problem.nearest) });
    case "UNKNOWN_COMPONENT":
      return say.UNKNOWN_COMPONENT({ component: problem.component });
    case "UNKNOWN_ROUTE":
      return say.UNKNOWN_ROUTE({ route: problem.route, known: list(problem.known) });
    case "AMOUNT_OUT_OF_RANGE":
      return say.OUT_OF_RANGE(limitsOf(problem));
    case "SERVINGS_OUT_OF_RANGE":
      return say.SERVINGS_OUT_OF_RANGE(limitsOf(problem));
    case "BAD_SHAPE":
      return say.NOT_READ({ value: problem.got });
    case "BAD_HOUSEHOLD":
      return say.NOT_READ({ value: problem.value });
    case "TOO_LARGE":
      return say.TOO_LARGE({ size: String(problem.size), limit: String(problem.limit) });
    case "DUPLICATE":
      return say.DUPLICATE({ value: problem.value });
    case "NOT_CONVERTIBLE":
      return say.NOT_CONVERTIBLE({
        item: problem.item,
        missing: missingWords(problem.missing, words),
        to: problem.to,
      });
    case "MORE_PROBLEMS":
      return say.MORE_PROBLEMS({ count: problem.count });
    default:
      return problemText({ ...problem, path: [] });
  }
}
