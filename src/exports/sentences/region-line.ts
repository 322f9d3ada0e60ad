import { regionCovers, regionsOf } from "../../domain/model/region.js";
import type { PlanAnswer } from "../../domain/plan/plan-answer.js";
import type { Warning } from "../../domain/problem.js";
import type { Words } from "../words/words.js";

/**
 * Whose rules an answer goes by, in one line for its top; null where the reader's own region has a rule for all of it. The answer of a
 * reader who names no region, or one that has no rule for something here, must not look as if it were made for that reader.
 */
export function regionLine({ household, storage }: PlanAnswer, words: Words): string | null {
  const [first] = regionsOf(household);
  if (first === undefined) return words.regionUnknown;
  const used = storage.guidance.flatMap(({ scope }) =>
    scope === null || regionCovers(scope.used, first.region) ? [] : [scope.used],
  );
  const others = [...new Set(used)].toSorted();
  const sentences = [
    ...(first.owner === "READER" ? [] : [words.regionNamed({ region: first.region, by: first.owner })]),
    ...(others.length === 0 ? [] : [words.regionStandsIn({ region: first.region, others: others.join(", ") })]),
  ];
  return sentences.length === 0 ? null : sentences.join(" ");
}

/** Warnings without that which the top says already. */
export const besideRegion = (warnings: readonly Warning[]): readonly Warning[] =>
  warnings.filter(({ code }) => code !== "REGION_NOT_GIVEN");
