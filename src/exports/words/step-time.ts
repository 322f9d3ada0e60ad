import type { SessionStep, SessionWork } from "../../domain/prep-session/session.js";
import { growsWithBatches, loadsOf, minutesOf } from "../../domain/prep-session/task.js";
import { minutesText } from "./minutes-text.js";

/** How long a step takes for all that is made: "80 min"; load after load "3 × 40 min"; null where it takes no time. */
export function stepTime(step: SessionStep, work: Pick<SessionWork, "batches" | "loads">): string | null {
  const all = minutesOf(step, work);
  if (all === 0) return null;
  const loads = growsWithBatches(step) ? 1 : loadsOf(step, work);
  return loads === 1 ? minutesText(all) : `${loads} × ${minutesText(all / loads)}`;
}
