import type { PlanBundle } from "../domain/model/plan.js";
import { lineCount } from "../domain/plan/compile/plan-bundle.js";
import { runToEnd, CountedWork, unlimitedWork, WorkStopped, type InSlices, type Work } from "../domain/counted-work.js";
import { openTurnQueue } from "./turn-queue.js";

/** Milliseconds that one request computes before it yields to others. */
const slice = 10;

/** Lines of plans that one request may hold: of a page of a hundred plans, each scaled a dozen times, and of twelve of the largest. */
const mostHeldLines = 150_000;

/** Why the computing of a request was ended: its time is over or whoever asked has gone; or it holds too much at once. */
export type Ended = "ENDED" | "TOO_MUCH";

/** The computation of one request: counts steps, stops at the time limit, and yields to other requests. */
export interface SlicedWork extends Work {
  readonly steps: number;
  /**
   * To be called before so many lines of plans are computed that are kept until the request is answered.
   *
   * @throws WorkStopped where one request would hold too many
   */
  hold(lines: number): void;
  /** null: go on. Otherwise await it first. It rejects with `WorkStopped` when the time is over. */
  pause(): Promise<void> | null;
  /** Runs this at once if the request has its turn, else when it has it again, one after another in the order of these calls. */
  inTurn<Found>(run: () => Found): Found | Promise<Found>;
}

/** Shares the one thread of a process among its requests. */
export interface TimeSlicer {
  /**
   * @param milliseconds that the request has
   * @param over tells that its time is over, or that whoever asked has gone
   * @param end is called once its milliseconds are over, since no timer goes off while it computes, or once it holds too much; `over` must
   * be aborted then
   */
  begin(milliseconds: number, over: AbortSignal, end: (why: Ended) => void): SlicedWork;
  /** The computation of a job: without a limit, and behind the requests that wait when it pauses. */
  beginJob(): SlicedWork;
}

interface Waiting {
  readonly number: number;
  go(): void;
}

/**
 * One waiting request resumes in each iteration of the event loop, so that an iteration is never much longer than a slice, however many
 * compute. First come, first served: with round robin, all of them would be late.
 *
 * @param now milliseconds of a clock that only goes forward
 */
export function openTimeSlicer(now: () => number): TimeSlicer {
  const queue: Waiting[] = [];
  let begun = 0;

  const next = (): void => {
    const first = queue.reduce((oldest, each, at) => (each.number < queue[oldest]!.number ? at : oldest), 0);
    const [going] = queue.splice(first, 1);
    going?.go();
    if (queue.length > 0) setImmediate(next);
  };
  const turn = (number: number): Promise<void> =>
    new Promise((go) => {
      queue.push({ number, go });
      if (queue.length === 1) setImmediate(next);
    });

  return {
    beginJob: () => {
      const counted = new CountedWork();
      let sliceUntil = now() + slice;
      let pausing: Promise<void> | null = null;
      const takeTurn = async (): Promise<void> => {
        // A new number each time: requests that came meanwhile go first.
        await turn((begun += 1));
        sliceUntil = now() + slice;
        pausing = null;
      };
      const pause = (): Promise<void> | null => pausing ?? (now() < sliceUntil ? null : (pausing = takeTurn()));
      return {
        get steps() {
          return counted.steps;
        },
        step: (count) => counted.step(count),
        hold: () => undefined,
        pause,
        inTurn: openTurnQueue(pause),
      };
    },
    begin: (milliseconds, over, end) => {
      const number = (begun += 1);
      const until = now() + milliseconds;
      let sliceUntil = now() + slice;
      const shouldStop = (): boolean => {
        if (!over.aborted && now() > until) end("ENDED");
        return over.aborted;
      };
      const counted = new CountedWork(shouldStop);
      let held = 0;
      let pausing: Promise<void> | null = null;
      const takeTurn = async (): Promise<void> => {
        await turn(number);
        sliceUntil = now() + slice;
        pausing = null;
        if (shouldStop()) throw new WorkStopped();
      };
      const pause = (): Promise<void> | null => {
        if (over.aborted) return stopped();
        if (pausing !== null) return pausing;
        if (now() < sliceUntil) return null;
        return (pausing = takeTurn());
      };
      return {
        get steps() {
          return counted.steps;
        },
        step: (count) => counted.step(count),
        hold: (lines) => {
          held += lines;
          if (held <= mostHeldLines) return;
          end("TOO_MUCH");
          throw new WorkStopped();
        },
        pause,
        inTurn: openTurnQueue(pause),
      };
    },
  };
}

export interface Sliced {
  /** Left out: it runs to the end without a pause. */
  readonly work?: SlicedWork;
}

/** These services with the computation of a job, behind the requests that wait when it pauses. */
export const asJob = <Deps extends { readonly slicer?: TimeSlicer }>(deps: Deps): Deps & Sliced =>
  deps.slicer === undefined ? deps : { ...deps, work: deps.slicer.beginJob() };

/** A rejection that nobody has to wait for: whoever only looks whether there is a pause lets it go. */
function stopped(): Promise<void> {
  const rejected = Promise.reject(new WorkStopped());
  rejected.catch(() => undefined);
  return rejected;
}

/** Runs a long computation in time slices. */
export async function runInSlices<Found>({ work }: Sliced, begin: (work: Work) => InSlices<Found>): Promise<Found> {
  if (work === undefined) return runToEnd(begin(unlimitedWork));
  const turns = begin(work);
  for (;;) {
    for (let pause = work.pause(); pause !== null; pause = work.pause()) await pause;
    const turn = turns.next();
    if (turn.done === true) return turn.value;
  }
}

/** Characters of an answer that are written in one step. */
const charactersInStep = 30;

/** Counts the steps of writing a text. */
export const countWritten = ({ work }: Sliced, { length }: string): void => work?.step(length / charactersInStep);

/** To be called before plans are computed whose lines are kept until the request is answered. @throws WorkStopped where these are too many */
export const holdPlans = ({ work }: Sliced, bundles: readonly PlanBundle[]): void =>
  work?.hold(bundles.reduce((sum, bundle) => sum + lineCount(bundle), 0));

/** Yields to other requests if this one has used up its slice. */
export async function yieldToOthers({ work }: Sliced): Promise<void> {
  for (let pause = work?.pause() ?? null; pause !== null; pause = work?.pause() ?? null) await pause;
}
