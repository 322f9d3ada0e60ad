import { runToEnd, unlimitedWork, type InSlices } from "../counted-work.js";
import { failed, ok, type Problem, type Result } from "../problem.js";
import { criticalPath } from "./solver/critical-path.js";
import { clockOf, eveningWindow } from "./evening-steps.js";
import { assignResources } from "./assign-resources.js";
import { kitchenProblem, type KitchenProblem } from "./kitchen-problem.js";
import type { Obstacle, RcpspAnswer, RcpspProblem } from "./solver/rcpsp-problem.js";
import { checkSession, workPath } from "./session-problem.js";
import type { PrepSession, SessionBudget, SessionInput, SessionTask } from "./session.js";
import { solveInSlices } from "./solver/solve-rcpsp.js";
import { delayTasks } from "./delay-tasks.js";
import { tightened } from "./solver/start-schedule.js";
import { layOut } from "./task-network.js";
import { taskPlan, type TaskPlan } from "./task-plan.js";

/** Longer work than this (about five weeks in a row) is a mistake in the input, not a session. */
const mostMinutes = 50_000;
/** More than these fit no kitchen's day, and the longest ways between them alone would take seconds to work out. */
const mostTasks = 500;
/** Up to here the search goes on until the optimum is proved. */
const smallSession = 30;
const conflictsOf = (tasks: number): number => (tasks <= smallSession ? 200_000 : 5_000);

type Solved = Extract<RcpspAnswer, { status: "OPTIMAL" | "FEASIBLE" }>;

interface Timetable {
  readonly starts: readonly number[];
  readonly length: Solved;
  readonly handsFreeOptimal: boolean;
}

/**
 * Orders the work of a session. First the session is as short as it can be; then, of all sessions that short, one that
 * frees the hands earliest (the last hands-on task ends as early as possible); then every task is moved as early as
 * its order allows, and what runs alone as late as the next step allows. Tasks that may be done the evening before are done then, unless their waits forbid it.
 * Problems: broken input, steps in a circle, waits that no order keeps, more work than fits five weeks.
 */
export const planSession = (input: SessionInput, budget: SessionBudget = {}): Result<PrepSession> =>
  runToEnd(planInSlices(input, budget));

/** The same turn by turn. */
export function* planInSlices(input: SessionInput, budget: SessionBudget): InSlices<Result<PrepSession>> {
  const checked = checkSession(input);
  if (!checked.ok) return checked;
  const ordered = yield* orderWork(input, budget);
  return ordered.ok ? ok(withClockTimes(ordered.value, input.start)) : ordered;
}

/** The same session with the times of its tasks on the clock. @param start read or checked already */
export function withClockTimes(session: PrepSession, start: SessionInput["start"]): PrepSession {
  const at = clockOf(start);
  const tasks = session.tasks.map((task) => ({ ...task, startsAt: at(task.startMinute), endsAt: at(task.endMinute) }));
  return { ...session, tasks };
}

function* orderWork(input: SessionInput, budget: SessionBudget): InSlices<Result<PrepSession>> {
  const early = taskPlan(input, true);
  const first = yield* attempt(early, input, budget);
  if (first.ok || !early.tasks.some((task) => task.eveningBefore)) return first;
  const second = yield* attempt(taskPlan(input, false), input, budget);
  return second.ok ? second : first;
}

function* attempt(plan: TaskPlan, input: SessionInput, budget: SessionBudget): InSlices<Result<PrepSession>> {
  if (plan.tasks.length > mostTasks)
    return failed([{ code: "TOO_LARGE", path: [], what: "tasks", size: plan.tasks.length, limit: mostTasks }]);
  const minutes = plan.tasks.reduce((sum, task) => sum + task.minutes, 0);
  if (minutes > mostMinutes)
    return failed([{ code: "TOO_LARGE", path: [], what: "minutes of work", size: minutes, limit: mostMinutes }]);
  const kitchen = kitchenProblem(plan, input, eveningWindow(input));
  const answer = yield* solveInSlices(kitchen.problem, limitsOf(budget, plan.tasks.length));
  if (answer.status === "INFEASIBLE") return failed([impossible(plan, kitchen.problem, answer.obstacles)]);
  if (answer.status === "UNKNOWN")
    return failed([
      { code: "TOO_LARGE", path: [], what: "tasks with tight waits", size: plan.tasks.length, limit: smallSession },
    ]);
  return ok(sessionOf(plan, input, kitchen, yield* timetable(plan, kitchen, answer, budget)));
}

const limitsOf = ({ conflictLimit, shouldStop, work, explain }: SessionBudget, tasks: number) => ({
  conflictLimit: conflictLimit ?? conflictsOf(tasks),
  ...(shouldStop === undefined ? {} : { shouldStop }),
  ...(work === undefined ? {} : { work }),
  ...(explain === undefined ? {} : { explain }),
});

