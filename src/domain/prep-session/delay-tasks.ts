import type { RcpspProblem } from "./solver/rcpsp-problem.js";

/** Whether a task may start then, all others staying where they are. */
function fits(problem: RcpspProblem, starts: readonly number[], task: number, start: number): boolean {
  const { durations, capacities, demands } = problem;
  const end = start + durations[task]!;
  const beside = starts.flatMap((other, index) =>
    index !== task && other < end && start < other + durations[index]! ? [index] : [],
  );
  const apart = (problem.apart ?? []).some(
    ([a, b]) => (a === task && beside.includes(b)) || (b === task && beside.includes(a)),
  );
  if (apart) return false;
  return capacities.every((capacity, resource) => {
    const own = demands[task]![resource]!;
    if (own === 0) return true;
    // Use only rises where some task starts.
    const moments = [start, ...beside.flatMap((index) => (starts[index]! > start ? [starts[index]!] : []))];
    return moments.every((moment) => {
      const used = beside.reduce((sum, index) => {
        const runs = starts[index]! <= moment && moment < starts[index]! + durations[index]!;
        return runs ? sum + demands[index]![resource]! : sum;
      }, own);
      return used <= capacity;
    });
  });
}

/** The latest start that the waits of a task allow, all others staying where they are; null: nothing holds it. */
function latestBy(problem: RcpspProblem, starts: readonly number[], task: number): number | null {
  const { durations, waits } = problem;
  let latest: number | null = null;
  const hold = (by: number): void => {
    latest = latest === null ? by : Math.min(latest, by);
  };
  for (const { from, to, min, max, counts } of waits) {
    const offset = counts === "FROM_FINISH" ? durations[from]! : 0;
    if (from === task && to !== task) hold(starts[to]! - offset - min);
    if (to === task && max !== null) hold(starts[from]! + offset + max);
  }
  for (const { of, to, max } of problem.afterLast ?? [])
    if (to === task) hold(Math.max(...of.map((each) => starts[each]! + durations[each]!)) + max);
  return latest;
}

/**
 * The same schedule with some tasks as late as what follows them allows: an oven is not lit before it is needed, and what
 * is cooked stands about no longer than it must. Nothing else moves, so the length stays.
 */
export function delayTasks(problem: RcpspProblem, starts: readonly number[], late: readonly number[]): number[] {
  const moved = [...starts];
  const mostWaits = [...late].sort((a, b) => starts[b]! - starts[a]! || b - a);
  for (const task of mostWaits) {
    const follows = problem.waits.some(({ from, counts }) => from === task && counts === "FROM_FINISH");
    const latest = follows ? latestBy(problem, moved, task) : null;
    if (latest === null) continue;
    const bound = Math.min(latest, problem.latestStarts?.[task] ?? latest);
    for (let start = bound; start > moved[task]!; start--)
      if (fits(problem, moved, task, start)) {
        moved[task] = start;
        break;
      }
  }
  return moved;
}
