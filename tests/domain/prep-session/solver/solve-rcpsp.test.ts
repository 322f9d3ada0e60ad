import { readFileSync } from "node:fs";
import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { RcpspProblem, TaskWait } from "../../../../src/domain/prep-session/solver/rcpsp-problem.js";
import { solveRcpsp } from "../../../../src/domain/prep-session/solver/solve-rcpsp.js";
import { leastLength, scheduleFaults } from "./rcpsp-checks.js";

interface PsplibInstance {
  readonly name: string;
  readonly optimum: number;
  readonly capacity: number[];
  readonly jobs: readonly { readonly d: number; readonly r: number[]; readonly next: number[] }[];
}

const fixture = (name: string) => readFileSync(new URL(`../../../fixtures/reference/${name}`, import.meta.url), "utf8");

const precedes = (from: number, to: number): TaskWait => ({ from, to, min: 0, max: null, counts: "FROM_FINISH" });

const projectOf = ({ capacity, jobs }: PsplibInstance): RcpspProblem => ({
  durations: jobs.map(({ d }) => d),
  capacities: capacity,
  demands: jobs.map(({ r }) => r),
  waits: jobs.flatMap(({ next }, job) => next.map((other) => precedes(job, other - 1))),
});

function solved(problem: RcpspProblem) {
  const answer = solveRcpsp(problem, { conflictLimit: 1_000_000 });
  if (answer.status !== "OPTIMAL") throw new Error(`${answer.status} after ${answer.conflicts} dead ends`);
  expect(scheduleFaults(problem, answer.starts)).toEqual([]);
  return answer.finish;
}

describe("Published project instances", () => {
  // R. Kolisch, A. Sprecher: PSPLIB, European Journal of Operational Research 96 (1996), set j30, optimal makespans.
  const { instances } = JSON.parse(fixture("psplib-j30-60.json")) as { instances: PsplibInstance[] };
  const rows = parse<Record<string, string>>(fixture("scheduling-projects.csv"), { columns: true });
  const published = new Map(
    rows.filter((row) => row["known_optimum"] !== "").map((row) => [row["instance"]!, Number(row["known_optimum"])]),
  );

  it.each(instances)("reaches the optimum of $name and proves it", (instance) => {
    expect(published.get(instance.name) ?? instance.optimum).toBe(instance.optimum);
    expect(solved(projectOf(instance))).toBe(instance.optimum);
  });

  it.each([
    ...new Set(
      rows.filter((row) => row["record"] === "job" && row["problem_type"] === "RCPSP").map((row) => row["instance"]!),
    ),
  ])("reaches the optimum of %s as the reference table has it", (name) => {
    const own = rows.filter((row) => row["instance"] === name);
    const need = (row: Record<string, string>) => ["r1", "r2", "r3", "r4"].map((column) => Number(row[column]));
    const header = own.find((row) => row["record"] === "header")!;
    const jobs = own
      .filter((row) => row["record"] === "job")
      .map((row) => ({
        d: Number(row["duration_or_value"]),
        r: need(row),
        next: row["successors_or_members"]!.split(" ").filter(Boolean).map(Number),
      }));
    expect(jobs).toHaveLength(32);
    expect(solved(projectOf({ name, optimum: 0, capacity: need(header), jobs }))).toBe(published.get(name));
  });

  it("reaches 55 for the job shop of Fisher and Thompson (1963), six jobs on six machines", () => {
    const jobs = rows
      .filter((row) => row["instance"] === "ft06" && row["record"] === "job")
      .map((row) =>
        row["successors_or_members"]!.split(" ").map((operation) => operation.slice(1).split(":").map(Number)),
      );
    const operations = jobs.flat();
    const waits = jobs.flatMap((job, j) => job.slice(1).map((_, k) => precedes(6 * j + k, 6 * j + k + 1)));
    const problem: RcpspProblem = {
      durations: operations.map(([, minutes]) => minutes!),
      capacities: [1, 1, 1, 1, 1, 1],
      demands: operations.map(([machine]) => [0, 1, 2, 3, 4, 5].map((m) => (m === machine ? 1 : 0))),
      waits,
    };
    expect(operations).toHaveLength(36);
    expect(solved(problem)).toBe(published.get("ft06"));
  });
});

