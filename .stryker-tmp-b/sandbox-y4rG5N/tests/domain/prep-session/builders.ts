// @ts-nocheck
import type { Step } from "../../../src/domain/model/component.js";
import { planSession } from "../../../src/domain/prep-session/schedule.js";
import type { PrepSession, SessionInput, SessionTask, SessionWork } from "../../../src/domain/prep-session/session.js";

export const step = (id: string, minutes: number, rest: Partial<Step> = {}): Step => ({
  id,
  text: `Do ${id}.`,
  minutes,
  attention: "HANDS_ON",
  appliance: null,
  temperatureC: null,
  after: [],
  grows: "FIXED",
  loadBatches: null,
  minWait: 0,
  maxWait: null,
  eveningBefore: false,
  lines: [],
  ...rest,
});

export const unattended = (id: string, minutes: number, rest: Partial<Step> = {}): Step =>
  step(id, minutes, { attention: "UNATTENDED", ...rest });

export const inOven = (id: string, minutes: number, temperatureC: number, rest: Partial<Step> = {}): Step =>
  unattended(id, minutes, { appliance: "oven-shelf", temperatureC, ...rest });

export const work = (slug: string, steps: readonly Step[], rest: Partial<SessionWork> = {}): SessionWork => ({
  kind: "COMPONENT",
  slug,
  title: slug,
  steps,
  batches: 1,
  loads: 1,
  uses: [],
  ...rest,
});

export const session = (works: readonly SessionWork[], rest: Partial<SessionInput> = {}): SessionInput => ({
  work: works,
  kitchen: { cooks: 1, appliances: { "oven-shelf": 2, "hob-ring": 4, blender: 1, sink: 1 } },
  start: null,
  evening: null,
  extraOrder: [],
  ...rest,
});

export function planned(input: SessionInput): PrepSession {
  const result = planSession(input);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

export function taskOf(plan: PrepSession, id: string): SessionTask {
  const found = plan.tasks.find((task) => task.id === id);
  if (found === undefined) throw new Error(`no task ${id} among ${plan.tasks.map((task) => task.id).join(", ")}`);
  return found;
}

/** `[start, end]` of a task, in minutes of the session. */
export const timesOf = (plan: PrepSession, id: string): readonly [number, number] => {
  const { startMinute, endMinute } = taskOf(plan, id);
  return [startMinute, endMinute];
};
