import type { TaskPlan } from "./task-plan.js";

interface AssignedResources {
  readonly cooks: readonly number[];
  readonly lanes: readonly number[];
}

interface Place {
  freeAt: number;
  /** Who had it last, to keep a cook with the pot. */
  had: string;
}

/** Takes so many free places, first those that `prefers` likes, and marks them taken. Numbers from 1. */
function take(places: Place[], count: number, start: number, end: number, had: string): readonly number[] {
  const free = [...places.keys()].filter((index) => places[index]!.freeAt <= start);
  const liked = free.filter((index) => places[index]!.had === had);
  const chosen = [...liked, ...free.filter((index) => !liked.includes(index))].slice(0, count);
  for (const index of chosen) Object.assign(places[index]!, { freeAt: end, had });
  return chosen.map((index) => index + 1).sort((a, b) => a - b);
}

/**
 * Says which cook and which shelf, ring or machine each task gets. By start time the lowest free number always does,
 * because no resource is ever overbooked.
 */
export function assignResources(
  plan: TaskPlan,
  starts: ArrayLike<number>,
  capacityOf: (appliance: string) => number,
  cooks: number,
): AssignedResources[] {
  const places = (count: number): Place[] => Array.from({ length: count }, () => ({ freeAt: -Infinity, had: "" }));
  const hands = places(cooks);
  const machines = new Map<string, Place[]>();
  const result: AssignedResources[] = plan.tasks.map(() => ({ cooks: [], lanes: [] }));
  const washFirst = (index: number) => (plan.tasks[index]!.kind === "WASH" ? 0 : 1);
  const order = [...plan.tasks.keys()].sort((a, b) => starts[a]! - starts[b]! || washFirst(a) - washFirst(b) || a - b);
  for (const index of order) {
    const task = plan.tasks[index]!;
    if (task.minutes === 0) continue;
    const [start, end] = [starts[index]!, starts[index]! + task.minutes];
    if (task.appliance !== null && !machines.has(task.appliance))
      machines.set(task.appliance, places(capacityOf(task.appliance)));
    const own = task.appliance === null ? [] : machines.get(task.appliance)!;
    result[index] = {
      cooks: take(hands, task.cooks, start, end, task.work.slug),
      lanes: take(own, task.units, start, end, `${task.work.slug}/${task.step.id}`),
    };
  }
  return result;
}
