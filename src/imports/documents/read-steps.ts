import type { Step } from "../../domain/model/component.js";
import { failed, ok } from "../../domain/problem.js";
import { madeProblems } from "../../domain/first-problems.js";
import type { Path, Problem, Result } from "../../domain/problem.js";
import { every, mapResult } from "./combine-results.js";
import type { StepDocument } from "./schemas/line-schema.js";
import { nearestWords } from "../../domain/quantity/naming/nearest-words.js";
import { readRatio } from "./read-ratio.js";

/**
 * Steps of one component, route or meal. A step without an id is called after its number; without `after` it
 * follows the step above it. `lines` are the ids of the lines beside the steps; null: not all are known.
 */
export function readSteps(
  steps: readonly StepDocument[],
  lines: readonly string[] | null,
  path: Path,
): Result<readonly Step[]> {
  const ids = steps.map(({ id }, index) => id ?? `step-${index + 1}`);
  const known = lines === null ? null : new Set(lines);
  const makers = steps.flatMap((step, index) => nameProblems(step, index, ids, known, [...path, index]));
  const problems = madeProblems(makers, (more) => more);
  if (problems.length > 0) return failed(problems);
  return every(steps.map((step, index) => readStep(step, index, ids, [...path, index])));
}

function nameProblems(
  step: StepDocument,
  index: number,
  ids: readonly string[],
  lines: ReadonlySet<string> | null,
  path: Path,
): readonly (() => Problem)[] {
  const id = ids[index] ?? "";
  const others = new Set(ids.filter((each) => each !== id));
  return [
    ...(ids.indexOf(id) === index ? [] : [(): Problem => ({ code: "DUPLICATE", path: [...path, "id"], value: id })]),
    ...unknownNames(step.after ?? [], others, [...path, "after"]),
    ...(lines === null ? [] : unknownNames(step.uses, lines, [...path, "uses"])),
  ];
}

/** Each is made when it is listed: the nearest names cost a look at all of them. */
const unknownNames = (names: readonly string[], known: ReadonlySet<string>, path: Path): readonly (() => Problem)[] =>
  names.flatMap((name, index) => (known.has(name) ? [] : [() => unknownName(name, [...known], [...path, index])]));

function unknownName(name: string, known: readonly string[], path: Path): Problem {
  const nearest = nearestWords(name, known);
  const expected = (nearest.length > 0 ? nearest : known).join(" | ");
  return { code: "BAD_SHAPE", path, expected, got: name };
}

function readStep(step: StepDocument, index: number, ids: readonly string[], path: Path): Result<Step> {
  const before = ids[index - 1];
  const load = step["load-batches"];
  const loadBatches = load === null ? ok(null) : readRatio(load, [...path, "load-batches"]);
  return mapResult(loadBatches, (batches) => ({
    id: ids[index] ?? "",
    text: step.do,
    minutes: step.time,
    attention: step.hands,
    appliance: step.appliance,
    temperatureC: step.celsius,
    after: step.after ?? (before === undefined ? [] : [before]),
    grows: step.grows ?? "FIXED",
    ...(step.grows === "FIXED" ? { growthStated: true as const } : {}),
    loadBatches: batches,
    minWait: step["wait-at-least"],
    maxWait: step["wait-at-most"],
    eveningBefore: step["evening-before"],
    lines: step.uses,
    ...(step.leaves === null ? {} : { leaves: step.leaves }),
    ...(step["wash-time"] === null ? {} : { washMinutes: step["wash-time"] }),
    ...(step.drains === null ? {} : { drains: step.drains }),
    ...(step["heat-up"] === null ? {} : { heatUpMinutes: step["heat-up"] }),
    ...(step.chills === null ? {} : { chills: step.chills }),
  }));
}
