import type { Household } from "../model/household.js";
import type { KeepingClass } from "../model/keeping.js";
import { atOnce, type InTurns } from "../work.js";
import { planInTurns } from "../prep-session/schedule.js";
import type { PrepSession, SessionBudget } from "../prep-session/session.js";
import type { Result } from "../problem.js";
import type { ScaledPlan } from "./scaled.js";
import { sessionInput, type SessionChoice, type SessionPart } from "./session-input.js";

/**
 * The prep session of a scaled plan. What is eaten today is taken warm from the pot where that keeps every limit;
 * otherwise it is put into the cold first, like all the rest. Where neither keeps them, each load is taken by
 * itself through every step. Problems: those of `planSession`.
 *
 * @param classes kinds of food of the rules in force, which say what needs the cold
 * @param part what of it is done in this session; absent: all
 */
export const scaledSession = (
  scaled: ScaledPlan,
  household: Household,
  classes: readonly KeepingClass[],
  budget: SessionBudget = {},
  part?: SessionPart,
): Result<PrepSession> => atOnce(scaledSessionInTurns(scaled, household, classes, budget, part));

/** The same turn by turn. */
export function* scaledSessionInTurns(
  scaled: ScaledPlan,
  household: Household,
  classes: readonly KeepingClass[],
  budget: SessionBudget,
  part?: SessionPart,
): InTurns<Result<PrepSession>> {
  const of = part === undefined ? {} : { part };
  const input = (choice: SessionChoice) => sessionInput(scaled, household, classes, { ...of, ...choice });
  const usual = input({});
  const isWarm = usual.work.some(({ uses }) => uses.some((use) => use.warm === true));
  if (isWarm) {
    const warm = yield* planInTurns(usual, { ...budget, explain: false });
    if (warm.ok) return warm;
  }
  const cold = isWarm ? input({ mayBeWarm: false }) : usual;
  const byLoad = input({ mayBeWarm: false, byLoad: true });
  for (const each of [cold, byLoad]) {
    const found = yield* planInTurns(each, { ...budget, explain: false });
    if (found.ok || !found.problems.some(({ code }) => code === "WAITS_CANNOT_BE_KEPT")) return found;
  }
  return yield* planInTurns(cold, budget);
}
