import type { Work } from "../../counted-work.js";

/**
 * A resource-constrained project scheduling problem over whole time units: tasks that never pause, renewable
 * resources, least and greatest waits between tasks, pairs that may never overlap, and windows for starts.
 */
export interface RcpspProblem {
  readonly durations: readonly number[];
  readonly capacities: readonly number[];
  /** `demands[task][resource]`, held from the task's start to its end. */
  readonly demands: readonly (readonly number[])[];
  readonly waits: readonly TaskWait[];
  /** Pairs of tasks that may never run at the same time, in either order. */
  readonly apart?: readonly (readonly [number, number])[];
  /** A task must start at most `max` after the last of several others has finished. */
  readonly afterLast?: readonly AfterLast[];
  readonly earliestStarts?: readonly number[];
  /** null: no latest start. */
  readonly latestStarts?: readonly (number | null)[];
}

/** `min <= start(to) - x <= max`, where x is the start or the finish of `from`; `max` null is no limit. */
export interface TaskWait {
  readonly from: number;
  readonly to: number;
  readonly min: number;
  readonly max: number | null;
  readonly counts: "FROM_START" | "FROM_FINISH";
}

export interface AfterLast {
  readonly of: readonly number[];
  readonly to: number;
  readonly max: number;
}

/** Which greatest waits or windows stand in the way, or which task asks for more than there is. */
export type Obstacle =
  | { readonly kind: "WAIT"; readonly wait: TaskWait }
  | { readonly kind: "AFTER_LAST"; readonly wait: AfterLast }
  | { readonly kind: "LATEST_START"; readonly task: number; readonly latest: number }
  | { readonly kind: "DEMAND"; readonly task: number; readonly resource: number };

export interface SolveOptions {
  /** Tasks whose last finish is minimised; all of them when absent. */
  readonly finish?: readonly number[];
  /** Dead ends the search may run into before it stops; each costs some tens of microseconds. */
  readonly conflictLimit?: number;
  /** Asked now and then; true stops the search with the best schedule so far. */
  readonly shouldStop?: () => boolean;
  /** Told of the steps that the search takes; it may end it altogether. */
  readonly work?: Work;
  /** Starts of a known feasible schedule to begin from. */
  readonly knownStarts?: readonly number[];
  readonly seed?: number;
  /** Whether to look for the few obstacles of an impossible problem, which takes longer than to see that it is; absent: yes. */
  readonly explain?: boolean;
}

/** `finish` is the last finish of the tasks asked for; `lowerBound` is proved. */
export type RcpspAnswer =
  | {
      readonly status: "OPTIMAL" | "FEASIBLE";
      readonly starts: readonly number[];
      readonly finish: number;
      readonly lowerBound: number;
      readonly conflicts: number;
    }
  | { readonly status: "INFEASIBLE"; readonly obstacles: readonly Obstacle[]; readonly conflicts: number }
  | { readonly status: "UNKNOWN"; readonly lowerBound: number; readonly conflicts: number };
