import { Temporal } from "temporal-polyfill";
import type { SessionInput, SessionWork } from "./session.js";

const usualEvening = { from: "20:00", to: "22:00" };
/** Without a start nobody knows how long the night is: as if the session began at 09:00. */
const usualGap = 13 * 60;

/** In minutes of elapsed time, so that a change of the clocks in the night counts as it happens. */
export interface EveningWindow {
  /** From the beginning of the window to the start of the session. */
  readonly beforeSession: number;
  /** How long after its beginning work may still be begun. */
  readonly length: number;
}

const minutesBetween = (from: Temporal.Instant, to: Temporal.Instant): number =>
  Math.floor((to.epochMilliseconds - from.epochMilliseconds) / 60_000);

/** The evening of the local date before the session. A time that the clocks skip is read as the hour after. */
export function eveningWindow({ start, evening }: Pick<SessionInput, "start" | "evening">): EveningWindow {
  const { from, to } = evening ?? usualEvening;
  if (start === null) {
    const length = Temporal.PlainTime.from(from).until(Temporal.PlainTime.from(to)).total("minutes");
    return { beforeSession: usualGap, length };
  }
  const session = Temporal.Instant.from(start.instant);
  const date = session.toZonedDateTimeISO(start.zone).toPlainDate().subtract({ days: 1 });
  const at = (time: string) =>
    date.toZonedDateTime({ timeZone: start.zone, plainTime: Temporal.PlainTime.from(time) }).toInstant();
  return { beforeSession: minutesBetween(at(from), session), length: minutesBetween(at(from), at(to)) };
}

/** ISO date and time with the zone's offset, so many minutes after the start; null when there is no start. */
export function clockOf(start: SessionInput["start"]): (minute: number) => string | null {
  if (start === null) return () => null;
  const begun = Temporal.Instant.from(start.instant);
  const known = new Map<number, string>();
  return (minute) => {
    const time =
      known.get(minute) ??
      begun.add({ minutes: minute }).toZonedDateTimeISO(start.zone).toString({ timeZoneName: "never" });
    known.set(minute, time);
    return time;
  };
}

/**
 * Ids of the steps done the evening before: those that may be, and what must come before them. Something made from
 * other components of this session is not, because those would have to be made that evening too.
 */
export function eveningSteps(work: SessionWork): ReadonlySet<string> {
  if (work.uses.length > 0) return new Set();
  const byId = new Map(work.steps.map((step) => [step.id, step]));
  const found = new Set<string>();
  const add = (id: string) => {
    if (found.has(id)) return;
    found.add(id);
    for (const before of byId.get(id)?.after ?? []) add(before);
  };
  for (const step of work.steps) if (step.eveningBefore) add(step.id);
  return found;
}
