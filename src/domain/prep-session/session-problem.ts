import { Temporal } from "temporal-polyfill";
import type { Step } from "../model/component.js";
import { failed, ok, type Path, type Problem, type Result } from "../problem.js";
import type { SessionInput, SessionWork, StepRef } from "./session.js";
import { workKey } from "./task.js";
import { readOrNull } from "../read-or-null.js";

export const workPath = (work: Pick<SessionWork, "kind" | "slug">): Path => [
  work.kind === "MEAL" ? "meals" : "components",
  work.slug,
];

const shape = (path: Path, expected: string, got: string): Problem => ({ code: "BAD_SHAPE", path, expected, got });

function stepProblems(step: Step, work: SessionWork): Problem[] {
  const path = [...workPath(work), "steps", step.id];
  const isTime = (value: number) => Number.isFinite(value) && value >= 0;
  const known = new Set(work.steps.map(({ id }) => id));
  return [
    ...(isTime(step.minutes) ? [] : [shape([...path, "minutes"], "a number of minutes from 0", String(step.minutes))]),
    ...(isTime(step.minWait) ? [] : [shape([...path, "minWait"], "a number of minutes from 0", String(step.minWait))]),
    ...(step.maxWait === null || (isTime(step.maxWait) && step.maxWait >= step.minWait)
      ? []
      : [shape([...path, "maxWait"], `at least the least wait, ${step.minWait}`, String(step.maxWait))]),
    ...(isTime(step.washMinutes ?? 0)
      ? []
      : [shape([...path, "washMinutes"], "a number of minutes from 0", String(step.washMinutes))]),
    ...step.after
      .filter((id) => !known.has(id))
      .map((id) => shape([...path, "after"], `a step of the same ${work.kind.toLowerCase()}`, id)),
  ];
}

function workProblems(work: SessionWork, input: SessionInput): Problem[] {
  const path = workPath(work);
  const components = new Set(input.work.filter(({ kind }) => kind === "COMPONENT").map(({ slug }) => slug));
  const seen = new Set<string>();
  return [
    ...(work.batches > 0 && Number.isFinite(work.batches)
      ? []
      : [shape([...path, "batches"], "a number above 0", String(work.batches))]),
    ...work.uses
      .filter(({ component }) => !components.has(component))
      .map(({ component, line }): Problem => ({
        code: "UNKNOWN_COMPONENT",
        path: [...path, "lines", line],
        component,
      })),
    ...work.steps.flatMap((step) => {
      const twice = seen.has(step.id);
      seen.add(step.id);
      return twice
        ? [{ code: "DUPLICATE" as const, path: [...path, "steps"], value: step.id }]
        : stepProblems(step, work);
    }),
  ];
}

function kitchenProblems({ kitchen, work }: SessionInput): Problem[] {
  const used = new Set(work.flatMap(({ steps }) => steps.flatMap(({ appliance }) => appliance ?? [])));
  const whole = (value: number) => Number.isInteger(value) && value >= 1;
  return [
    ...(whole(kitchen.cooks) ? [] : [shape(["kitchen", "cooks"], "at least one cook", String(kitchen.cooks))]),
    ...[...used]
      .filter((appliance) => kitchen.appliances[appliance] === 0)
      .map((appliance): Problem => ({
        code: "KITCHEN_WITHOUT",
        path: ["household", "kitchen", "appliances", appliance],
        appliance,
        steps: work.flatMap(({ slug, steps }) =>
          steps.filter((step) => step.appliance === appliance).map(({ id }) => `${slug}/${id}`),
        ),
      })),
    ...[...used]
      .filter((appliance) => kitchen.appliances[appliance] !== 0 && !whole(kitchen.appliances[appliance] ?? 1))
      .map((appliance) =>
        shape(
          ["kitchen", "appliances", appliance],
          "at least one, as steps use it",
          String(kitchen.appliances[appliance]),
        ),
      ),
  ];
}

function orderProblems({ extraOrder, work }: SessionInput): Problem[] {
  const known = new Set(work.flatMap((one) => one.steps.map(({ id }) => `${workKey(one)}/${id}`)));
  const check = (ref: StepRef, path: Path): Problem[] =>
    known.has(`${workKey(ref)}/${ref.step}`)
      ? []
      : [shape(path, "a step of this session", `${workKey(ref)}/${ref.step}`)];
  return extraOrder.flatMap(({ before, after }, index) => [
    ...check(before, ["extraOrder", index, "before"]),
    ...check(after, ["extraOrder", index, "after"]),
  ]);
}

const isRead = (read: () => unknown): boolean => readOrNull(read) !== null;

function clockProblems({ start, evening }: SessionInput): Problem[] {
  const problems: Problem[] = [];
  if (start !== null && !isRead(() => Temporal.Instant.from(start.instant)))
    problems.push(shape(["start", "instant"], "an ISO instant such as 2026-03-01T09:00:00Z", start.instant));
  if (start !== null && !isRead(() => Temporal.Instant.from("1970-01-01T00:00Z").toZonedDateTimeISO(start.zone)))
    problems.push(shape(["start", "zone"], "the IANA name of a time zone", start.zone));
  if (evening === null) return problems;
  const isTime = (text: string) => /^([01]\d|2[0-3]):[0-5]\d$/.test(text);
  for (const end of ["from", "to"] as const)
    if (!isTime(evening[end])) problems.push(shape(["evening", end], "a local time such as 20:00", evening[end]));
  if (isTime(evening.from) && isTime(evening.to) && evening.to < evening.from)
    problems.push(shape(["evening", "to"], `not before ${evening.from}`, evening.to));
  return problems;
}

/** Everything about the input that no schedule could make up for, each with its place. */
export function checkSession(input: SessionInput): Result<SessionInput> {
  const keys = input.work.map(workKey);
  const problems = [
    ...keys
      .filter((key, index) => keys.indexOf(key) !== index)
      .map((value): Problem => ({ code: "DUPLICATE", path: [], value })),
    ...input.work.flatMap((work) => workProblems(work, input)),
    ...kitchenProblems(input),
    ...orderProblems(input),
    ...clockProblems(input),
  ];
  return problems.length > 0 ? failed(problems) : ok(input);
}
