// @ts-nocheck
import type { Step } from "../../../src/domain/model/component.js";
import type { SessionInput } from "../../../src/domain/prep-session/session.js";

interface Placed {
  readonly step: Step;
  readonly start: number;
  readonly end: number;
}

/**
 * The shortest session, and of those the one that frees the hands first, by trying every order of the tasks and giving
 * each its earliest place in turn. Only for sessions without greatest waits, loads, washes and soaks; at least one best
 * session is found so (A. Sprecher, R. Kolisch, A. Drexl: Semi-active, active and non-delay schedules, 1995).
 */
export function leastSession(input: SessionInput): { readonly total: number; readonly handsFree: number } {
  const { kitchen } = input;
  const tasks = input.work.flatMap((work) =>
    work.steps.map((step) => ({
      key: `${work.slug}/${step.id}`,
      step,
      before: [
        ...step.after.map((id) => `${work.slug}/${id}`),
        ...work.uses.flatMap(({ component }) =>
          input.work
            .filter(({ slug }) => slug === component)
            .flatMap((used) => used.steps.map(({ id }) => `${used.slug}/${id}`)),
        ),
      ],
    })),
  );
  const fits = (step: Step, start: number, placed: readonly Placed[]): boolean => {
    for (let minute = start; minute < start + step.minutes; minute++) {
      let [hands, places] = [0, 0];
      for (const other of placed) {
        if (other.start > minute || other.end <= minute) continue;
        if (other.step.attention === "HANDS_ON") hands += 1;
        if (other.step.appliance !== step.appliance) continue;
        places += 1;
        if (step.appliance === "oven-shelf" && other.step.temperatureC !== step.temperatureC) return false;
      }
      if (step.attention === "HANDS_ON" && hands >= kitchen.cooks) return false;
      if (step.appliance !== null && places >= kitchen.appliances[step.appliance]!) return false;
    }
    return true;
  };
  let best = { total: Number.POSITIVE_INFINITY, handsFree: Number.POSITIVE_INFINITY };
  const placed = new Map<string, Placed>();
  const extend = (total: number, handsFree: number): void => {
    if (total > best.total || (total === best.total && handsFree >= best.handsFree)) return;
    if (placed.size === tasks.length) {
      best = { total, handsFree };
      return;
    }
    for (const { key, step, before } of tasks) {
      if (placed.has(key) || before.some((other) => !placed.has(other))) continue;
      let start = Math.max(0, ...before.map((other) => placed.get(other)!.end));
      while (!fits(step, start, [...placed.values()])) start += 1;
      const end = start + step.minutes;
      placed.set(key, { step, start, end });
      extend(Math.max(total, end), step.attention === "HANDS_ON" ? Math.max(handsFree, end) : handsFree);
      placed.delete(key);
    }
  };
  extend(0, 0);
  return best;
}
