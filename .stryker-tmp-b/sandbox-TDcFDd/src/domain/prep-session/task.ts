// @ts-nocheck
import { ceilForgiving } from "../component/batch.js";
import type { Step } from "../model/component.js";
import type { Kitchen } from "../model/plan.js";
import { toNumber } from "../quantity/rational.js";
import type { SessionWork } from "./session.js";

/** One piece of work without a pause: a step, one or more loads of it, or the washing of its machine. */
export interface Task {
  readonly id: string;
  readonly kind: "STEP" | "WASH";
  readonly work: SessionWork;
  readonly step: Step;
  /** Whole minutes. */
  readonly minutes: number;
  readonly cooks: number;
  readonly appliance: string | null;
  readonly units: number;
  readonly load: { readonly first: number; readonly last: number; readonly of: number } | null;
  readonly eveningBefore: boolean;
}

/** More loads than this of one step are run in blocks, so that a crowd's session stays computable. */
const mostTasksOfAStep = 8;

export const workKey = (work: Pick<SessionWork, "kind" | "slug">): string =>
  work.kind === "MEAL" ? `meal:${work.slug}` : work.slug;

/** How many loads a step is done in; a step that does not go by the load is done once. */
export const loadsOf = (step: Step, work: Pick<SessionWork, "batches" | "loads">): number => {
  if (step.grows !== "PER_LOAD") return 1;
  if (step.loadBatches === null) return Math.max(1, work.loads);
  return Math.max(1, ceilForgiving(work.batches / toNumber(step.loadBatches)));
};

/**
 * Minutes of a step done once, or of one load of it. Hands-on work grows with what is made where the step says so;
 * unattended time never does (twice the food does not roast twice as long).
 */
export const stepMinutes = (step: Step, batches: number): number => {
  const grows = step.grows === "PER_BATCH" && step.attention === "HANDS_ON";
  return ceilForgiving(grows ? step.minutes * batches : step.minutes);
};

/** How many loads can run side by side. */
function sideBySide(step: Step, loads: number, kitchen: Kitchen): number {
  const hands = step.attention === "HANDS_ON" ? kitchen.cooks : loads;
  const machines = step.appliance === null ? loads : (kitchen.appliances[step.appliance] ?? 1);
  return Math.max(1, Math.min(loads, hands, machines));
}

/** The tasks of one step: one, or one for each load. */
export function tasksOfStep(step: Step, work: SessionWork, kitchen: Kitchen, eveningBefore: boolean): Task[] {
  const loads = loadsOf(step, work);
  const together = loads <= mostTasksOfAStep ? 1 : sideBySide(step, loads, kitchen);
  const rounds = loads <= mostTasksOfAStep ? 1 : Math.ceil(loads / (together * mostTasksOfAStep));
  const minutes = stepMinutes(step, work.batches);
  const id = `${workKey(work)}/${step.id}`;
  const tasks: Task[] = [];
  for (let first = 1; first <= loads; first += together * rounds) {
    const last = Math.min(loads, first + together * rounds - 1);
    const units = Math.min(together, last - first + 1);
    tasks.push({
      id: loads === 1 ? id : `${id}/${first}`,
      kind: "STEP",
      work,
      step,
      minutes: minutes * Math.ceil((last - first + 1) / units),
      cooks: step.attention === "HANDS_ON" ? units : 0,
      appliance: step.appliance,
      units: step.appliance === null ? 0 : units,
      load: loads === 1 ? null : { first, last, of: loads },
      eveningBefore,
    });
  }
  return tasks;
}

/** Washing the machine right after a use, because somebody else needs it clean. */
export const washAfter = (last: Task): Task => ({
  ...last,
  id: `${workKey(last.work)}/${last.step.id}/wash`,
  kind: "WASH",
  minutes: ceilForgiving(last.step.washMinutes ?? 0),
  cooks: 1,
  units: 1,
  load: null,
});
