import type { PrepSession } from "../prep-session/session.js";
import type { ScaledPlan } from "./scaled.js";

/** Most minutes of work that one cook is asked for on one day. Common practice, no source. */
export const dayOfWork = 360;

/** What a reader should know of a session's length before the day. */
export interface SessionLength {
  /** Minutes the writer promises, where the session takes longer; null: it does not, or nothing is promised. */
  readonly promised: number | null;
  /** The hands have more to do than in a day. */
  readonly overDay: boolean;
}

/** @param cooks who share the work */
export function sessionLength(
  { totalMinutes, handsOnMinutes }: Pick<PrepSession, "totalMinutes" | "handsOnMinutes">,
  { bundle }: Pick<ScaledPlan, "bundle">,
  cooks: number,
): SessionLength {
  const { promisedMinutes } = bundle.plan;
  return {
    promised: promisedMinutes !== null && totalMinutes > promisedMinutes ? promisedMinutes : null,
    overDay: handsOnMinutes > dayOfWork * cooks,
  };
}
