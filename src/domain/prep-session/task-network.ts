import { runToEnd, unlimitedWork, type InSlices, type Work } from "../counted-work.js";
import type { AfterLast, RcpspProblem } from "./solver/rcpsp-problem.js";

/** No path between two tasks in `distance`. */
export const unreachable = -1_000_000_000;

/**
 * The problem in the form the algorithms read: flat arrays, waits as arcs `start(to) >= start(from) + weight` (a
 * greatest wait is an arc back with a negative weight), and the longest path between any two tasks.
 */
export interface TaskNetwork {
  readonly tasks: number;
  readonly resources: number;
  readonly durations: Int32Array;
  readonly capacities: Int32Array;
  /** Row-major: `demands[task * resources + resource]`. */
  readonly demands: Int32Array;
  readonly arcFrom: Int32Array;
  readonly arcTo: Int32Array;
  readonly arcWeight: Int32Array;
  /** Index into `waits` of the problem that each arc stands for. */
  readonly arcWait: Int32Array;
  /** Row-major longest paths; `unreachable` where there is none. */
  readonly distance: Int32Array;
  /** Pairs that cannot overlap and are not already in order. */
  readonly pairFirst: Int32Array;
  readonly pairSecond: Int32Array;
  readonly afterLast: readonly AfterLast[];
  readonly earliest: Int32Array;
  readonly latest: Int32Array;
  readonly finishTasks: Int32Array;
  /** No schedule of least length ends later: every task after every other, with its longest wait. */
  readonly horizon: number;
}

type NetworkResult =
  | { readonly ok: true; readonly network: TaskNetwork }
  /** Waits (indexes) that form a cycle no schedule can keep. */
  | { readonly ok: false; readonly cycle: readonly number[] };

interface Arcs {
  readonly from: number[];
  readonly to: number[];
  readonly weight: number[];
  readonly wait: number[];
}

function arcsOf(problem: RcpspProblem): Arcs {
  const arcs: Arcs = { from: [], to: [], weight: [], wait: [] };
  const add = (from: number, to: number, weight: number, wait: number) => {
    arcs.from.push(from);
    arcs.to.push(to);
    arcs.weight.push(weight);
    arcs.wait.push(wait);
  };
  problem.waits.forEach((wait, index) => {
    const offset = wait.counts === "FROM_FINISH" ? problem.durations[wait.from]! : 0;
    add(wait.from, wait.to, wait.min + offset, index);
    if (wait.max !== null) add(wait.to, wait.from, -(wait.max + offset), index);
  });
  return arcs;
}

/** Cells of a table that are looked at in one step. */
export const cellsInStep = 700;

/** Floyd and Warshall on longest paths; `via` leads back along each path to name the arcs of a cycle. */
function* longestPaths(
  tasks: number,
  arcs: Arcs,
  work: Work,
): InSlices<{ distance: Int32Array; cycle: readonly number[] | null }> {
  const distance = new Int32Array(tasks * tasks).fill(unreachable);
  const lastArc = new Int32Array(tasks * tasks).fill(-1);
  for (let task = 0; task < tasks; task++) distance[task * tasks + task] = 0;
  for (let arc = 0; arc < arcs.from.length; arc++) {
    const cell = arcs.from[arc]! * tasks + arcs.to[arc]!;
    if (arcs.from[arc] === arcs.to[arc] && arcs.weight[arc]! > 0) return { distance, cycle: [arcs.wait[arc]!] };
    if (arcs.weight[arc]! <= distance[cell]!) continue;
    distance[cell] = arcs.weight[arc]!;
    lastArc[cell] = arc;
  }
  for (let middle = 0; middle < tasks; middle++) {
    work.step((tasks * tasks) / cellsInStep);
    yield;
    for (let from = 0; from < tasks; from++) {
      const head = distance[from * tasks + middle]!;
      if (head === unreachable) continue;
      for (let to = 0; to < tasks; to++) {
        const tail = distance[middle * tasks + to]!;
        if (tail === unreachable || head + tail <= distance[from * tasks + to]!) continue;
        distance[from * tasks + to] = head + tail;
        lastArc[from * tasks + to] = middle === to ? lastArc[from * tasks + to]! : lastArc[middle * tasks + to]!;
        if (from === to) return { distance, cycle: cycleThrough(from, tasks, arcs, lastArc) };
      }
    }
  }
  return { distance, cycle: null };
}

