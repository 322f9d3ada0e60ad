import type { InSlices, Work } from "../../counted-work.js";
import { earliestStarts, tails } from "./lower-bounds.js";
import { randomGenerator } from "./random-generator.js";
import { ScheduleGenerator } from "./schedule-generation.js";
import type { TaskNetwork } from "../task-network.js";
import { unreachable } from "../task-network.js";

/** Whether a schedule keeps every wait, window and greatest wait (resources are the generator's own business). */
function keepsWaits(network: TaskNetwork, starts: Int32Array): boolean {
  const { arcFrom, arcTo, arcWeight, latest, earliest, durations, afterLast } = network;
  for (let arc = 0; arc < arcFrom.length; arc++)
    if (starts[arcTo[arc]!]! < starts[arcFrom[arc]!]! + arcWeight[arc]!) return false;
  for (const wait of afterLast)
    if (starts[wait.to]! > Math.max(...wait.of.map((task) => starts[task]! + durations[task]!)) + wait.max)
      return false;
  return starts.every((start, task) => start <= latest[task]! && start >= earliest[task]!);
}

/** When the last task ends that counts for the finish. */
export const finishOf = (network: TaskNetwork, starts: Int32Array): number =>
  network.finishTasks.reduce((last, task) => Math.max(last, starts[task]! + network.durations[task]!), 0);

/** Classic rules, lower first: latest start, latest finish, most work behind, longest way to the end, number. */
function rules(network: TaskNetwork): Float64Array[] {
  const { tasks, distance, durations } = network;
  const tail = tails(network);
  const way = Float64Array.from(tail, (length) => (length === unreachable ? -1 : length));
  const behind = new Float64Array(tasks);
  for (let task = 0; task < tasks; task++)
    for (let other = 0; other < tasks; other++)
      if (distance[task * tasks + other]! > 0 || other === task) behind[task]! += durations[other]!;
  return [
    way.map((length, task) => -(length + durations[task]!)),
    way.map((length) => -length),
    behind.map((work) => -work),
    way.map((length, task) => -(length + durations[task]!) - behind[task]! / 2),
    Float64Array.from(durations, (_, task) => task),
  ];
}

/** The same order with every task as early as it can be; the schedule itself where its greatest waits hold it back. */
export function tightened(network: TaskNetwork, starts: Int32Array): Int32Array {
  const forward = new ScheduleGenerator(network, "FORWARD");
  const tight = forward.build(starts, earliestStarts(network));
  if (tight === null || !keepsWaits(network, tight)) return starts;
  return tight.every((start, task) => start <= starts[task]!) ? tight : starts;
}

/** A greatest wait is kept by starting the earlier task later: how often that is tried for one schedule. */
const mostRepairs = 40;

/** Told of its steps, and asked whether to be content with what there is. */
interface StartLimits {
  readonly work: Work;
  readonly shouldStop: () => boolean;
}

/** Builds a schedule and, where a greatest wait is broken, holds back the task that it counts from. */
function* builtWithin(
  network: TaskNetwork,
  generator: ScheduleGenerator,
  priority: ArrayLike<number>,
  earliest: Int32Array,
  { shouldStop }: StartLimits,
): InSlices<Int32Array | null> {
  const { arcFrom, arcTo, arcWeight, latest } = network;
  const releases = earliest.slice();
  for (let repair = 0; repair < mostRepairs && !(repair > 0 && shouldStop()); repair++) {
    yield;
    const starts = generator.build(priority, releases);
    if (starts === null) return null;
    let broken = false;
    for (let arc = 0; arc < arcFrom.length; arc++) {
      const needed = starts[arcFrom[arc]!]! + arcWeight[arc]!;
      const held = arcTo[arc]!;
      if (arcWeight[arc]! >= 0 || starts[held]! >= needed || releases[held]! >= needed) continue;
      if (needed > latest[held]!) return null;
      releases[held] = needed;
      broken = true;
    }
    if (!broken) return starts;
  }
  return null;
}

interface Found {
  starts: Int32Array | null;
  finish: number;
}

/**
 * A good schedule in a few milliseconds: every rule, then noisy ones, each pushed to the end and back to the start
 * (forward-backward improvement). null if none keeps the greatest waits. Stops early at `lowerBound`; when told to stop, it
 * has tried one rule at least.
 */
export function* startSchedule(
  network: TaskNetwork,
  lowerBound: number,
  rounds: number,
  seed: number,
  limits: StartLimits,
): InSlices<Int32Array | null> {
  const { work, shouldStop } = limits;
  const forward = new ScheduleGenerator(network, "FORWARD", work);
  const backward = new ScheduleGenerator(network, "BACKWARD", work);
  const releases = earliestStarts(network);
  const random = randomGenerator(seed);
  const best: Found = { starts: null, finish: Number.POSITIVE_INFINITY };
  const isOpen = (): boolean => best.finish > lowerBound && !shouldStop();
  const keep = (starts: Int32Array | null) => {
    if (starts === null || !keepsWaits(network, starts)) return;
    const finish = finishOf(network, starts);
    if (finish < best.finish) Object.assign(best, { starts, finish });
  };
  const improve = function* (priority: Float64Array): InSlices<void> {
    let starts = yield* builtWithin(network, forward, priority, releases, limits);
    keep(starts);
    for (let pass = 0; pass < 2 && starts !== null && isOpen(); pass++) {
      const mirrored = backward.build(forward.turned(starts), null);
      if (mirrored === null) return;
      starts = yield* builtWithin(network, forward, backward.turned(mirrored), releases, limits);
      keep(starts);
    }
  };
  const classic = rules(network);
  for (const [at, rule] of classic.entries()) if (at === 0 || isOpen()) yield* improve(rule);
  for (let round = 0; round < rounds && isOpen(); round++) {
    const from = best.starts !== null && round % 2 === 1 ? Float64Array.from(best.starts) : classic[round % 4]!;
    const spread = Math.max(1, ...from) - Math.min(...from);
    const noise = (0.05 + 0.25 * random()) * spread;
    yield* improve(from.map((value) => value + noise * random()));
  }
  return best.starts;
}
