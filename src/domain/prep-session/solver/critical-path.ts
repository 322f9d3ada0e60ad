import { sharesHeat } from "../kitchen-problem.js";
import type { CriticalTask, StartReason } from "../session.js";
import type { TaskPlan } from "../task-plan.js";

interface Scheduled {
  readonly plan: TaskPlan;
  readonly starts: ArrayLike<number>;
  readonly earliest: readonly number[];
  readonly cooks: number;
  readonly capacityOf: (appliance: string) => number;
}

interface Found {
  readonly kind: StartReason["kind"];
  readonly tasks: readonly number[];
}

/** What keeps a task from starting a minute earlier. A task that could is there by CHOICE. */
function reasonOf(index: number, { plan, starts, earliest, cooks, capacityOf }: Scheduled): Found {
  const { tasks, links, afterLast } = plan;
  const task = tasks[index]!;
  const start = starts[index]!;
  if (start <= earliest[index]!) return { kind: "BEGINNING", tasks: [] };
  const before = links.filter(
    (link) =>
      link.after === index &&
      link.counts === "FROM_FINISH" &&
      starts[link.before]! + tasks[link.before]!.minutes + link.min === start,
  );
  if (before.length > 0) return { kind: "PRECEDENCE", tasks: before.map((link) => link.before) };
  const running = [...tasks.keys()].filter(
    (other) => other !== index && starts[other]! < start && starts[other]! + tasks[other]!.minutes >= start,
  );
  const ending = (uses: (other: number) => boolean) =>
    running.filter((other) => uses(other) && starts[other]! + tasks[other]!.minutes === start);
  const sum = (amount: (other: number) => number) => running.reduce((total, other) => total + amount(other), 0);
  const sameMachine = (other: number) => task.appliance !== null && tasks[other]!.appliance === task.appliance;
  const otherHeat = (other: number) =>
    sharesHeat(task.appliance) && sameMachine(other) && tasks[other]!.step.temperatureC !== task.step.temperatureC;
  if (ending(otherHeat).length > 0) return { kind: "TEMPERATURE", tasks: ending(otherHeat) };
  const units = sum((other) => (sameMachine(other) ? tasks[other]!.units : 0));
  if (task.appliance !== null && units + task.units > capacityOf(task.appliance))
    return { kind: "APPLIANCE", tasks: ending(sameMachine) };
  if (task.cooks > 0 && sum((other) => tasks[other]!.cooks) + task.cooks > cooks)
    return { kind: "HANDS", tasks: ending((other) => tasks[other]!.cooks > 0) };
  const end = start + task.minutes;
  const next = [
    ...links.filter(({ before: b, max, after }) => b === index && max !== null && starts[after]! === end + max),
    ...afterLast
      .filter(({ of, to, max }) => of.includes(index) && starts[to]! === end + max)
      .map(({ to }) => ({ after: to })),
  ];
  if (next.length > 0) return { kind: "GREATEST_WAIT", tasks: next.map(({ after }) => after) };
  return { kind: "CHOICE", tasks: [] };
}

/** The chain of tasks that makes the session as long as it is, from its beginning to the last finish. */
export function criticalPath(scheduled: Scheduled): CriticalTask[] {
  const { plan, starts } = scheduled;
  const endOf = (index: number) => starts[index]! + plan.tasks[index]!.minutes;
  const path: CriticalTask[] = [];
  const seen = new Set<number>();
  let at: number | undefined = [...plan.tasks.keys()].sort((a, b) => endOf(b) - endOf(a) || a - b)[0];
  while (at !== undefined && !seen.has(at)) {
    seen.add(at);
    const { kind, tasks } = reasonOf(at, scheduled);
    path.unshift({ task: plan.tasks[at]!.id, because: { kind, tasks: tasks.map((index) => plan.tasks[index]!.id) } });
    at = tasks.find((index) => !seen.has(index));
  }
  return path;
}
