import type { Household } from "../model/household.js";
import type { KeepingClass } from "../model/keeping.js";
import { planSession } from "../prep-session/schedule.js";
import type { PrepSession, SessionBudget } from "../prep-session/session.js";
import type { Result } from "../problem.js";
import type { ScaledPlan } from "./scaled.js";
import { sessionInput } from "./session-input.js";

/**
 * The prep session of a scaled plan. What is eaten today is taken warm from the pot where that keeps every limit;
 * otherwise it is put into the cold first, like all the rest. Problems: those of `planSession`.
 *
 * @param classes kinds of food of the rules in force, which say what needs the cold
 */
export function scaledSession(
  scaled: ScaledPlan,
  household: Household,
  classes: readonly KeepingClass[],
  budget: SessionBudget = {},
): Result<PrepSession> {
  const input = sessionInput(scaled, household, classes);
  const isWarm = input.work.some(({ uses }) => uses.some((use) => use.warm === true));
  if (!isWarm) return planSession(input, budget);
  const warm = planSession(input, { ...budget, explain: false });
  return warm.ok ? warm : planSession(sessionInput(scaled, household, classes, false), budget);
}