/** The second aim: within the length found, the last hands-on task of the day ends as early as it can. */
function* timetable(
  plan: TaskPlan,
  { problem }: KitchenProblem,
  length: Solved,
  budget: SessionBudget,
): InSlices<Timetable> {
  const hands = [...plan.tasks.keys()].filter((i) => plan.tasks[i]!.cooks > 0 && !plan.tasks[i]!.eveningBefore);
  const bounded: RcpspProblem = {
    ...problem,
    latestStarts: problem.durations.map((duration, task) =>
      Math.min(length.finish - duration, problem.latestStarts?.[task] ?? Number.POSITIVE_INFINITY),
    ),
  };
  const freed =
    hands.length === 0
      ? null
      : yield* solveInSlices(bounded, {
          ...limitsOf(budget, plan.tasks.length),
          finish: hands,
          knownStarts: length.starts,
        });
  const solved = freed !== null && (freed.status === "OPTIMAL" || freed.status === "FEASIBLE") ? freed : null;
  const starts = solved?.starts ?? length.starts;
  const laid = yield* layOut(bounded, hands, budget.work ?? unlimitedWork);
  return {
    starts: laid.ok ? [...tightened(laid.network, Int32Array.from(starts))] : starts,
    length,
    handsFreeOptimal: hands.length === 0 || solved?.status === "OPTIMAL",
  };
}

function impossible(plan: TaskPlan, problem: RcpspProblem, obstacles: readonly Obstacle[]): Problem {
  const involved = obstacles.flatMap((obstacle): readonly number[] => {
    if (obstacle.kind === "WAIT") return [obstacle.wait.from, obstacle.wait.to];
    if (obstacle.kind === "AFTER_LAST") return [...obstacle.wait.of, obstacle.wait.to];
    return [obstacle.task];
  });
  const ids = [...new Set(involved)].map((index) => plan.tasks[index]!.id);
  const [first] = involved;
  const path = first === undefined ? [] : [...workPath(plan.tasks[first]!.work), "steps", plan.tasks[first]!.step.id];
  return isCircle(obstacles)
    ? { code: "STEPS_IN_A_CIRCLE", path, steps: ids }
    : { code: "WAITS_CANNOT_BE_KEPT", path, steps: ids };
}

/** Without any greatest wait among them, the steps wait for one another in a ring. */
const isCircle = (obstacles: readonly Obstacle[]): boolean =>
  obstacles.length > 0 && obstacles.every((obstacle) => obstacle.kind === "WAIT" && obstacle.wait.max === null);

function sessionOf(plan: TaskPlan, input: SessionInput, kitchen: KitchenProblem, timetable: Timetable): PrepSession {
  const { tasks } = plan;
  const { sessionStart, problem } = kitchen;
  const early = timetable.starts.map((start) => start - sessionStart);
  const late = [...tasks.keys()].filter((index) => tasks[index]!.cooks === 0 && !tasks[index]!.eveningBefore);
  const starts = delayTasks(problem, timetable.starts, late).map((start) => start - sessionStart);
  const capacityOf = (appliance: string) => input.kitchen.appliances[appliance] ?? 1;
  const given = assignResources(plan, starts, capacityOf, input.kitchen.cooks);
  const sessionTasks = tasks.map((task, index): SessionTask => {
    const startMinute = starts[index]!;
    const endMinute = startMinute + task.minutes;
    return {
      id: task.id,
      kind: task.kind,
      of: { kind: task.work.kind, slug: task.work.slug, title: task.work.title },
      step: task.step.id,
      text: task.step.text,
      attention: task.cooks > 0 ? "HANDS_ON" : "UNATTENDED",
      startMinute,
      endMinute,
      startsAt: null,
      endsAt: null,
      cooks: given[index]!.cooks,
      appliance: task.appliance,
      lanes: given[index]!.lanes,
      temperatureC: task.kind === "WASH" ? null : task.step.temperatureC,
      load: task.load,
      eveningBefore: task.eveningBefore,
    };
  });
  const byStart = [...sessionTasks].sort((a, b) => a.startMinute - b.startMinute || (a.id < b.id ? -1 : 1));
  const hands = sessionTasks.filter(({ attention }) => attention === "HANDS_ON");
  const total = Math.max(0, ...sessionTasks.map(({ endMinute }) => endMinute));
  const bound = Math.min(total, Math.max(0, timetable.length.lowerBound - sessionStart));
  const earliest = problem.earliestStarts!.map((start) => start - sessionStart);
  return {
    tasks: byStart,
    totalMinutes: total,
    handsOnMinutes: tasks.reduce((sum, task) => sum + task.minutes * task.cooks, 0),
    handsFreeMinute: Math.max(0, ...hands.map(({ endMinute }) => endMinute)),
    criticalPath: criticalPath({ plan, starts: early, earliest, cooks: input.kitchen.cooks, capacityOf }),
    order: plan.links
      .filter(({ counts }) => counts === "FROM_FINISH")
      .map(({ before, after, min, max }) => ({
        before: tasks[before]!.id,
        after: tasks[after]!.id,
        minWait: min,
        maxWait: max,
      })),
    eveningBefore: byStart.filter(({ eveningBefore }) => eveningBefore).map(({ id }) => id),
    assumedAppliances: [...new Set(tasks.flatMap(({ appliance }) => appliance ?? []))].filter(
      (appliance) => input.kitchen.appliances[appliance] === undefined,
    ),
    optimal: timetable.length.status === "OPTIMAL",
    handsFreeOptimal: timetable.handsFreeOptimal,
    lowerBoundMinutes: bound,
    gap: bound === 0 ? 0 : (total - bound) / bound,
  };
}
