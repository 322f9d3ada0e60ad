// @ts-nocheck
import type { PrepSession, SessionInput, SessionTask } from "../../../src/domain/prep-session/session.js";

const key = (task: SessionTask) => `${task.of.kind === "MEAL" ? "meal:" : ""}${task.of.slug}`;

/** Reads a planned session minute by minute against its input, knowing nothing of how it was planned. */
export function sessionFaults(input: SessionInput, plan: PrepSession): string[] {
  const faults: string[] = [];
  const moments = new Set(plan.tasks.flatMap((task) => [task.startMinute, task.endMinute - 1]));
  for (const minute of moments) {
    const running = plan.tasks.filter((task) => task.startMinute <= minute && minute < task.endMinute);
    const cooks = running.flatMap((task) => task.cooks);
    if (new Set(cooks).size < cooks.length) faults.push(`${minute}: a cook does two things`);
    if (cooks.some((cook) => cook < 1 || cook > input.kitchen.cooks)) faults.push(`${minute}: no such cook`);
    for (const appliance of new Set(running.flatMap((task) => task.appliance ?? []))) {
      const users = running.filter((task) => task.appliance === appliance);
      const lanes = users.flatMap((task) => task.lanes);
      const capacity = input.kitchen.appliances[appliance] ?? 1;
      if (new Set(lanes).size < lanes.length) faults.push(`${minute}: two tasks on one ${appliance}`);
      if (lanes.length > capacity) faults.push(`${minute}: ${lanes.length} of ${capacity} ${appliance}`);
      if (lanes.some((lane) => lane < 1 || lane > capacity)) faults.push(`${minute}: no such ${appliance}`);
      if (appliance === "oven-shelf" && new Set(users.map((task) => task.temperatureC)).size > 1)
        faults.push(`${minute}: two temperatures in the oven`);
    }
  }
  for (const task of plan.tasks) {
    if (task.endMinute > task.startMinute && task.attention === "HANDS_ON" && task.cooks.length === 0)
      faults.push(`${task.id}: nobody does it`);
    if (task.appliance !== null && task.endMinute > task.startMinute && task.lanes.length === 0)
      faults.push(`${task.id}: has no place`);
    if (!task.eveningBefore && task.startMinute < 0) faults.push(`${task.id}: before the session`);
  }
  return [...faults, ...orderFaults(input, plan), ...machineFaults(plan)];
}

function orderFaults(input: SessionInput, plan: PrepSession): string[] {
  const faults: string[] = [];
  const tasksOf = (work: string, step: string) =>
    plan.tasks.filter((task) => task.kind === "STEP" && key(task) === work && task.step === step);
  for (const work of input.work) {
    const name = `${work.kind === "MEAL" ? "meal:" : ""}${work.slug}`;
    for (const step of work.steps) {
      const own = tasksOf(name, step.id);
      if (own.length === 0) faults.push(`${name}/${step.id}: left out`);
      for (const task of own) {
        // A load needs as much of the step before as has to be ready for it.
        const ends = step.after.map((id) => {
          const before = tasksOf(name, id).sort((a, b) => a.endMinute - b.endMinute);
          const share = task.load === null ? 1 : task.load.last / task.load.of;
          return before[Math.max(1, Math.ceil(share * before.length - 1e-9)) - 1]!.endMinute;
        });
        const ready = Math.max(Number.NEGATIVE_INFINITY, ...ends);
        if (task.startMinute < ready + step.minWait) faults.push(`${task.id}: before what it waits for`);
        if (step.maxWait !== null && ends.length > 0 && task.startMinute > ready + step.maxWait)
          faults.push(`${task.id}: waited too long`);
      }
    }
    for (const use of work.uses) {
      const made = plan.tasks.filter((task) => key(task) === use.component && task.kind === "STEP");
      const users = work.steps.filter((step) => step.lines.includes(use.line));
      const needing = users.length > 0 ? users : work.steps;
      for (const task of needing.flatMap((step) => tasksOf(name, step.id)))
        if (made.some((other) => other.endMinute > task.startMinute))
          faults.push(`${task.id}: ${use.component} is not ready`);
    }
  }
  for (const { before, after } of input.extraOrder) {
    const firsts = tasksOf(before.slug, before.step);
    for (const second of tasksOf(after.slug, after.step))
      if (firsts.some((first) => first.endMinute > second.startMinute))
        faults.push(`${second.id}: out of the order asked for`);
  }
  return faults;
}

/** No use of a machine falls between another use and its wash. */
function machineFaults(plan: PrepSession): string[] {
  return plan.tasks
    .filter((task) => task.kind === "WASH")
    .flatMap((wash) => {
      const own = plan.tasks.filter(
        (task) => key(task) === key(wash) && task.step === wash.step && task.kind === "STEP",
      );
      const from = Math.min(...own.map((task) => task.startMinute));
      const lane = own.at(-1)!.lanes[0];
      if (Math.max(...own.map((task) => task.endMinute)) !== wash.startMinute) return [`${wash.id}: not at once`];
      return plan.tasks
        .filter((task) => task.appliance === wash.appliance && !own.includes(task) && task !== wash)
        .filter((task) => task.lanes[0] === lane && task.startMinute < wash.endMinute && task.endMinute > from)
        .map((task) => `${task.id}: in a dirty ${wash.appliance}`);
    });
}
