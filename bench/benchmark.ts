/** One line of what `npm run bench` prints. `ratio` is against a baseline measured in the same run. */
export interface BenchmarkResult {
  readonly name: string;
  readonly ratio: number;
  readonly aim: string;
  readonly met: boolean;
  readonly detail: string;
}

export interface BenchmarkOptions {
  /** How long what takes its time is watched. */
  readonly minutes: number;
}

export interface Benchmark {
  readonly name: string;
  /** Only when it is asked for by name. */
  readonly isLong?: true;
  run(options: BenchmarkOptions): Promise<readonly BenchmarkResult[]>;
}

export const median = (values: readonly number[]): number => {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
};

/** Milliseconds of one call, so often that it can be told from nothing. */
function timed(work: () => unknown): number {
  let calls = 1;
  for (;;) {
    const start = performance.now();
    for (let call = 0; call < calls; call++) work();
    const took = performance.now() - start;
    if (took > 20 || calls >= 1e6) return took / calls;
    calls *= took > 2 ? Math.ceil(25 / took) : 10;
  }
}

/**
 * Median milliseconds of one call of each, in rounds that take turns, so that a noisy moment hits all of them alike. The first rounds
 * warm up and do not count.
 */
export function compared(works: readonly (() => unknown)[], rounds = 15): readonly number[] {
  const times = works.map((): number[] => []);
  for (let round = -3; round < rounds; round++) {
    works.forEach((work, at) => {
      const took = timed(work);
      if (round >= 0) times[at]?.push(took);
    });
  }
  return times.map(median);
}

export const result = (
  name: string,
  ratio: number,
  aim: { readonly atMost?: number; readonly atLeast?: number },
  detail: string,
): BenchmarkResult => ({
  name,
  ratio,
  aim: aim.atMost === undefined ? `>= ${aim.atLeast ?? 0}` : `<= ${aim.atMost}`,
  met: ratio <= (aim.atMost ?? Infinity) && ratio >= (aim.atLeast ?? -Infinity),
  detail,
});
