import type { EveningWindow } from "./evening-steps.js";
import type { RcpspProblem } from "./solver/rcpsp-problem.js";
import type { SessionInput } from "./session.js";
import type { TaskPlan } from "./task-plan.js";

/** An oven has one heat for all its shelves; rings and machines have their own. */
export const sharesHeat = (appliance: string | null): boolean => appliance !== null && /^oven(-|$)/.test(appliance);

export interface KitchenProblem {
  readonly problem: RcpspProblem;
  /** Time of the problem at which the session starts; before it lies the evening before. */
  readonly sessionStart: number;
}

/** Length of the longest chain of evening work, in minutes. */
function longestEvening({ tasks, links }: TaskPlan): number {
  const ends = tasks.map((task) => (task.eveningBefore ? task.minutes : 0));
  for (let round = 0; round < tasks.length; round++)
    for (const { before, after, min, counts } of links) {
      if (!tasks[before]!.eveningBefore || !tasks[after]!.eveningBefore || counts === "FROM_START") continue;
      ends[after] = Math.max(ends[after]!, ends[before]! + min + tasks[after]!.minutes);
    }
  return Math.max(0, ...ends);
}

function sessionStart(plan: TaskPlan, input: SessionInput, evening: EveningWindow): number {
  if (!plan.tasks.some((task) => task.eveningBefore)) return 0;
  if (input.start !== null) return evening.beforeSession;
  return Math.max(evening.beforeSession, evening.length + longestEvening(plan));
}

/** Hands are the first resource, then the appliances in the order in which tasks name them. */
export function kitchenProblem(plan: TaskPlan, input: SessionInput, evening: EveningWindow): KitchenProblem {
  const { tasks, links } = plan;
  const { kitchen } = input;
  const appliances = [...new Set(tasks.flatMap(({ appliance }) => appliance ?? []))];
  const start = sessionStart(plan, input, evening);
  const apart: (readonly [number, number])[] = [];
  tasks.forEach((a, i) =>
    tasks.slice(0, i).forEach((b, j) => {
      if (a.appliance !== b.appliance || !sharesHeat(a.appliance)) return;
      if (a.step.temperatureC !== b.step.temperatureC) apart.push([j, i]);
    }),
  );
  return {
    sessionStart: start,
    problem: {
      durations: tasks.map(({ minutes }) => minutes),
      capacities: [kitchen.cooks, ...appliances.map((appliance) => kitchen.appliances[appliance] ?? 1)],
      demands: tasks.map((task) => [
        task.cooks,
        ...appliances.map((appliance) => (task.appliance === appliance ? task.units : 0)),
      ]),
      waits: links.map(({ before, after, min, max, counts }) => ({ from: before, to: after, min, max, counts })),
      apart,
      afterLast: plan.afterLast,
      earliestStarts: tasks.map((task) => (task.eveningBefore ? 0 : start)),
      latestStarts: tasks.map((task) => {
        if (!task.eveningBefore) return null;
        return Math.max(0, evening.length - (task.cooks > 0 ? task.minutes : 0));
      }),
    },
  };
}
