import { Temporal } from "temporal-polyfill";
import type { Household } from "../../model/household.js";
import { readOrNull } from "../../read-or-null.js";

/** The local date on which the household's session begins, ISO; null when it did not say. */
export function sessionDate({ session }: Household): string | null {
  if (session === null) return null;
  return Temporal.Instant.from(session.start).toZonedDateTimeISO(session.zone).toPlainDate().toString();
}

/** The same hour on the clock so many days later. */
export function laterStart(
  session: NonNullable<Household["session"]>,
  days: number,
): NonNullable<Household["session"]> {
  const start = Temporal.Instant.from(session.start).toZonedDateTimeISO(session.zone).add({ days });
  return days === 0 ? session : { ...session, start: start.toInstant().toString() };
}

/** The hour on the clock at which the household's sessions begin, `HH:MM`; 09:00 where it did not say. */
export function startHour({ session }: Pick<Household, "session">): string {
  if (session === null) return "09:00";
  return Temporal.Instant.from(session.start).toZonedDateTimeISO(session.zone).toPlainTime().toString().slice(0, 5);
}

/**
 * The hour on the clock so many minutes after a session of some day began, `HH:MM`, a begun minute as a whole one; null where that
 * is past midnight.
 */
export function hourAfter(household: Pick<Household, "session">, day: number, minutes: number): string | null {
  const whole = Math.ceil(minutes - 1e-9);
  if (household.session === null) {
    const time = Temporal.PlainDateTime.from("2026-01-01T00:00")
      .withPlainTime(startHour(household))
      .add({ minutes: whole });
    return time.day > 1 || time.month > 1 ? null : time.toPlainTime().toString().slice(0, 5);
  }
  const { start, zone } = laterStart(household.session, day);
  const begun = Temporal.Instant.from(start).toZonedDateTimeISO(zone);
  const time = begun.add({ minutes: whole });
  return time.toPlainDate().equals(begun.toPlainDate()) ? time.toPlainTime().toString().slice(0, 5) : null;
}

/** Whole days from the day of the session, or from `today` where nobody says when that is, to a date; null without either. */
export function daysUntil(date: string | null, household: Household, today: string | null): number | null {
  const from = sessionDate(household) ?? today;
  return date === null || from === null ? null : daysBetween(from, date);
}

/** The instant (ISO) of an hour on the clock, `HH:MM`; one that the clocks skip is read as the hour after. */
export const instantAt = (date: string, hour: string, zone: string): string =>
  Temporal.PlainDate.from(date)
    .toZonedDateTime({ timeZone: zone, plainTime: Temporal.PlainTime.from(hour) })
    .toInstant()
    .toString();

/** ISO date so many days after another. */
export const daysAfter = (date: string, days: number): string => Temporal.PlainDate.from(date).add({ days }).toString();

/** Whole days from one ISO date to another; negative when the second is earlier. */
const daysBetween = (from: string, to: string): number =>
  Temporal.PlainDate.from(from).until(Temporal.PlainDate.from(to), { largestUnit: "day" }).days;

/** `2026-03-01`, and nothing longer. */
export const isDate = (text: string): boolean =>
  /^\d{4}-\d{2}-\d{2}$/.test(text) && readOrNull(() => Temporal.PlainDate.from(text)) !== null;

/** An instant with its offset: `2026-03-01T09:00:00Z`. */
export const isInstant = (text: string): boolean =>
  text.length <= 60 && readOrNull(() => Temporal.Instant.from(text)) !== null;
