import { limits } from "../../engine-limits.js";
import type { Step } from "../../model/component.js";
import type { Path, Problem } from "../../problem.js";
import { checkCount, checkNumber, checkRational, checkText, checkUnique } from "./check-text.js";

const minutes = { min: 0, max: limits.minutes };

/** Steps of one component, route or meal: what a schedule is computed from. Their order is the session's own concern. */
export function checkSteps(steps: readonly Step[], path: Path): Problem[] {
  return [
    ...checkUnique(
      steps.map(({ id }) => id),
      (id) => [...path, "steps", id],
    ),
    ...steps.flatMap((step) => {
      const at = [...path, "steps", step.id];
      return [
        ...checkText(step.id, "an id", at),
        ...checkCount(step.text.length, limits.text, "characters of a step", at),
        ...checkNumber(step.minutes, [...at, "minutes"], minutes),
        ...checkNumber(step.minWait, [...at, "minWait"], minutes),
        ...(step.maxWait === null ? [] : checkNumber(step.maxWait, [...at, "maxWait"], minutes)),
        ...(step.loadBatches === null
          ? []
          : checkRational(step.loadBatches, [...at, "loadBatches"], { min: 1e-3, max: limits.batches })),
      ];
    }),
  ];
}
