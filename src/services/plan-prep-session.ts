import type { Household } from "../domain/model/household.js";
import type { KeepingClass } from "../domain/model/keeping.js";
import { latest, onceFor } from "../domain/once-for.js";
import type { CompiledPlan } from "../domain/plan/compiled-plan.js";
import type { RuleSet } from "../domain/plan/rule-set.js";
import type { ScaledPlan } from "../domain/plan/scaled.js";
import { scaledSession } from "../domain/plan/scaled-session.js";
import { eveningWindow } from "../domain/prep-session/evening.js";
import { withClockTimes } from "../domain/prep-session/schedule.js";
import type { PrepSession, SessionInput } from "../domain/prep-session/session.js";
import { ok, type Result } from "../domain/problem.js";
import type { Clock } from "./deps.js";

/**
 * The longest one session is thought about; what is found by then is given with its gap. Nothing else is answered
 * meanwhile, so it stays well below the delay at which requests are turned away (`PREPWRIGHT_SHED_DELAY_MS`).
 */
const mostMilliseconds = 300;
/** How long what was found by then is given to all who ask the same; after that, a search may come further. */
const keptMilliseconds = 60_000;

/** Sessions of one plan that are kept: most households cook one of few numbers of servings. */
const keptSessions = 8;

/** Work that may be done the evening before hangs on how long before the session that is; the order of all other work does not. */
const usesEvening = onceFor(({ components, meals }: CompiledPlan): boolean =>
  [...components.map(({ route, component }) => route?.steps ?? component.steps), ...meals.map(({ meal }) => meal.steps)]
    .flat()
    .some(({ eveningBefore }) => eveningBefore),
);

interface Question {
  readonly scaled: ScaledPlan;
  readonly household: Household;
  readonly classes: readonly KeepingClass[];
  readonly start: SessionInput["start"];
  readonly clock: Clock;
}

const keyOf = ({ scaled: { components, meals }, household: { kitchen }, start }: Question): string =>
  JSON.stringify([
    components.map(({ batches, loads }) => [batches, loads]),
    meals.map(({ factor }) => factor),
    start && eveningWindow({ start, evening: null }),
    kitchen && [kitchen.cooks, Object.entries(kitchen.appliances).toSorted()],
  ]);

function orderOf({ scaled, household, classes, start, clock }: Question): Result<PrepSession> {
  const until = clock().getTime() + mostMilliseconds;
  const { session } = household;
  const asked = { ...household, session: start === null ? null : session };
  return scaledSession(scaled, asked, classes, { shouldStop: () => clock().getTime() > until });
}

const isProved = (found: Result<PrepSession>): boolean =>
  found.ok && found.value.optimal && found.value.handsFreeOptimal;

/** Sessions of one plan, by what they hang on: how much is made, not what is in it. */
const ordersOf = onceFor((_: CompiledPlan) =>
  onceFor((_classes: readonly KeepingClass[]) => {
    const ofThisMinute = latest(
      keptSessions,
      (question: Question) => `${keyOf(question)} ${Math.floor(question.clock().getTime() / keptMilliseconds)}`,
      orderOf,
    );
    return latest(keptSessions, keyOf, ofThisMinute, isProved);
  }),
);

/** The order of the prep session's work, within a third of a second. Problems: those of `planSession`. */
export function planPrepSession(
  scaled: ScaledPlan,
  household: Household,
  { safety: { classes } }: Pick<RuleSet, "safety">,
  clock: Clock,
): Result<PrepSession> {
  const { session } = household;
  const start = session === null ? null : { instant: session.start, zone: session.zone };
  const { compiled } = scaled;
  const ordered = ordersOf(compiled)(classes)({
    scaled,
    household,
    classes,
    start: usesEvening(compiled) ? start : null,
    clock,
  });
  return ordered.ok && start !== null ? ok(withClockTimes(ordered.value, start)) : ordered;
}
