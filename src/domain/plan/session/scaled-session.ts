import type { Household } from "../../model/household.js";
import type { KeepingClass } from "../../model/keeping.js";
import { runToEnd, type InSlices } from "../../counted-work.js";
import { planInSlices } from "../../prep-session/schedule.js";
import type { PrepSession, SessionBudget, SessionInput } from "../../prep-session/session.js";
import type { Result } from "../../problem.js";
import type { ScaledPlan } from "../scaled.js";
import { sessionInput, type SessionChoice, type SessionPart } from "./session-input.js";

/**
 * Dead ends after which the next way is tried, where a way has shown no order yet: one that has none may take all steps to
 * tell, and leave nothing for one that has.
 */
const glance = 100;

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
): Result<PrepSession> => runToEnd(scaledSessionInSlices(scaled, household, classes, budget, part));

/** The same turn by turn. */
export function* scaledSessionInSlices(
  scaled: ScaledPlan,
  household: Household,
  classes: readonly KeepingClass[],
  budget: SessionBudget,
  part?: SessionPart,
): InSlices<Result<PrepSession>> {
  const of = part === undefined ? {} : { part };
  const input = (choice: SessionChoice) => sessionInput(scaled, household, classes, { ...of, ...choice });
  const usual = input({});
  const isWarm = usual.work.some(({ uses }) => uses.some((use) => use.warm === true));
  const cold = isWarm ? input({ mayBeWarm: false }) : usual;
  const ways = [...(isWarm ? [usual] : []), cold, input({ mayBeWarm: false, byLoad: true })];
  for (const [at, way] of ways.entries()) {
    const quiet = { ...budget, explain: false };
    const conflictLimit =
      at === ways.length - 1 ? {} : { conflictLimit: Math.min(glance, budget.conflictLimit ?? glance) };
    const found = yield* planInSlices(way, { ...quiet, ...conflictLimit });
    if (found.ok) return (yield* shorter(way, found.value, quiet)) ?? found;
    if (!found.problems.every(({ code }) => code === "WAITS_CANNOT_BE_KEPT" || code === "TOO_LARGE")) return found;
  }
  return yield* planInSlices(cold, budget);
}

/** What all of the budget finds, where a glance found something that may not be the shortest; null: nothing more. */
function* shorter(way: SessionInput, found: PrepSession, budget: SessionBudget): InSlices<Result<PrepSession> | null> {
  if (found.optimal && found.handsFreeOptimal) return null;
  if ((budget.conflictLimit ?? Number.POSITIVE_INFINITY) <= glance || budget.shouldStop?.() === true) return null;
  const again = yield* planInSlices(way, budget);
  return again.ok && again.value.totalMinutes <= found.totalMinutes ? again : null;
}
