import type { Household } from "../domain/model/household.js";
import type { KeepingClass } from "../domain/model/keeping.js";
import { latest, onceFor } from "../domain/once-for.js";
import type { CompiledPlan } from "../domain/plan/compiled-plan.js";
import type { RuleSet } from "../domain/plan/rule-set.js";
import type { ScaledPlan } from "../domain/plan/scaled.js";
import { scaledSession } from "../domain/plan/scaled-session.js";
import { laterStart, startHour } from "../domain/plan/session-date.js";
import { kitchenOf } from "../domain/plan/session-input.js";
import { sessionLength } from "../domain/plan/session-length.js";
import { splitSession, wholeDay, type DaySession } from "../domain/plan/split-session.js";
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
  /** Local time at which sessions begin; null: the answer does not hang on it. */
  readonly from: string | null;
  readonly clock: Clock;
}

const keyOf = ({ scaled: { components, meals }, household: { kitchen }, start, from }: Question): string =>
  JSON.stringify([
    components.map(({ batches, loads }) => [batches, loads]),
    meals.map(({ factor }) => factor),
    start && eveningWindow({ start, evening: null }),
    kitchen && [kitchen.cooks, Object.entries(kitchen.appliances).toSorted()],
    from,
  ]);

const withinTime = (clock: Clock) => {
  const until = clock().getTime() + mostMilliseconds;
  return { shouldStop: () => clock().getTime() > until };
};

function orderOf({ scaled, household, classes, start, clock }: Question): Result<PrepSession> {
  const { session } = household;
  const asked = { ...household, session: start === null ? null : session };
  return scaledSession(scaled, asked, classes, withinTime(clock));
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

interface SplitQuestion extends Question {
  /** Minutes of hands of the whole in one session. */
  readonly lighterThan: number;
}

function splitOf(question: SplitQuestion): readonly DaySession[] {
  const { scaled, household, classes, start, from, lighterThan, clock } = question;
  const { session } = household;
  const asked = { ...household, session: start === null ? null : session };
  const hour = from ?? startHour(household);
  return splitSession({ scaled, household: asked, classes, from: hour }, lighterThan, withinTime(clock));
}

/** The same over several days. */
const splitsOf = onceFor((_: CompiledPlan) =>
  onceFor((_classes: readonly KeepingClass[]) => {
    const ofThisMinute = latest(
      keptSessions,
      (question: SplitQuestion) => `${keyOf(question)} ${Math.floor(question.clock().getTime() / keptMilliseconds)}`,
      splitOf,
    );
    return latest(keptSessions, keyOf, ofThisMinute, (found) => found.length > 0);
  }),
);

function questionOf(
  scaled: ScaledPlan,
  household: Household,
  { safety: { classes } }: Pick<RuleSet, "safety">,
  clock: Clock,
): Question {
  const { session } = household;
  const start = session === null ? null : { instant: session.start, zone: session.zone };
  return { scaled, household, classes, start: usesEvening(scaled.compiled) ? start : null, from: null, clock };
}

/** The order of the prep session's work, within a third of a second. Problems: those of `planSession`. */
export function planPrepSession(
  scaled: ScaledPlan,
  household: Household,
  rules: Pick<RuleSet, "safety">,
  clock: Clock,
): Result<PrepSession> {
  const { session } = household;
  const question = questionOf(scaled, household, rules, clock);
  const ordered = ordersOf(scaled.compiled)(question.classes)(question);
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

/** A plan's work in one session where that serves, otherwise over several days, within twice that time. */
export function planPrepSessions(
  scaled: ScaledPlan,
  household: Household,
  rules: Pick<RuleSet, "safety">,
  clock: Clock,
): PrepSessions {
  const whole = planPrepSession(scaled, household, rules, clock);
  const one = whole.ok ? [wholeDay(scaled, whole.value)] : [];
  const { cooks } = kitchenOf(scaled.bundle.plan.kitchen, household);
  if (whole.ok && !sessionLength(whole.value, scaled, cooks).overDay) return { whole, days: one };
  const lighterThan = whole.ok ? whole.value.handsOnMinutes : Number.POSITIVE_INFINITY;
  const question = questionOf(scaled, household, rules, clock);
  const days = splitsOf(scaled.compiled)(question.classes)({ ...question, from: startHour(household), lighterThan });
  return { whole, days: days.length > 0 ? days.map((each) => onTheClock(each, household)) : one };
}

/** With the times of its tasks on the clock of its day. */
function onTheClock(each: DaySession, { session }: Household): DaySession {
  if (session === null) return each;
  const { start, zone } = laterStart(session, each.day);
  return { ...each, session: withClockTimes(each.session, { instant: start, zone }) };
}
