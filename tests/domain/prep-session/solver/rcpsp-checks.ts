import type { RcpspProblem } from "../../../../src/domain/prep-session/solver/rcpsp-problem.js";

/** Everything a schedule breaks, checked unit of time by unit of time. */
export function scheduleFaults(problem: RcpspProblem, starts: readonly number[]): string[] {
  const faults: string[] = [];
  const { durations, capacities, demands } = problem;
  const end = (task: number) => starts[task]! + durations[task]!;
  for (const { from, to, min, max, counts } of problem.waits) {
    const gap = starts[to]! - (counts === "FROM_FINISH" ? end(from) : starts[from]!);
    if (gap < min || (max !== null && gap > max)) faults.push(`wait ${from} to ${to}: ${gap}`);
  }
  const length = Math.max(0, ...durations.map((_, task) => end(task)));
  for (let time = 0; time < length; time++) {
    const running = durations.flatMap((_, task) => (starts[task]! <= time && time < end(task) ? [task] : []));
    capacities.forEach((capacity, resource) => {
      const need = running.reduce((sum, task) => sum + demands[task]![resource]!, 0);
      if (need > capacity) faults.push(`resource ${resource} at ${time}: ${need} of ${capacity}`);
    });
    for (const [a, b] of problem.apart ?? [])
      if (running.includes(a) && running.includes(b)) faults.push(`${a} and ${b} together at ${time}`);
  }
  for (const { of, to, max } of problem.afterLast ?? [])
    if (starts[to]! > Math.max(...of.map(end)) + max) faults.push(`${to} too long after the last of ${of.join(" ")}`);
  starts.forEach((start, task) => {
    if (start < (problem.earliestStarts?.[task] ?? 0)) faults.push(`${task} too early`);
    if (start > (problem.latestStarts?.[task] ?? Number.POSITIVE_INFINITY)) faults.push(`${task} too late`);
  });
  return faults;
}

/** The least length by trying every start of every task up to `horizon`; null if no schedule keeps everything. */
export function leastLength(problem: RcpspProblem, horizon: number): number | null {
  const { durations, capacities, demands } = problem;
  const tasks = durations.length;
  const starts = new Array<number>(tasks).fill(0);
  const used = capacities.map(() => new Array<number>(horizon).fill(0));
  const waitsUpTo = durations.map((_, task) => problem.waits.filter(({ from, to }) => Math.max(from, to) === task));
  const apartUpTo = durations.map((_, task) => (problem.apart ?? []).filter(([a, b]) => Math.max(a, b) === task));
  let best: number | null = null;
  const keepsWaits = (task: number): boolean =>
    waitsUpTo[task]!.every(({ from, to, min, max, counts }) => {
      const gap = starts[to]! - starts[from]! - (counts === "FROM_FINISH" ? durations[from]! : 0);
      return gap >= min && (max === null || gap <= max);
    }) &&
    apartUpTo[task]!.every(
      ([a, b]) =>
        durations[a] === 0 ||
        durations[b] === 0 ||
        starts[a]! + durations[a]! <= starts[b]! ||
        starts[b]! + durations[b]! <= starts[a]!,
    );
  const occupy = (task: number, sign: 1 | -1): boolean => {
    let within = true;
    for (let time = starts[task]!; time < starts[task]! + durations[task]!; time++)
      capacities.forEach((capacity, resource) => {
        used[resource]![time]! += sign * demands[task]![resource]!;
        if (used[resource]![time]! > capacity) within = false;
      });
    return within;
  };
  const place = (task: number, length: number): void => {
    if (task === tasks) {
      const late = (problem.afterLast ?? []).some(
        ({ of, to, max }) => starts[to]! > Math.max(...of.map((other) => starts[other]! + durations[other]!)) + max,
      );
      if (!late) best = length;
      return;
    }
    const last = Math.min(horizon - durations[task]!, problem.latestStarts?.[task] ?? horizon);
    for (let start = problem.earliestStarts?.[task] ?? 0; start <= last; start++) {
      const longer = Math.max(length, start + durations[task]!);
      if (best !== null && longer >= best) return;
      starts[task] = start;
      if (!keepsWaits(task)) continue;
      if (occupy(task, 1)) place(task + 1, longer);
      occupy(task, -1);
    }
  };
  place(0, 0);
  return best;
}
