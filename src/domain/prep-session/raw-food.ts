import type { Step } from "../model/component.js";
import { isCooking, isPreheating, stepsBefore } from "./heating.js";
import type { SessionLimit, SessionStep, SessionWork } from "./session.js";

/** Minutes that raw meat, poultry or fish may be out of the cold before it is heated (USDA FSIS, Danger Zone: two hours). */
const rawOutOfTheCold = 120;
/** What stands by itself for longer than this, as in a marinade, stands in the cold. Common practice, no source. */
const standsInTheCold = 60;

const isStanding = (step: Step): boolean =>
  step.eveningBefore ||
  step.chills === true ||
  (step.attention === "UNATTENDED" && !isCooking(step) && step.minutes > standsInTheCold);

/** Work with the hands on what is raw, up to the heat. */
export function rawSteps(steps: readonly Step[], rawLines: ReadonlySet<string>): ReadonlySet<string> {
  if (rawLines.size === 0) return new Set();
  const named = steps.some(({ lines }) => lines.some((line) => rawLines.has(line)));
  const takesRaw = (step: Step): boolean => !named || step.lines.some((line) => rawLines.has(line));
  const handlesRaw = (step: Step): boolean => takesRaw(step) || [...stepsBefore(step, steps)].some(takesRaw);
  const cooks = steps.filter(isCooking);
  const raw = steps.filter((step) => {
    if (step.attention !== "HANDS_ON" || isCooking(step) || isStanding(step) || !handlesRaw(step)) return false;
    const before = stepsBefore(step, steps);
    return (
      cooks.some((cooking) => stepsBefore(cooking, steps).has(step)) &&
      !cooks.some((cooking) => before.has(cooking) && handlesRaw(cooking))
    );
  });
  return new Set(raw.map(({ id }) => id));
}

/** What comes after a step and ends its time out of the cold: the heat, or a long time in the cold. */
function endsOf(step: Step, steps: readonly Step[]): readonly Step[] {
  const found = new Set<Step>();
  const seen = new Set<Step>([step]);
  const open = [step];
  for (let at = open.pop(); at !== undefined; at = open.pop())
    for (const next of steps) {
      if (!next.after.includes(at.id) || seen.has(next) || next.minWait > standsInTheCold) continue;
      seen.add(next);
      if (isCooking(next) || isStanding(next)) found.add(next);
      else open.push(next);
    }
  return [...found];
}

/** Raw food goes from the cold onto the heat in time, each load by itself: from the start of the work on it. */
export function rawLimits(work: SessionWork, rawLines: ReadonlySet<string>): readonly SessionLimit[] {
  const raw = rawSteps(work.steps, rawLines);
  const ref = (step: Step) => ({ kind: work.kind, slug: work.slug, step: step.id });
  return work.steps
    .filter(({ id }) => raw.has(id))
    .flatMap((step) =>
      endsOf(step, work.steps).map((end): SessionLimit => ({
        from: ref(step),
        to: ref(end),
        max: rawOutOfTheCold,
        since: "START",
        until: "START",
      })),
    );
}

/** All that can be done load by load. */
export const divisibleSteps = (steps: readonly Step[]): ReadonlySet<string> =>
  new Set(steps.filter((step) => !step.eveningBefore && !isPreheating(step)).map(({ id }) => id));

/** The same steps, some of them to be done load by load, close before the heat. */
export function byTheLoad(steps: readonly SessionStep[], which: ReadonlySet<string>): readonly SessionStep[] {
  return steps.map((step) => (which.has(step.id) ? { ...step, byLoad: true } : step));
}
