import { readFileSync } from "node:fs";
import type { Step } from "../src/domain/model/component.js";
import { randomGenerator } from "../src/domain/prep-session/solver/random-generator.js";
import type { RcpspProblem } from "../src/domain/prep-session/solver/rcpsp-problem.js";
import { ScheduleGenerator } from "../src/domain/prep-session/solver/schedule-generation.js";
import { planSession } from "../src/domain/prep-session/schedule.js";
import type { SessionInput, SessionWork } from "../src/domain/prep-session/session.js";
import { solveRcpsp } from "../src/domain/prep-session/solver/solve-rcpsp.js";
import { taskNetwork } from "../src/domain/prep-session/task-network.js";
import { result, type Benchmark, type BenchmarkResult } from "./benchmark.js";

interface Instance {
  readonly name: string;
  readonly optimum: number;
  readonly capacity: number[];
  readonly jobs: readonly { readonly d: number; readonly r: number[]; readonly next: number[] }[];
}

/** PSPLIB set j30 with its optimal makespans (R. Kolisch, A. Sprecher, European Journal of Operational Research 96, 1996). */
function instances(): readonly Instance[] {
  const text = readFileSync(new URL("data/psplib-j30.json", import.meta.url), "utf8");
  return (JSON.parse(text) as { instances: Instance[] }).instances;
}

const projectOf = ({ capacity, jobs }: Instance): RcpspProblem => ({
  durations: jobs.map(({ d }) => d),
  capacities: capacity,
  demands: jobs.map(({ r }) => r),
  waits: jobs.flatMap(({ next }, job) =>
    next.map((other) => ({ from: job, to: other - 1, min: 0, max: null, counts: "FROM_FINISH" as const })),
  ),
});

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!;
}

/** Length of the plain serial schedule in the order of the tasks: what a cook does who starts whatever comes first. */
function plainLength(problem: RcpspProblem): number {
  const laid = taskNetwork(problem);
  if (!laid.ok) throw new Error("the instance has a cycle");
  const starts = new ScheduleGenerator(laid.network, "FORWARD").build([...problem.durations.keys()], null);
  if (starts === null) throw new Error("the instance does not fit its horizon");
  return Math.max(...problem.durations.map((duration, task) => starts[task]! + duration));
}

interface Run {
  readonly milliseconds: number;
  readonly proved: boolean;
  /** Share above the optimum. */
  readonly distance: number;
  readonly plain: number;
}

function runAll(limit: number): readonly Run[] {
  return instances().map((instance) => {
    const problem = projectOf(instance);
    const begun = performance.now();
    const answer = solveRcpsp(problem, {
      conflictLimit: Number.MAX_SAFE_INTEGER,
      shouldStop: () => performance.now() - begun > limit,
    });
    const milliseconds = performance.now() - begun;
    if (answer.status === "INFEASIBLE" || answer.status === "UNKNOWN")
      throw new Error(`${instance.name} was not solved`);
    const proved = answer.status === "OPTIMAL";
    if (proved && answer.finish !== instance.optimum)
      throw new Error(`${instance.name}: ${answer.finish} is not the published ${instance.optimum}`);
    return {
      milliseconds,
      proved,
      distance: answer.finish / instance.optimum - 1,
      plain: plainLength(problem) / instance.optimum - 1,
    };
  });
}

const percent = (share: number): string => `${(100 * share).toFixed(3)} %`;
const ms = (value: number): string => `${value.toFixed(1)} ms`;

function projects(): readonly BenchmarkResult[] {
  const second = runAll(1000);
  const times = second.map(({ milliseconds }) => milliseconds);
  const proved = second.filter((run) => run.proved).length;
  const median = quantile(times, 0.5);
  const tenth = runAll(100);
  const distance = mean(tenth.map((run) => run.distance));
  const plain = mean(tenth.map((run) => run.plain));
  return [
    result(
      "prep-session: share of j30 proved optimal within 1 s",
      proved / second.length,
      { atLeast: 0.95 },
      `${proved} of ${second.length}; mean ${ms(mean(times))}, 95 % within ${ms(quantile(times, 0.95))}`,
    ),
    result("prep-session: j30 median seconds to the proof", median / 1000, { atMost: 0.1 }, `median ${ms(median)}`),
    result(
      "prep-session: j30 mean distance from the optimum after 0.1 s",
      distance,
      { atMost: 0.005 },
      `${percent(distance)}; a plain serial schedule is ${percent(plain)} above`,
    ),
  ];
}

