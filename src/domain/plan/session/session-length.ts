import type { PrepSession } from "../../prep-session/session.js";
import type { ScaledPlan } from "../scaled.js";

/** Most minutes of work that one cook is asked for on one day. Common practice, no source. */
export const dayOfWork = 360;

/** Minutes of washing up and wiping down at the end: some, more for each hour of work, and no more than a full sink takes. Common practice, no source. */
const clearingUp = { least: 10, perHour: 5, most: 45 } as const;

/** Minutes to clear up after a session's work, beside its total; none where nothing is made. */
export function clearingUpMinutes({ tasks, handsOnMinutes }: Pick<PrepSession, "tasks" | "handsOnMinutes">): number {
  if (tasks.length === 0) return 0;
  const { least, perHour, most } = clearingUp;
  return Math.min(most, least + perHour * Math.round(handsOnMinutes / 60));
}

/** Cooks of whom none has more than a day's work. */
export const cooksForADay = ({ handsOnMinutes }: Pick<PrepSession, "handsOnMinutes">): number =>
  Math.max(1, Math.ceil(handsOnMinutes / dayOfWork));

/** What a reader should know of a session's length before the day. */
interface SessionLength {
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
