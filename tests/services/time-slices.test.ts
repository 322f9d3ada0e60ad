import { expect, it } from "vitest";
import { WorkStopped, type InSlices, type Work } from "../../src/domain/counted-work.js";
import { runInSlices, openTimeSlicer } from "../../src/services/time-slices.js";

/** Something of so many turns, each of which takes a millisecond of a clock of its own. */
function* turnsOf(turns: number, pass: (milliseconds: number) => void, done: () => void): InSlices<number> {
  for (let turn = 0; turn < turns; turn += 1) {
    pass(1);
    yield;
  }
  done();
  return turns;
}

function openClock() {
  let now = 0;
  return { now: () => now, pass: (milliseconds: number) => void (now += milliseconds) };
}

const never = (): AbortController => new AbortController();

it("others get their turn while something long is computed, and what came first is done first", async () => {
  const { now, pass } = openClock();
  const pace = openTimeSlicer(now);
  const order: string[] = [];
  const compute = (name: string, turns: number) => {
    const over = never();
    const work = pace.begin(10_000, over.signal, () => over.abort());
    return runInSlices({ work }, () => turnsOf(turns, pass, () => order.push(name)));
  };
  const long = compute("long", 300);
  const short = compute("short", 40);
  const immediate = new Promise<void>((done) => {
    setImmediate(() => {
      order.push("somebody else");
      done();
    });
  });
  expect(await Promise.all([long, short, immediate])).toEqual([300, 40, undefined]);
  expect(order).toEqual(["somebody else", "long", "short"]);
});

it("computing ends when its milliseconds are over, or when it is told so, and says it was stopped", async () => {
  const { now, pass } = openClock();
  const pace = openTimeSlicer(now);
  const over = never();
  const work = pace.begin(100, over.signal, () => over.abort());
  await expect(runInSlices({ work }, () => turnsOf(1_000, pass, () => undefined))).rejects.toThrow(WorkStopped);
  expect([now() < 130, over.signal.aborted]).toEqual([true, true]);

  const gone = never();
  const other = pace.begin(10_000, gone.signal, () => gone.abort());
  const asked = runInSlices({ work: other }, () => turnsOf(1_000, pass, () => undefined));
  gone.abort();
  await expect(asked).rejects.toThrow(WorkStopped);
});

it("what has no pauses ends at its next steps once its time is over", async () => {
  const { now, pass } = openClock();
  const over = never();
  const work = openTimeSlicer(now).begin(100, over.signal, () => over.abort());
  const endless = function* (steps: Work): InSlices<never> {
    for (;;) {
      pass(1);
      steps.step(1_000);
    }
  };
  await expect(runInSlices({ work }, endless)).rejects.toThrow(WorkStopped);
  expect(now()).toBeLessThan(120);
});
