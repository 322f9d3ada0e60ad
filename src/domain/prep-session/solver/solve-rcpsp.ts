import { runToEnd, unlimitedWork, type InSlices } from "../../counted-work.js";
import { BoundSearch } from "./bound-search.js";
import { lowerBound } from "./lower-bounds.js";
import type { Obstacle, RcpspAnswer, RcpspProblem, SolveOptions } from "./rcpsp-problem.js";
import { finishOf, startSchedule } from "./start-schedule.js";
import type { TaskNetwork } from "../task-network.js";
import { layOut } from "../task-network.js";

/**
 * Finds a schedule whose last finish is least, and proves it where the limits allow. The same problem and limits
 * always give the same schedule, unless `shouldStop` cuts in. Durations, waits and demands are whole numbers.
 * "INFEASIBLE" names greatest waits, windows or demands of which no schedule keeps all.
 */
export const solveRcpsp = (problem: RcpspProblem, options: SolveOptions = {}): RcpspAnswer =>
  runToEnd(solveInSlices(problem, options));

/** The same turn by turn. */
export function* solveInSlices(problem: RcpspProblem, options: SolveOptions): InSlices<RcpspAnswer> {
  const tooMuch = excessDemands(problem);
  if (tooMuch.length > 0) return { status: "INFEASIBLE", obstacles: tooMuch, conflicts: 0 };
  const laid = yield* layOut(problem, options.finish, options.work ?? unlimitedWork);
  if (!laid.ok) {
    const obstacles = laid.cycle.map((index): Obstacle => ({ kind: "WAIT", wait: problem.waits[index]! }));
    return { status: "INFEASIBLE", obstacles, conflicts: 0 };
  }
  const answer = yield* searched(laid.network, options);
  if (answer.status !== "INFEASIBLE" || options.explain === false) return answer;
  return { ...answer, obstacles: yield* obstaclesOf(problem, options) };
}

function* searched(network: TaskNetwork, options: SolveOptions): InSlices<RcpspAnswer> {
  const { work = unlimitedWork, shouldStop = never } = options;
  const bound = yield* lowerBound(network, work);
  const known = options.knownStarts === undefined ? null : Int32Array.from(options.knownStarts);
  const limits = { work, shouldStop };
  const start = known ?? (yield* startSchedule(network, bound, network.tasks, options.seed ?? 1, limits));
  const startFinish = start === null ? network.horizon + 1 : finishOf(network, start);
  if (start !== null && startFinish <= bound)
    return { status: "OPTIMAL", starts: [...start], finish: startFinish, lowerBound: startFinish, conflicts: 0 };
  // To begin the search takes long where there are many tasks.
  if (start === null && shouldStop()) return { status: "UNKNOWN", lowerBound: bound, conflicts: 0 };
  if (start !== null && shouldStop())
    return { status: "FEASIBLE", starts: [...start], finish: startFinish, lowerBound: bound, conflicts: 0 };
  const search = new BoundSearch(network, bound, startFinish - 1, start);
  const end = yield* search.run({ conflictLimit: options.conflictLimit ?? 200_000, ...limits });
  const { conflicts } = search;
  const best = search.best ?? start;
  if (best === null)
    return end === "PROVED"
      ? { status: "INFEASIBLE", obstacles: [], conflicts }
      : { status: "UNKNOWN", lowerBound: search.provedBound(), conflicts };
  const finish = finishOf(network, best);
  const proved = end === "PROVED" ? finish : Math.min(search.provedBound(), finish);
  return {
    status: proved === finish ? "OPTIMAL" : "FEASIBLE",
    starts: [...best],
    finish,
    lowerBound: proved,
    conflicts,
  };
}

const never = (): boolean => false;

function excessDemands(problem: RcpspProblem): Obstacle[] {
  return problem.demands.flatMap((row, task) =>
    row.flatMap((need, resource): Obstacle[] =>
      need > problem.capacities[resource]! && problem.durations[task]! > 0 ? [{ kind: "DEMAND", task, resource }] : [],
    ),
  );
}

/** Obstacles small enough that leaving any one of them out makes a schedule possible; more of them when told to stop. */
function* obstaclesOf(problem: RcpspProblem, options: SolveOptions): InSlices<readonly Obstacle[]> {
  const all: Obstacle[] = [
    ...problem.waits.flatMap((wait): Obstacle[] => (wait.max === null ? [] : [{ kind: "WAIT", wait }])),
    ...(problem.afterLast ?? []).map((wait): Obstacle => ({ kind: "AFTER_LAST", wait })),
    ...(problem.latestStarts ?? []).flatMap((latest, task): Obstacle[] =>
      latest === null ? [] : [{ kind: "LATEST_START", task, latest }],
    ),
  ];
  let kept = all;
  for (const obstacle of all) {
    if (options.shouldStop?.() ?? false) break;
    const fewer = kept.filter((other) => other !== obstacle);
    const laid = yield* layOut(withOnly(problem, fewer), options.finish, options.work ?? unlimitedWork);
    if (!laid.ok || (yield* isImpossible(laid.network, options))) kept = fewer;
  }
  return kept;
}

function* isImpossible(network: TaskNetwork, options: SolveOptions): InSlices<boolean> {
  const search = new BoundSearch(network, 0, network.horizon, null);
  const stopped = () => search.best !== null || (options.shouldStop?.() ?? false);
  const { work = unlimitedWork } = options;
  const end = yield* search.run({ conflictLimit: 20_000, shouldStop: stopped, work });
  return end === "PROVED" && search.best === null;
}

function withOnly(problem: RcpspProblem, obstacles: readonly Obstacle[]): RcpspProblem {
  const kept = new Set(
    obstacles.map((obstacle) =>
      obstacle.kind === "LATEST_START" ? obstacle.task : obstacle.kind === "DEMAND" ? null : obstacle.wait,
    ),
  );
  return {
    ...problem,
    waits: problem.waits.map((wait) => (kept.has(wait) ? wait : { ...wait, max: null })),
    afterLast: (problem.afterLast ?? []).filter((wait) => kept.has(wait)),
    latestStarts: (problem.latestStarts ?? []).map((latest, task) => (kept.has(task) ? latest : null)),
  };
}
