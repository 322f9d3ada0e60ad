// @ts-nocheck
import { eveningSteps } from "./evening.js";
import type { SessionInput, SessionWork, StepRef } from "./session.js";
import { tasksOfStep, washAfter, workKey, type Task } from "./task.js";

/** `after` starts `min` to `max` minutes after `before` ends (or starts). Indexes into `TaskPlan.tasks`. */
export interface TaskLink {
  readonly before: number;
  readonly after: number;
  readonly min: number;
  readonly max: number | null;
  readonly counts: "FROM_START" | "FROM_FINISH";
}

export interface TaskPlan {
  readonly tasks: readonly Task[];
  readonly links: readonly TaskLink[];
  /** A greatest wait after the last of several tasks. */
  readonly afterLast: readonly { readonly of: readonly number[]; readonly to: number; readonly max: number }[];
}

type StepTasks = ReadonlyMap<string, readonly number[]>;

const keyOf = (ref: StepRef): string => `${workKey(ref)}/${ref.step}`;

/** Whether another step of the session finds something strange in the machine after this one. */
function needsWash(task: Task, steps: readonly Task[]): boolean {
  if (task.appliance === null || (task.step.washMinutes ?? 0) === 0) return false;
  return steps.some(
    (other) =>
      other.appliance === task.appliance &&
      other.step !== task.step &&
      (task.step.leaves === undefined || other.step.leaves !== task.step.leaves),
  );
}

/** The last tasks of a component: those no other step of it waits for; of one without steps, those of what it uses. */
function lastTasks(
  slug: string,
  works: ReadonlyMap<string, SessionWork>,
  at: StepTasks,
  above: readonly string[] = [],
): readonly number[] {
  const work = works.get(slug);
  if (work === undefined || above.includes(slug)) return [];
  if (work.steps.length === 0)
    return work.uses.flatMap(({ component }) => lastTasks(component, works, at, [...above, slug]));
  const waitedFor = new Set(work.steps.flatMap(({ after }) => after));
  return work.steps
    .filter(({ id }) => !waitedFor.has(id))
    .flatMap(({ id }) => at.get(`${slug}/${id}`)?.slice(-1) ?? []);
}

/** Steps that use the line; where no step says so, every step. */
function stepsUsing(work: SessionWork, line: string): readonly string[] {
  const named = work.steps.filter(({ lines }) => lines.includes(line)).map(({ id }) => id);
  return named.length > 0 ? named : work.steps.map(({ id }) => id);
}

function linksInside(work: SessionWork, at: StepTasks): Pick<TaskPlan, "links" | "afterLast"> {
  const links: TaskLink[] = [];
  const afterLast: { of: readonly number[]; to: number; max: number }[] = [];
  for (const step of work.steps) {
    const own = at.get(`${workKey(work)}/${step.id}`) ?? [];
    own.forEach((after, index) => {
      // Loads go on to the next step as they come, as far as its loads need them.
      const before = [...new Set(step.after)].map((id) => {
        const earlier = at.get(`${workKey(work)}/${id}`) ?? [];
        return earlier[Math.ceil(((index + 1) * earlier.length) / own.length) - 1]!;
      });
      const min = Math.ceil(step.minWait);
      const max = step.maxWait === null ? null : Math.max(min, Math.floor(step.maxWait));
      const alone = before.length === 1 ? max : null;
      for (const task of before) links.push({ before: task, after, min, max: alone, counts: "FROM_FINISH" });
      if (before.length > 1 && max !== null) afterLast.push({ of: before, to: after, max });
    });
    // Loads of a step are alike, so taking them in turn loses nothing.
    own.slice(1).forEach((after, index) => {
      links.push({ before: own[index]!, after, min: 0, max: null, counts: "FROM_START" });
    });
  }
  return { links, afterLast };
}

/** The wash follows at once, and the loads before it one after another, so that no other use comes between. */
function withWashes(tasks: readonly Task[], at: StepTasks): { tasks: Task[]; links: TaskLink[] } {
  const all = [...tasks];
  const links: TaskLink[] = [];
  for (const own of at.values()) {
    const last = own.at(-1);
    if (last === undefined || !needsWash(tasks[last]!, tasks)) continue;
    const chain = [...own, all.push(washAfter(tasks[last]!)) - 1];
    chain.slice(1).forEach((after, index) => {
      links.push({ before: chain[index]!, after, min: 0, max: 0, counts: "FROM_FINISH" });
    });
  }
  return { tasks: all, links };
}

/** Steps turned into tasks with every order between them. `evening`: whether soaks may go to the evening before. */
export function taskPlan(input: SessionInput, evening: boolean): TaskPlan {
  const works = new Map(input.work.filter(({ kind }) => kind === "COMPONENT").map((work) => [work.slug, work]));
  const tasks: Task[] = [];
  const at = new Map<string, readonly number[]>();
  for (const work of input.work) {
    const early = evening ? eveningSteps(work) : new Set<string>();
    for (const step of work.steps) {
      const own = tasksOfStep(step, work, input.kitchen, early.has(step.id));
      at.set(
        `${workKey(work)}/${step.id}`,
        own.map((task) => tasks.push(task) - 1),
      );
    }
  }
  const inside = input.work.map((work) => linksInside(work, at));
  const afterFinish = (before: number, after: number): TaskLink => ({
    before,
    after,
    min: 0,
    max: null,
    counts: "FROM_FINISH",
  });
  const between = input.work.flatMap((work) =>
    work.uses.flatMap(({ line, component }) =>
      lastTasks(component, works, at).flatMap((before) =>
        stepsUsing(work, line).flatMap((id) =>
          (at.get(`${workKey(work)}/${id}`) ?? []).map((after) => afterFinish(before, after)),
        ),
      ),
    ),
  );
  const extra = input.extraOrder.flatMap(({ before, after }) =>
    (at.get(keyOf(before)) ?? [])
      .slice(-1)
      .flatMap((first) => (at.get(keyOf(after)) ?? []).map((second) => afterFinish(first, second))),
  );
  const washed = withWashes(tasks, at);
  return {
    tasks: washed.tasks,
    links: [...inside.flatMap(({ links }) => links), ...between, ...extra, ...washed.links],
    afterLast: inside.flatMap((one) => one.afterLast),
  };
}
