import type { Step } from "../model/component.js";
import { waitInWords } from "./at-once-words.js";
import { isCooking, isPreheating, stepsBefore } from "./heating.js";
import type { SessionLimit, SessionWork } from "./session.js";

/** Minutes within which what leaves the heat is drained, tipped out or taken on. Common practice, no source. */
const offTheHeat = 10;
/** Minutes that something begun may wait for its next step before it is in the cold. Common practice, no source. */
const betweenSteps = 30;
/** The same for what never stands at room temperature, such as raw garlic in oil. Common practice, no source. */
const neverStanding = 5;

/** How fast what is made has to get into the cold; null: it does not need the cold. */
export interface ColdRule {
  /** Minutes from the heat into the fridge. */
  readonly within: number;
  /** Raw garlic or herbs in oil. */
  readonly neverStands: boolean;
}

type Work = Pick<SessionWork, "kind" | "slug"> & { readonly steps: readonly Step[] };

/** Steps after which no other of these comes. */
const lastOf = (steps: readonly Step[]): readonly Step[] => {
  const waitedFor = new Set(steps.flatMap(({ after }) => after));
  return steps.filter(({ id }) => !waitedFor.has(id));
};

/** Cooking steps after which nothing is cooked any more. */
export const lastCooking = <Each extends Step>(steps: readonly Each[]): readonly Each[] => {
  const cooking = steps.filter(isCooking);
  return cooking.filter((step) => !cooking.some((other) => stepsBefore(other, steps).has(step)));
};

const comesAfterHeat = (step: Step, steps: readonly Step[]): boolean => [...stepsBefore(step, steps)].some(isCooking);

/**
 * Steps that put what is made into the cold. Where the writer does not say: the last step, by hand and without an
 * ingredient, for which something cooked has stood and cooled.
 */
export function chillingSteps(steps: readonly Step[], cold: ColdRule | null): readonly Step[] {
  const said = steps.filter(({ chills }) => chills === true);
  if (said.length > 0 || cold === null) return said;
  return lastOf(steps).filter(
    (step) =>
      step.chills === undefined &&
      step.attention === "HANDS_ON" &&
      step.lines.length === 0 &&
      step.minWait > 0 &&
      !isCooking(step) &&
      comesAfterHeat(step, steps),
  );
}

const never = Number.POSITIVE_INFINITY;

/** Minutes that may pass between a step and one that follows it, where its writer gives no longest wait. */
function longestWait(before: Step, step: Step, { steps }: Work, cold: ColdRule | null): number {
  const words = waitInWords(step.said ?? step.text) ?? never;
  if (before.eveningBefore || isPreheating(before)) return words;
  if (isCooking(before)) return Math.min(words, offTheHeat);
  const cookedLater = isCooking(step) || steps.some((each) => isCooking(each) && stepsBefore(each, steps).has(step));
  if (cold === null || cookedLater) return words;
  return Math.min(words, cold.neverStands ? neverStanding : betweenSteps);
}

/**
 * What has been cooked and is cooked again stands no longer in between than it may stand before the cold: part-cooked
 * food is as warm. Nothing is limited across a step that chills it.
 */
function ontoTheHeat({ kind, slug, steps }: Work, cold: ColdRule): readonly SessionLimit[] {
  const ref = (step: Step) => ({ kind, slug, step: step.id });
  const cooking = steps.filter((step) => isCooking(step) && !step.eveningBefore);
  const breaks = steps.filter((step) => isCooking(step) || step.chills === true);
  return cooking.flatMap((again) => {
    const before = stepsBefore(again, steps);
    const between = (cooked: Step) => breaks.some((each) => before.has(each) && stepsBefore(each, steps).has(cooked));
    return cooking
      .filter((cooked) => before.has(cooked) && !between(cooked))
      .map((cooked): SessionLimit => ({ from: ref(cooked), to: ref(again), max: cold.within, until: "START" }));
  });
}

/**
 * The limits a work has where its writer gives none: what leaves the heat is taken on within minutes, steps that say "at
 * once" follow at once, and what needs the cold is in it in time, counted from the end of each load.
 */
export function defaultLimits(work: Work, cold: ColdRule | null): readonly SessionLimit[] {
  const { steps } = work;
  const ref = (step: Step) => ({ kind: work.kind, slug: work.slug, step: step.id });
  const byId = new Map(steps.map((step) => [step.id, step]));
  const waits = steps.flatMap((step) =>
    step.maxWait !== null
      ? []
      : [...new Set(step.after)].flatMap((id): SessionLimit[] => {
          const before = byId.get(id);
          if (before === undefined) return [];
          const max = step.minWait + longestWait(before, step, work, cold);
          return max === never ? [] : [{ from: ref(before), to: ref(step), max, until: "START" }];
        }),
  );
  if (cold === null) return waits;
  const chilling = chillingSteps(steps, cold);
  const ends = chilling.length > 0 ? chilling : lastOf(steps);
  const intoTheCold = lastCooking(steps).flatMap((cooked) =>
    ends
      .filter((end) => end !== cooked && stepsBefore(end, steps).has(cooked))
      .map((end): SessionLimit => ({ from: ref(cooked), to: ref(end), max: cold.within, until: "END" })),
  );
  return [...waits, ...ontoTheHeat(work, cold), ...intoTheCold];
}
