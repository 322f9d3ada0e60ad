import type { Household } from "../../domain/model/household.js";
import type { KeepingClass } from "../../domain/model/keeping.js";
import { memoizeLatestInSlices, memoize } from "../../domain/memoize.js";
import type { CompiledPlan } from "../../domain/plan/compile/compiled-plan.js";
import type { RuleSet } from "../../domain/plan/compile/rule-set.js";
import type { ScaledPlan } from "../../domain/plan/scaled.js";
import { scaledSessionInSlices } from "../../domain/plan/session/scaled-session.js";
import { laterStart, startHour } from "../../domain/plan/session/session-date.js";
import { kitchenOf } from "../../domain/plan/session/session-input.js";
import { sessionLength } from "../../domain/plan/session/session-length.js";
import { splitInSlices, wholeDay, type DaySession } from "../../domain/plan/session/split-session.js";
import { eveningWindow } from "../../domain/prep-session/evening-steps.js";
import { withClockTimes } from "../../domain/prep-session/schedule.js";
import type { PrepSession, SessionBudget, SessionInput } from "../../domain/prep-session/session.js";
import { ok, type Result } from "../../domain/problem.js";
import { runToEnd, unlimitedWork, type InSlices, type Work } from "../../domain/counted-work.js";

/**
 * Steps that are spent on one session; what is found by then is given with its gap. Counted, so that the same question has the same
 * answer on every machine, and a price.
 */
export const mostSessionSteps = 150_000;

/** Sessions of one plan that are kept: most households cook one of few numbers of servings. */
const keptSessions = 8;

/** Work that may be done the evening before hangs on how long before the session that is; the order of all other work does not. */
const usesEvening = memoize(({ components, meals }: CompiledPlan): boolean =>
  [...components.map(({ route, component }) => route?.steps ?? component.steps), ...meals.map(({ meal }) => meal.steps)]
    .flat()
    .some(({ eveningBefore }) => eveningBefore),
);

interface Question {
  readonly scaled: ScaledPlan;
  readonly household: Household;
  readonly classes: readonly KeepingClass[];
  readonly start: SessionInput["start"];
  /** Local time at which sessions begin; null: the answer does not hang on it. */
  readonly from: string | null;
  readonly work: Work;
}

const keyOf = ({ scaled: { components, meals }, household: { kitchen }, start, from }: Question): string =>
  JSON.stringify([
    components.map(({ batches, loads }) => [batches, loads]),
    meals.map(({ factor }) => factor),
    start && eveningWindow({ start, evening: null }),
    kitchen && [kitchen.cooks, Object.entries(kitchen.appliances).toSorted()],
    from,
  ]);

/** The search is content with what it has once its steps are spent. */
function frugal(work: Work): SessionBudget {
  let left = mostSessionSteps;
  return {
    shouldStop: () => left <= 0,
    work: {
      step: (count) => {
        left -= count;
        work.step(count);
      },
    },
  };
}

function* orderOf({ scaled, household, classes, start, work }: Question): InSlices<Result<PrepSession>> {
  const { session } = household;
  const asked = { ...household, session: start === null ? null : session };
  return yield* scaledSessionInSlices(scaled, asked, classes, frugal(work));
}

/** Sessions of one plan, by what they hang on: how much is made, not what is in it. */
const ordersOf = memoize((_: CompiledPlan) =>
  memoize((_classes: readonly KeepingClass[]) => memoizeLatestInSlices("sessions", keptSessions, keyOf, orderOf)),
);

interface SplitQuestion extends Question {
  /** Minutes of hands of the whole in one session. */
  readonly lighterThan: number;
}

function* splitOf(question: SplitQuestion): InSlices<readonly DaySession[]> {
  const { scaled, household, classes, start, from, lighterThan, work } = question;
  const { session } = household;
  const asked = { ...household, session: start === null ? null : session };
  const hour = from ?? startHour(household);
  return yield* splitInSlices({ scaled, household: asked, classes, from: hour }, lighterThan, frugal(work));
}

/** The same over several days. */
const splitsOf = memoize((_: CompiledPlan) =>
  memoize((_classes: readonly KeepingClass[]) =>
    memoizeLatestInSlices("sessions-over-days", keptSessions, keyOf, splitOf),
  ),
);

function questionOf(
  scaled: ScaledPlan,
  household: Household,
  { safety: { classes } }: Pick<RuleSet, "safety">,
  work: Work,
): Question {
  const { session } = household;
  const start = session === null ? null : { instant: session.start, zone: session.zone };
  return { scaled, household, classes, start: usesEvening(scaled.compiled) ? start : null, from: null, work };
}

/** The order of the prep session's work, as good as it is found in a bounded number of steps. Problems: those of `planSession`. */
export function* prepSessionInSlices(
  scaled: ScaledPlan,
  household: Household,
  rules: Pick<RuleSet, "safety">,
  work: Work,
): InSlices<Result<PrepSession>> {
  const { session } = household;
  const question = questionOf(scaled, household, rules, work);
  const ordered = yield* ordersOf(scaled.compiled)(question.classes)(question);
  return ordered.ok && session !== null
    ? ok(withClockTimes(ordered.value, { instant: session.start, zone: session.zone }))
    : ordered;
}

export interface PrepSessions {
  /** All of it in one session. Problems: those of `planSession`. */
  readonly whole: Result<PrepSession>;
  /** The sessions to do it in: that one, or several days' where it is none or more than a day's work. Empty: there is no order. */
  readonly days: readonly DaySession[];
}

/** A plan's work in one session where that serves, otherwise over several days, within twice as many steps. */
export function* prepSessionsInSlices(
  scaled: ScaledPlan,
  household: Household,
  rules: Pick<RuleSet, "safety">,
  work: Work,
): InSlices<PrepSessions> {
  const whole = yield* prepSessionInSlices(scaled, household, rules, work);
  const one = whole.ok ? [wholeDay(scaled, whole.value)] : [];
  const { cooks } = kitchenOf(scaled.bundle.plan.kitchen, household);
  if (whole.ok && !sessionLength(whole.value, scaled, cooks).overDay) return { whole, days: one };
  const lighterThan = whole.ok ? whole.value.handsOnMinutes : Number.POSITIVE_INFINITY;
  const question = { ...questionOf(scaled, household, rules, work), from: startHour(household), lighterThan };
  const days = yield* splitsOf(scaled.compiled)(question.classes)(question);
  return { whole, days: days.length > 0 ? days.map((each) => onTheClock(each, household)) : one };
}

/** `prepSessionInSlices` without a pause. */
export const planPrepSession = (
  scaled: ScaledPlan,
  household: Household,
  rules: Pick<RuleSet, "safety">,
): Result<PrepSession> => runToEnd(prepSessionInSlices(scaled, household, rules, unlimitedWork));

/** `prepSessionsInSlices` without a pause. */
export const planPrepSessions = (
  scaled: ScaledPlan,
  household: Household,
  rules: Pick<RuleSet, "safety">,
): PrepSessions => runToEnd(prepSessionsInSlices(scaled, household, rules, unlimitedWork));

/** With the times of its tasks on the clock of its day. */
function onTheClock(each: DaySession, { session }: Household): DaySession {
  if (session === null) return each;
  const { start, zone } = laterStart(session, each.day);
  return { ...each, session: withClockTimes(each.session, { instant: start, zone }) };
}
