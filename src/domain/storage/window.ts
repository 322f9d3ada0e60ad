import { Temporal } from "temporal-polyfill";
import { onceFor } from "../once-for.js";
import type { KeepingRule, PublishedKeepingRule } from "../model/keeping.js";

/** A length as its rule counts it. */
export type Span = Pick<PublishedKeepingRule, "days" | "counts" | "firstDay">;

/** When something is made or thawed: an instant (ISO) seen from an IANA zone. */
export interface Moment {
  readonly start: string;
  readonly zone: string;
}

/** Where a length ends. */
export interface End {
  /** Days after the session's day, fractions only for HOURS. */
  readonly day: number;
  /** ISO date of the last day, in the zone of the session; null without a session. */
  readonly lastDay: string | null;
  /** The last second, an ISO instant; null without a session. */
  readonly until: string | null;
}

/** A writer's whole days count from the day after making; anything finer counts as hours. */
export const writerSpan = ({ days }: Pick<KeepingRule, "days">): Span => ({
  days,
  counts: Number.isInteger(days) ? "DAYS" : "HOURS",
  firstDay: 0,
});

/** Days after the day (DAYS) or the moment (HOURS) of making: a rule that calls the day of making day 1 leaves one less. */
export const lastingDays = ({ days, counts, firstDay }: Span): number =>
  counts === "HOURS" ? days : Math.max(0, days - firstDay);

/** Whole seconds; a millionth more, because hours as fractions of days are not exact in binary. */
const secondsOfDays = (days: number): number => Math.floor(days * 86_400 + 1e-6);

/** A session's start, and what was worked out from it: the rules of a plan ask for the same few dates again and again. */
const calendarOf = onceFor((session: Moment) => ({
  start: Temporal.Instant.from(session.start).toZonedDateTimeISO(session.zone),
  dates: new Map<number, string>(),
  ends: new Map<string, End>(),
}));

const endOfDay = (date: Temporal.PlainDate, zone: string): string =>
  date.add({ days: 1 }).toZonedDateTime(zone).toInstant().subtract({ seconds: 1 }).toString();

/**
 * Where a length ends that begins on `madeDay` (days after the session's day, at the session's time of day).
 * DAYS go to the end of a calendar day in the session's zone; HOURS are elapsed time, so a clock change does not move them.
 * A fraction of a day in DAYS is cut off, never rounded up. @throws RangeError for a moment that is none
 */
export function endOf(span: Span, madeDay: number, session: Moment | null): End {
  const lasting = lastingDays(span);
  const day = madeDay + (span.counts === "HOURS" ? lasting : Math.floor(lasting));
  if (session === null) return { day, lastDay: null, until: null };
  const { start, ends } = calendarOf(session);
  const key = `${span.counts} ${lasting} ${madeDay}`;
  const known = ends.get(key);
  if (known !== undefined) return known;
  const made = start.add({ days: madeDay });
  const end = { day, ...(span.counts === "HOURS" ? afterHours(made, lasting) : afterDays(made, lasting)) };
  ends.set(key, end);
  return end;
}

function afterHours(made: Temporal.ZonedDateTime, lasting: number): Omit<End, "day"> {
  const until = made.add({ seconds: secondsOfDays(lasting) });
  return { lastDay: until.toPlainDate().toString(), until: until.toInstant().toString() };
}

function afterDays(made: Temporal.ZonedDateTime, lasting: number): Omit<End, "day"> {
  const lastDay = made.toPlainDate().add({ days: Math.floor(lasting) });
  return { lastDay: lastDay.toString(), until: endOfDay(lastDay, made.timeZoneId) };
}

/** Sorts the end that comes first to the front. Without a session the smaller number does, and of equals the one in hours. */
export function compareEnds(
  a: End & { readonly counts: Span["counts"] },
  b: End & { readonly counts: Span["counts"] },
) {
  if (a.until !== null && b.until !== null && a.until !== b.until) {
    const order = Date.parse(a.until) - Date.parse(b.until);
    if (order !== 0) return order;
  }
  const hoursFirst = Number(a.counts !== "HOURS") - Number(b.counts !== "HOURS");
  return a.day - b.day || hoursFirst;
}

/** ISO date of a day after the session, in its zone; null without a session. */
export function dateOfDay(day: number, session: Moment | null): string | null {
  if (session === null) return null;
  const { start, dates } = calendarOf(session);
  const date = dates.get(day) ?? start.toPlainDate().add({ days: day }).toString();
  dates.set(day, date);
  return date;
}

/** Whether a day after the session lies past an end. A meal's hour is not known, so its day is what counts. */
export const isPast = (day: number, end: End, session: Moment | null): boolean => {
  const date = dateOfDay(day, session);
  return date !== null && end.lastDay !== null ? date > end.lastDay : day > Math.floor(end.day);
};