const pick = <T>(values: readonly T[], random: () => number): T => values[Math.floor(random() * values.length)]!;
const between = (low: number, high: number, random: () => number): number =>
  low + Math.floor(random() * (high - low + 1));

function madeUpWork(index: number, count: number, random: () => number): SessionWork {
  const id = (k: number) => `s${k}`;
  const base = { text: "", grows: "FIXED", loadBatches: null, eveningBefore: false, lines: [] } as const;
  const steps = Array.from({ length: count }, (_, k): Step => {
    const cooks = k % 2 === 1;
    const appliance = cooks
      ? pick(["oven-shelf", "oven-shelf", "hob-ring"], random)
      : pick([null, null, "blender", "sink"], random);
    return {
      ...base,
      id: id(k),
      minutes: cooks ? between(15, 60, random) : between(2, 12, random),
      attention: cooks ? "UNATTENDED" : "HANDS_ON",
      appliance,
      temperatureC: appliance === "oven-shelf" ? pick([160, 180, 200], random) : null,
      after: k === 0 ? [] : [id(k - 1)],
      minWait: 0,
      maxWait: k > 0 && random() < 0.2 ? 60 : null,
    };
  });
  return { kind: "COMPONENT", slug: `c${index}`, title: "", steps, batches: 1, loads: 1, uses: [] };
}

/** A kitchen of one or two cooks, two shelves, four rings, a blender and a sink; chains of two to five steps. */
function madeUpSession(tasks: number, random: () => number): SessionInput {
  const work: SessionWork[] = [];
  for (let left = tasks; left > 0;) {
    const count = Math.min(left, between(2, 5, random));
    work.push(madeUpWork(work.length, count, random));
    left -= count;
  }
  const kitchen = {
    cooks: random() < 0.7 ? 1 : 2,
    appliances: { "oven-shelf": 2, "hob-ring": 4, blender: 1, sink: 1 },
  };
  return { work, kitchen, start: null, evening: null, extraOrder: [] };
}

function oneAfterAnother({ work }: SessionInput): number {
  return work.reduce((sum, { steps }) => sum + steps.reduce((minutes, step) => minutes + step.minutes, 0), 0);
}

function kitchensOf(size: number, runs: number): BenchmarkResult {
  const random = randomGenerator(size);
  const plans = Array.from({ length: runs }, () => {
    const input = madeUpSession(size, random);
    const begun = performance.now();
    const planned = planSession(input);
    const milliseconds = performance.now() - begun;
    if (!planned.ok) return [];
    return [{ milliseconds, plan: planned.value, saved: planned.value.totalMinutes / oneAfterAnother(input) }];
  }).flat();
  const times = plans.map(({ milliseconds }) => milliseconds);
  const optimal = plans.filter(({ plan }) => plan.optimal).length / plans.length;
  const gaps = plans.map(({ plan }) => plan.gap);
  const detail =
    `${plans.length} of ${runs} can be planned; median ${ms(quantile(times, 0.5))}, worst ${ms(Math.max(...times))}; ` +
    `optimal ${percent(optimal)}, mean gap ${percent(mean(gaps))}, worst ${percent(Math.max(...gaps))}; ` +
    `${percent(mean(plans.map(({ saved }) => saved)))} of the time one step after another takes`;
  return size <= 30
    ? result(`prep-session: share of sessions of ${size} tasks proved optimal`, optimal, { atLeast: 1 }, detail)
    : result(`prep-session: mean gap of sessions of ${size} tasks`, mean(gaps), { atMost: 0.05 }, detail);
}

/** Published project instances to the proved optimum, and made-up sessions of growing size. */
export const sessionBenchmarks: readonly Benchmark[] = [
  { name: "session-projects", run: () => Promise.resolve(projects()) },
  {
    name: "session-kitchens",
    run: () => Promise.resolve([kitchensOf(10, 40), kitchensOf(20, 40), kitchensOf(30, 40), kitchensOf(60, 20)]),
  },
];