const waitOf = (tasks: number, between: { forwards: boolean; maxLags: boolean }) =>
  fc
    .record({
      from: fc.nat(tasks - 1),
      to: fc.nat(tasks - 1),
      min: fc.integer({ min: 0, max: 2 }),
      slack: fc.option(fc.integer({ min: 0, max: 3 }), { nil: null }),
      counts: fc.constantFrom("FROM_START" as const, "FROM_FINISH" as const),
    })
    .filter(({ from, to }) => (between.forwards ? from < to : from !== to))
    .map(({ from, to, min, slack, counts }): TaskWait => ({
      from,
      to,
      min,
      max: between.maxLags && slack !== null ? min + slack : null,
      counts,
    }));

const problems = (between: { forwards: boolean; maxLags: boolean }, tasks: number) =>
  fc.record({
    durations: fc.array(fc.integer({ min: 0, max: 3 }), { minLength: tasks, maxLength: tasks }),
    capacities: fc.constant([2, 1]),
    demands: fc.array(fc.tuple(fc.nat(2), fc.nat(1)), { minLength: tasks, maxLength: tasks }),
    waits: fc.array(waitOf(tasks, between), { maxLength: 5 }),
    apart: fc
      .array(fc.tuple(fc.nat(tasks - 1), fc.nat(tasks - 1)), { maxLength: 2 })
      .map((pairs) => pairs.filter(([a, b]) => a !== b)),
    afterLast: between.maxLags
      ? fc.array(fc.constant({ of: [0, 1], to: tasks - 1, max: 1 }), { maxLength: 1 })
      : fc.constant([]),
    latestStarts: between.maxLags
      ? fc.array(fc.option(fc.integer({ min: 2, max: 9 }), { nil: null, freq: 1 }), {
          minLength: tasks,
          maxLength: tasks,
        })
      : fc.constant<null[]>(Array.from({ length: tasks }, () => null)),
  });

describe("Small random problems", () => {
  it("are as short as an exhaustive search makes them, with least and greatest waits of any direction", () => {
    fc.assert(
      fc.property(problems({ forwards: false, maxLags: true }, 5), (problem) => {
        const answer = solveRcpsp(problem);
        const least = leastLength(problem, 20);
        if (answer.status === "UNKNOWN" || answer.status === "FEASIBLE") throw new Error(answer.status);
        expect(answer.status === "INFEASIBLE" ? null : answer.finish).toBe(least);
        if (answer.status === "OPTIMAL") expect(scheduleFaults(problem, answer.starts)).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  it("are as short as an exhaustive search makes them, with plain orders", () => {
    fc.assert(
      fc.property(problems({ forwards: true, maxLags: false }, 5), (problem) => {
        expect(solved(problem)).toBe(leastLength(problem, 30));
      }),
      { numRuns: 150 },
    );
  });
});

describe("What cannot be scheduled", () => {
  const two = { durations: [5, 5], capacities: [1], demands: [[1], [1]] };

  it("names the greatest wait that hands in use make impossible", () => {
    const wait: TaskWait = { from: 0, to: 1, min: 0, max: 2, counts: "FROM_START" };
    const harmless: TaskWait = { from: 0, to: 1, min: 0, max: 90, counts: "FROM_START" };
    const answer = solveRcpsp({ ...two, waits: [harmless, wait] });
    expect(answer).toMatchObject({ status: "INFEASIBLE", obstacles: [{ kind: "WAIT", wait }] });
  });

  it("names waits that contradict each other", () => {
    const waits = [precedes(0, 1), { ...precedes(0, 1), min: 10 }, { ...precedes(0, 1), max: 4 }];
    const answer = solveRcpsp({ ...two, waits });
    expect(answer).toMatchObject({
      status: "INFEASIBLE",
      obstacles: expect.arrayContaining([
        { kind: "WAIT", wait: waits[1] },
        { kind: "WAIT", wait: waits[2] },
      ]) as unknown,
    });
  });

  it("names a task that asks for more than there is", () => {
    const answer = solveRcpsp({ durations: [1], capacities: [2], demands: [[3]], waits: [] });
    expect(answer).toMatchObject({ status: "INFEASIBLE", obstacles: [{ kind: "DEMAND", task: 0, resource: 0 }] });
  });

  it("stops when told to, with the best schedule so far and a bound below it", () => {
    const { instances } = JSON.parse(fixture("psplib-j30-60.json")) as { instances: PsplibInstance[] };
    const hard = instances.find(({ name }) => name === "j3013_1")!;
    const answer = solveRcpsp(projectOf(hard), { shouldStop: () => true });
    if (answer.status !== "FEASIBLE") throw new Error(answer.status);
    expect(scheduleFaults(projectOf(hard), answer.starts)).toEqual([]);
    expect(answer.finish).toBeGreaterThanOrEqual(hard.optimum);
    expect(answer.lowerBound).toBeLessThanOrEqual(hard.optimum);
  });
});
