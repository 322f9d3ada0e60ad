import type { Household } from "../domain/model/household.js";
import { onceFor } from "../domain/once-for.js";
import type { CompiledPlan } from "../domain/plan/compiled-plan.js";
import { sessionInput } from "../domain/plan/session-input.js";
import type { ScaledPlan } from "../domain/plan/scaled.js";
import { eveningWindow } from "../domain/prep-session/evening.js";
import { planSession, withClockTimes } from "../domain/prep-session/schedule.js";
import type { PrepSession, SessionInput } from "../domain/prep-session/session.js";
import { ok, type Result } from "../domain/problem.js";
import type { Clock } from "./deps.js";

/** The longest one session is thought about; what is found by then is given with its gap. */
const mostMilliseconds = 1_000;

/** Sessions of one plan that are kept: most households cook one of few numbers of servings. */
const keptSessions = 8;

const kept = onceFor((_: CompiledPlan) => new Map<string, Result<PrepSession>>());

/** Of one plan, sessions with equal keys are the same: they hang on how much is made, not on what is in it. */
const keyOf = ({ components, meals }: ScaledPlan, start: SessionInput["start"]): string =>
  JSON.stringify([
    components.map(({ batches, loads }) => [batches, loads]),
    meals.map(({ factor }) => factor),
    start && eveningWindow({ start, evening: null }),
  ]);

/** Work that may be done the evening before hangs on how long before the session that is; the order of all other work does not. */
const usesEvening = onceFor(({ components, meals }: CompiledPlan): boolean =>
  [...components.map(({ route, component }) => route?.steps ?? component.steps), ...meals.map(({ meal }) => meal.steps)]
    .flat()
    .some(({ eveningBefore }) => eveningBefore),
);

/** The order of the prep session's work, within a second. Problems: those of `planSession`. */
export function planPrepSession(scaled: ScaledPlan, household: Household, clock: Clock): Result<PrepSession> {
  const { session } = household;
  const start = session === null ? null : { instant: session.start, zone: session.zone };
  const ordered = orderFor(scaled, household, usesEvening(scaled.compiled) ? start : null, clock);
  return ordered.ok && start !== null ? ok(withClockTimes(ordered.value, start)) : ordered;
}

function orderFor(
  scaled: ScaledPlan,
  household: Household,
  start: SessionInput["start"],
  clock: Clock,
): Result<PrepSession> {
  const sessions = kept(scaled.compiled);
  const key = keyOf(scaled, start);
  const known = sessions.get(key);
  if (known !== undefined) return known;
  const until = clock().getTime() + mostMilliseconds;
  const input = { ...sessionInput(scaled, household), start };
  const found = planSession(input, { shouldStop: () => clock().getTime() > until });
  // A search that was cut short may come further the next time.
  if (found.ok && found.value.optimal && found.value.handsFreeOptimal) keep(sessions, key, found);
  return found;
}

function keep(sessions: Map<string, Result<PrepSession>>, key: string, found: Result<PrepSession>): void {
  sessions.set(key, found);
  const oldest = sessions.keys().next();
  if (sessions.size > keptSessions && oldest.done !== true) sessions.delete(oldest.value);
}
