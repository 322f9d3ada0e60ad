// @ts-nocheck
import type { Household } from "../domain/model/household.js";
import { sessionInput } from "../domain/plan/session-input.js";
import type { ScaledPlan } from "../domain/plan/scaled.js";
import { planSession } from "../domain/prep-session/schedule.js";
import type { PrepSession } from "../domain/prep-session/session.js";
import type { Result } from "../domain/problem.js";
import type { Clock } from "./deps.js";

/** The longest one session is thought about; what is found by then is given with its gap. */
const mostMilliseconds = 1_000;

/** The order of the prep session's work, within a second. Problems: those of `planSession`. */
export function planPrepSession(scaled: ScaledPlan, household: Household, clock: Clock): Result<PrepSession> {
  const until = clock().getTime() + mostMilliseconds;
  return planSession(sessionInput(scaled, household), { shouldStop: () => clock().getTime() > until });
}
