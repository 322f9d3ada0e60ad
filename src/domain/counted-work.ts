/**
 * Counts what loops do that grow with a request. A step is about a microsecond of a usual processor: a line scaled, a task placed, a
 * pack tried.
 */
export interface Work {
  /** To be called before or after so many steps. @throws WorkStopped where the time of the request is over */
  step(count: number): void;
}

/** The time of a request is over. What was computed so far is nobody's answer. */
export class WorkStopped extends Error {
  override readonly name = "WorkStopped";

  constructor() {
    super("this took longer than its time and was ended");
  }
}

/** Counts nothing and never stops: for commands, jobs and tests. */
export const unlimitedWork: Work = { step: () => undefined };

/** How many steps may pass between two looks at whether to stop. */
const betweenLooks = 5_000;

/** Counts the steps, and asks now and then whether to stop. */
export class CountedWork implements Work {
  steps = 0;
  private nextLook = betweenLooks;

  constructor(private readonly shouldStop: () => boolean = () => false) {}

  step(count: number): void {
    this.steps += count;
    if (this.steps < this.nextLook) return;
    this.nextLook = this.steps + betweenLooks;
    if (this.shouldStop()) throw new WorkStopped();
  }
}

/** A long computation as a generator: at each `yield` other requests may run. */
export type InSlices<Found> = Generator<undefined, Found, undefined>;

/** Runs all of it without a pause. */
export function runToEnd<Found>(turns: InSlices<Found>): Found {
  let turn = turns.next();
  while (turn.done !== true) turn = turns.next();
  return turn.value;
}
