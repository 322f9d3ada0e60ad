import { ceilForgiving } from "../component/batch.js";
import type { Kitchen } from "../model/plan.js";
import { toNumber } from "../quantity/rational.js";
import type { SessionStep, SessionWork } from "./session.js";

/** One piece of work without a pause: a step, one or more loads of it, or the washing of its machine. */
export interface Task {
  readonly id: string;
  readonly kind: "STEP" | "WASH";
  readonly work: SessionWork;
  readonly step: SessionStep;
  /** Whole minutes. */
  readonly minutes: number;
  /** Minutes until its first loads are done: less than `minutes` where it runs several in turn. */
  readonly round: number;
  readonly cooks: number;
  readonly appliance: string | null;
  readonly units: number;
  readonly load: Loads | null;
  readonly eveningBefore: boolean;
}

/** Loads `first` to `last` of `of`, from 1. */
export interface Loads {
  readonly first: number;
  readonly last: number;
  readonly of: number;
}

/** More loads than this of one step are run in blocks, so that a crowd's session stays computable. */
const mostTasksOfAStep = 8;
/** What has to be taken off the heat in time is only ever grouped side by side; beyond this many rounds it is no session. */
const mostRounds = 40;

export const workKey = (work: Pick<SessionWork, "kind" | "slug">): string =>
  work.kind === "MEAL" ? `meal:${work.slug}` : work.slug;

/** How many loads a step is done in; a step that does not go by the load is done once. */
export const loadsOf = (step: SessionStep, work: Pick<SessionWork, "batches" | "loads">): number => {
  if (step.loads !== undefined) return Math.max(1, step.loads);
  if (step.grows !== "PER_LOAD") return 1;
  if (step.loadBatches === null) return Math.max(1, work.loads);
  return Math.max(1, ceilForgiving(work.batches / toNumber(step.loadBatches)));
};

/** Unattended time never grows with what is made: twice the food does not roast twice as long. */
export const growsWithBatches = (step: SessionStep): boolean =>
  step.grows === "PER_BATCH" && step.attention === "HANDS_ON";

/** Minutes of a step over everything that is made, loads one after another. */
export function minutesOf(step: SessionStep, work: Pick<SessionWork, "batches" | "loads">): number {
  if (growsWithBatches(step)) return ceilForgiving(step.minutes * work.batches);
  return ceilForgiving(step.minutes) * loadsOf(step, work);
}

/** Work with the hands that can be shared out over the loads of what comes before or after it. */
const sharesOut = (step: SessionStep, work: Pick<SessionWork, "batches" | "loads">): boolean =>
  growsWithBatches(step) || (step.byLoad === true && step.attention === "HANDS_ON" && loadsOf(step, work) === 1);

/** Something that stands by itself, each load from when it comes. */
const standsByLoad = (step: SessionStep, work: Pick<SessionWork, "batches" | "loads">): boolean =>
  step.byLoad === true && step.attention === "UNATTENDED" && step.appliance === null && loadsOf(step, work) === 1;

/** How many loads can run side by side. */
function sideBySide(step: SessionStep, loads: number, kitchen: Kitchen): number {
  if (growsWithBatches(step)) return 1;
  const hands = step.attention === "HANDS_ON" ? kitchen.cooks : loads;
  const machines = step.appliance === null ? loads : (kitchen.appliances[step.appliance] ?? 1);
  return Math.max(1, Math.min(loads, hands, machines));
}

/** Loads taken together: few enough pieces, and where somebody waits for each load only those that run side by side. */
function blocksOf(loads: number, together: number, awaited: boolean): readonly Loads[] {
  const most = awaited ? mostRounds : mostTasksOfAStep;
  const size = loads <= mostTasksOfAStep ? 1 : together * Math.ceil(loads / (together * most));
  const blocks: Loads[] = [];
  for (let first = 1; first <= loads; first += size)
    blocks.push({ first, last: Math.min(loads, first + size - 1), of: loads });
  return blocks;
}

interface Division {
  readonly kitchen: Kitchen;
  readonly eveningBefore: boolean;
  /** Some greatest wait counts from its end. */
  readonly awaited: boolean;
  /** The loads in which what it works on comes to it; null: all at once. */
  readonly comesIn: readonly Loads[] | null;
  /** The loads in which it goes on; null: all at once. */
  readonly goesOnIn: readonly Loads[] | null;
}

/** The loads of a step that is done load by load, as its tasks take them; null: it is done once. */
export function takenTogether(
  step: SessionStep,
  work: SessionWork,
  { kitchen, awaited }: Pick<Division, "kitchen" | "awaited">,
): readonly Loads[] | null {
  const loads = loadsOf(step, work);
  const together = step.byLoad === true ? 1 : sideBySide(step, loads, kitchen);
  return loads === 1 ? null : blocksOf(loads, together, awaited);
}

/** The tasks of one step: one, or one for each load. Hands-on work goes on with each load as it comes. */
export function tasksOfStep(step: SessionStep, work: SessionWork, division: Division): Task[] {
  const { kitchen, eveningBefore, awaited, comesIn, goesOnIn } = division;
  const loads = loadsOf(step, work);
  const id = `${workKey(work)}/${step.id}`;
  const hands = sharesOut(step, work);
  const shares = comesIn ?? (step.byLoad === true ? goesOnIn : null);
  const stands = standsByLoad(step, work);
  const together = step.byLoad === true ? 1 : sideBySide(step, loads, kitchen);
  const blocks = loads === 1 && (hands || stands) && shares !== null ? shares : blocksOf(loads, together, awaited);
  const all = ceilForgiving(step.minutes * (growsWithBatches(step) ? work.batches : 1));
  const upTo = (load: number, of: number): number => ceilForgiving((all * load) / of);
  return blocks.map(({ first, last, of }) => {
    const units = hands || stands ? 1 : Math.min(together, last - first + 1);
    const one = ceilForgiving(step.minutes);
    const shared = all === 0 ? 0 : Math.max(1, upTo(last, of) - upTo(first - 1, of));
    const minutes = hands ? shared : stands ? one : one * Math.ceil((last - first + 1) / units);
    return {
      id: of === 1 ? id : `${id}/${first}`,
      kind: "STEP",
      work,
      step,
      minutes,
      round: hands ? minutes : Math.min(one, minutes),
      cooks: step.attention === "HANDS_ON" ? units : 0,
      appliance: step.appliance,
      units: step.appliance === null ? 0 : units,
      load: of === 1 ? null : { first, last, of },
      eveningBefore,
    };
  });
}

/** Of what is made, the share that a task ends with, and the one it begins with. */
const shareOf = ({ load }: Task): readonly [from: number, to: number] =>
  load === null ? [0, 1] : [(load.first - 1) / load.of, load.last / load.of];

/** Whether two tasks of one work have some of what is made in common. */
export function handlesSame(one: Task, other: Task): boolean {
  const [from, to] = shareOf(one);
  const [otherFrom, otherTo] = shareOf(other);
  return from < otherTo - 1e-9 && otherFrom < to - 1e-9;
}

/** Washing the machine right after a use, because somebody else needs it clean. */
export const washAfter = (last: Task): Task => {
  const minutes = ceilForgiving(last.step.washMinutes ?? 0);
  return {
    ...last,
    id: `${workKey(last.work)}/${last.step.id}/wash`,
    kind: "WASH",
    minutes,
    round: minutes,
    cooks: 1,
    units: 1,
    load: null,
  };
};
