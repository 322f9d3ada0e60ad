import { checkFoodKeeping } from "../../../domain/plan/check/check-keeping.js";
import type { KeepingRules } from "../../../domain/storage/rule.js";
import { locateProblem } from "../yaml/locate-problem.js";
import type { DocumentProblem } from "../read-documents.js";
import type { DocumentsResolved } from "../resolve-documents.js";

/** The foods among some documents that are said to keep beyond every published rule of their class, each at its place. */
export const checkFoodsKeeping = (
  resolved: DocumentsResolved,
  rules: KeepingRules,
  date: string,
): readonly DocumentProblem[] =>
  resolved.foods.flatMap(({ value, read }) =>
    checkFoodKeeping(value, rules, date).map((problem) => locateProblem(problem, resolved, read)),
  );
