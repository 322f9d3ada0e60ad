import { eveningSteps } from "./evening-steps.js";
import type { SessionInput, SessionLimit, SessionWork, StepRef } from "./session.js";
import { stepsBefore } from "./heating.js";
import { handlesSame, takenTogether, tasksOfStep, washAfter, workKey, type Loads, type Task } from "./task.js";

/** `after` starts `min` to `max` minutes after `before` ends (or starts). Indexes into `TaskPlan.tasks`. */
interface TaskLink {
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

/**
 * The last tasks of a component: those no other step of it waits for; of one without steps, those of what it uses. Taken
 * warm, the steps that put it into the cold do not count.
 */
function lastTasks(
  { component: slug, warm = false }: SessionWork["uses"][number],
  works: ReadonlyMap<string, SessionWork>,
  at: StepTasks,
  above: readonly string[] = [],
): readonly number[] {
  const work = works.get(slug);
  if (work === undefined || above.includes(slug)) return [];
  if (work.steps.length === 0)
    return work.uses.flatMap((use) => lastTasks({ ...use, warm }, works, at, [...above, slug]));
  const steps = work.steps.filter(({ id }) => !(warm && work.chills?.includes(id) === true));
  const waitedFor = new Set(steps.flatMap(({ after }) => after));
  return steps.filter(({ id }) => !waitedFor.has(id)).flatMap(({ id }) => at.get(`${slug}/${id}`) ?? []);
}

/** Steps that use the line; where no step says so, every step. */
function stepsUsing(work: SessionWork, line: string): readonly string[] {
  const named = work.steps.filter(({ lines }) => lines.includes(line)).map(({ id }) => id);
  return named.length > 0 ? named : work.steps.map(({ id }) => id);
}

/**
 * The latest start of a task after another of which it handles loads, counted from the other's end: `max` holds from the
 * end of each load until the work on it begins or ends. Where either runs its loads in turn, the first and the last decide.
 */
function latestAfter(
  before: Task,
  after: Task,
  { max, since = "END", until }: Pick<SessionLimit, "max" | "since" | "until">,
): number {
  const [first, last] = until === "START" ? [0, after.minutes - after.round] : [after.round, after.minutes];
  const [firstSince, lastSince] = since === "END" ? [before.round, before.minutes] : [0, before.minutes - before.round];
  // Where either runs in turn, its last loads are the other's last.
  return Math.floor(max) - Math.max(before.minutes - firstSince + first, before.minutes - lastSince + last);
}

/** Orders between the steps of one work: loads go on to the next step as they come, as far as its loads need them. */
function linksInside(work: SessionWork, tasks: readonly Task[], at: StepTasks): Pick<TaskPlan, "links" | "afterLast"> {
  const links: TaskLink[] = [];
  const afterLast: { of: readonly number[]; to: number; max: number }[] = [];
  for (const step of work.steps) {
    const own = at.get(`${workKey(work)}/${step.id}`) ?? [];
    const earlier = [...new Set(step.after)];
    const min = Math.ceil(step.minWait);
    for (const after of own) {
      const before = earlier.flatMap((id) =>
        (at.get(`${workKey(work)}/${id}`) ?? []).filter((task) => handlesSame(tasks[task]!, tasks[after]!)),
      );
      const longest = step.maxWait === null ? null : Math.max(min, step.maxWait);
      for (const task of before) {
        const alone = longest !== null && earlier.length === 1;
        const max = alone ? latestAfter(tasks[task]!, tasks[after]!, { max: longest, until: "START" }) : null;
        links.push({ before: task, after, min, max, counts: "FROM_FINISH" });
      }
      if (longest !== null && earlier.length > 1) afterLast.push({ of: before, to: after, max: Math.floor(longest) });
    }
    // Loads of a step are alike, so taking them in turn loses nothing.
    own.slice(1).forEach((after, index) => {
      links.push({ before: own[index]!, after, min: 0, max: null, counts: "FROM_START" });
    });
  }
  return { links, afterLast };
}

/** Of two works nobody says which loads go into which, so a limit between them holds for all. */
const limitLinks = (limits: readonly SessionLimit[], tasks: readonly Task[], at: StepTasks): TaskLink[] =>
  limits.flatMap((limit) =>
    (at.get(keyOf(limit.from)) ?? []).flatMap((before) =>
      (at.get(keyOf(limit.to)) ?? [])
        .filter((after) => workKey(limit.from) !== workKey(limit.to) || handlesSame(tasks[before]!, tasks[after]!))
        .map((after): TaskLink => {
          const max = latestAfter(tasks[before]!, tasks[after]!, limit);
          return { before, after, min: 0, max, counts: "FROM_FINISH" };
        }),
    ),
  );

/** Steps whose end some greatest wait counts from. */
function awaitedSteps({ work, limits }: SessionInput): ReadonlySet<string> {
  const written = work.flatMap((one) =>
    one.steps.flatMap(({ after, maxWait }) => (maxWait === null ? [] : after.map((id) => `${workKey(one)}/${id}`))),
  );
  return new Set([...written, ...(limits ?? []).map(({ from }) => keyOf(from))]);
}

/** A step after those it follows, as far as they are of the same work; rings are the solver's to find. */
function inOrder({ steps }: SessionWork): SessionWork["steps"] {
  const byId = new Map(steps.map((step) => [step.id, step]));
  const found = new Set<SessionWork["steps"][number]>();
  const open = new Set<string>();
  const visit = (id: string): void => {
    const step = byId.get(id);
    if (step === undefined || open.has(id)) return;
    open.add(id);
    for (const before of step.after) visit(before);
    found.add(step);
  };
  for (const { id } of steps) visit(id);
  return [...found];
}

const finer = (one: readonly Loads[] | null, other: readonly Loads[] | null): readonly Loads[] | null =>
  (other?.length ?? 0) > (one?.length ?? 0) ? other : one;

/** All tasks of a work, in the order of its steps. */
function tasksOfWork(work: SessionWork, input: SessionInput, early: ReadonlySet<string>, awaited: ReadonlySet<string>) {
  const byStep = new Map<string, readonly Task[]>();
  const comes = new Map<string, readonly Loads[] | null>();
  for (const step of inOrder(work)) {
    const later = work.steps.filter((each) => step.byLoad === true && stepsBefore(each, work.steps).has(step));
    const goesOn = later.map((each) =>
      takenTogether(each, work, {
        kitchen: input.kitchen,
        awaited: awaited.has(`${workKey(work)}/${each.id}`),
      }),
    );
    const own = tasksOfStep(step, work, {
      kitchen: input.kitchen,
      eveningBefore: early.has(step.id),
      awaited: awaited.has(`${workKey(work)}/${step.id}`),
      comesIn: step.after.map((id) => comes.get(id) ?? null).reduce(finer, null),
      goesOnIn: goesOn.reduce(finer, null),
    });
    byStep.set(step.id, own);
    const loads = own.flatMap(({ load }) => load ?? []);
    comes.set(step.id, loads.length > 0 ? loads : null);
  }
  return work.steps.map((step) => ({ step, own: byStep.get(step.id) ?? [] }));
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
  const awaited = awaitedSteps(input);
  for (const work of input.work) {
    const early = evening ? eveningSteps(work) : new Set<string>();
    for (const { step, own } of tasksOfWork(work, input, early, awaited)) {
      at.set(
        `${workKey(work)}/${step.id}`,
        own.map((task) => tasks.push(task) - 1),
      );
    }
  }
  const inside = input.work.map((work) => linksInside(work, tasks, at));
  const afterFinish = (before: number, after: number): TaskLink => ({
    before,
    after,
    min: 0,
    max: null,
    counts: "FROM_FINISH",
  });
  const between = input.work.flatMap((work) =>
    work.uses.flatMap((use) =>
      lastTasks(use, works, at).flatMap((before) =>
        stepsUsing(work, use.line).flatMap((id) =>
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
    links: [
      ...inside.flatMap(({ links }) => links),
      ...between,
      ...extra,
      ...limitLinks(input.limits ?? [], tasks, at),
      ...washed.links,
    ],
    afterLast: inside.flatMap((one) => one.afterLast),
  };
}