function cycleThrough(task: number, tasks: number, arcs: Arcs, lastArc: Int32Array): readonly number[] {
  const waits: number[] = [];
  let at = task;
  for (let steps = 0; steps <= arcs.from.length; steps++) {
    const arc = lastArc[task * tasks + at]!;
    if (arc < 0) break;
    waits.unshift(arcs.wait[arc]!);
    at = arcs.from[arc]!;
    if (at === task) break;
  }
  return [...new Set(waits)];
}

function pairsOf(problem: RcpspProblem, distance: Int32Array): { first: number[]; second: number[] } {
  const tasks = problem.durations.length;
  const apart = new Set((problem.apart ?? []).map(([a, b]) => Math.min(a, b) * tasks + Math.max(a, b)));
  const first: number[] = [];
  const second: number[] = [];
  for (let a = 0; a < tasks; a++)
    for (let b = a + 1; b < tasks; b++) {
      const [lengthA, lengthB] = [problem.durations[a]!, problem.durations[b]!];
      if (lengthA === 0 || lengthB === 0) continue;
      if (distance[a * tasks + b]! >= lengthA || distance[b * tasks + a]! >= lengthB) continue;
      const clash = problem.capacities.some(
        (capacity, r) => problem.demands[a]![r]! + problem.demands[b]![r]! > capacity,
      );
      if (!clash && !apart.has(a * tasks + b)) continue;
      first.push(a);
      second.push(b);
    }
  return { first, second };
}

/** Longest waits out of each task, added up: the classic bound on the length of a shortest schedule. */
function horizonOf(problem: RcpspProblem, arcs: Arcs): number {
  const longest = problem.durations.map((duration) => duration);
  arcs.from.forEach((from, arc) => (longest[from] = Math.max(longest[from]!, arcs.weight[arc]!)));
  return longest.reduce((sum, length) => sum + length, 0) + Math.max(0, ...(problem.earliestStarts ?? []));
}

/** Checks the waits against each other and lays the problem out. `finish`: see `SolveOptions`. */
export const taskNetwork = (problem: RcpspProblem, finish?: readonly number[]): NetworkResult =>
  runToEnd(layOut(problem, finish, unlimitedWork));

/** The same turn by turn. */
export function* layOut(
  problem: RcpspProblem,
  finish: readonly number[] | undefined,
  work: Work,
): InSlices<NetworkResult> {
  const tasks = problem.durations.length;
  const arcs = arcsOf(problem);
  const { distance, cycle } = yield* longestPaths(tasks, arcs, work);
  if (cycle !== null) return { ok: false, cycle };
  const pairs = pairsOf(problem, distance);
  const horizon = horizonOf(problem, arcs);
  const latest = Int32Array.from(problem.durations, (_, task) => problem.latestStarts?.[task] ?? horizon);
  return {
    ok: true,
    network: {
      tasks,
      resources: problem.capacities.length,
      durations: Int32Array.from(problem.durations),
      capacities: Int32Array.from(problem.capacities),
      demands: Int32Array.from(problem.demands.flat()),
      arcFrom: Int32Array.from(arcs.from),
      arcTo: Int32Array.from(arcs.to),
      arcWeight: Int32Array.from(arcs.weight),
      arcWait: Int32Array.from(arcs.wait),
      distance,
      pairFirst: Int32Array.from(pairs.first),
      pairSecond: Int32Array.from(pairs.second),
      afterLast: problem.afterLast ?? [],
      earliest: Int32Array.from(problem.durations, (_, task) => problem.earliestStarts?.[task] ?? 0),
      latest,
      finishTasks: Int32Array.from(finish ?? problem.durations.keys()),
      horizon,
    },
  };
}
