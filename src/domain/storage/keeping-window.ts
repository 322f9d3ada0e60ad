import { Temporal } from "temporal-polyfill";
import { memoize } from "../memoize.js";
import type { KeepingRule, PublishedKeepingRule } from "../model/keeping.js";
import { usualMealTime, type Meal } from "../model/plan.js";

/** A length as its rule counts it. */
export type Span = Pick<PublishedKeepingRule, "days" | "counts" | "firstDay">;

/** When something is made or thawed: an instant (ISO) seen from an IANA zone. */
export interface Moment {
  readonly start: string;
  readonly zone: string;
}

/** Where a length ends. */
export interface End {
  /** Days after the session's day (DAYS) or after its start (HOURS, with fractions). */
  readonly day: number;
  /** The same from midnight before the session: where the last day is over, or the last hour. Without a session's start, from 09:00. */
  readonly clock: number;
  /** ISO date of the last day, in the zone of the session; null without a session. */
  readonly lastDay: string | null;
  /** The last second, an ISO instant; null without a session. */
  readonly until: string | null;
}

/** When something is eaten. */
export type MealTime = Pick<Meal, "day" | "at">;

/** Where a session's start is not given, it is reckoned from nine in the morning. */
const usualStart = 9 / 24;

/** From midnight to the last second of a day. */
const wholeDay = 86_399 / 86_400;

/** What plans go by: the lower end where a source prints a range. */
export const plannedSpan = ({ days, daysFrom, counts, firstDay }: PublishedKeepingRule): Span => ({
  days: daysFrom ?? days,
  counts,
  firstDay,
});

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
const calendarOf = memoize((session: Moment) => ({
  start: Temporal.Instant.from(session.start).toZonedDateTimeISO(session.zone),
  dates: new Map<number, string>(),
  meals: new Map<string, number>(),
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
  if (session === null)
    return { day, clock: day + (span.counts === "HOURS" ? usualStart : wholeDay), lastDay: null, until: null };
  const { start, ends } = calendarOf(session);
  const key = `${span.counts} ${lasting} ${madeDay}`;
  const known = ends.get(key);
  if (known !== undefined) return known;
  const made = start.add({ days: madeDay });
  const end = { day, ...(span.counts === "HOURS" ? afterHours(made, lasting, start) : afterDays(made, lasting, day)) };
  ends.set(key, end);
  return end;
}

function afterHours(made: Temporal.ZonedDateTime, lasting: number, start: Temporal.ZonedDateTime): Omit<End, "day"> {
  const until = made.add({ seconds: secondsOfDays(lasting) });
  const days = start.toPlainDate().until(until.toPlainDate(), { largestUnit: "days" }).days;
  return {
    clock: days + (until.hour * 60 + until.minute) / 1440,
    lastDay: until.toPlainDate().toString(),
    until: until.toInstant().toString(),
  };
}

function afterDays(made: Temporal.ZonedDateTime, lasting: number, day: number): Omit<End, "day"> {
  const lastDay = made.toPlainDate().add({ days: Math.floor(lasting) });
  return { clock: day + wholeDay, lastDay: lastDay.toString(), until: endOfDay(lastDay, made.timeZoneId) };
}

/** The share of a day that is over at `HH:MM`. */
const clockOf = (at: string): number => (Number(at.slice(0, 2)) * 60 + Number(at.slice(3, 5))) / 1440;

/** Hours from the start of a session, where nobody gives it from nine, to a meal, with its hour as the clock has it. */
export const hoursUntil = ({ day, at }: MealTime): number => (day + clockOf(at ?? usualMealTime) - usualStart) * 24;

/** Sorts the end that comes first to the front, and of equals the one in hours. */
export function compareEnds(
  a: End & { readonly counts: Span["counts"] },
  b: End & { readonly counts: Span["counts"] },
) {
  if (a.until !== null && b.until !== null && a.until !== b.until) {
    const order = Date.parse(a.until) - Date.parse(b.until);
    if (order !== 0) return order;
  }
  const hoursFirst = Number(a.counts !== "HOURS") - Number(b.counts !== "HOURS");
  return a.clock - b.clock || hoursFirst;
}

/** ISO date of a day after the session, in its zone; null without a session. */
export function dateOfDay(day: number, session: Moment | null): string | null {
  if (session === null) return null;
  const { start, dates } = calendarOf(session);
  const date = dates.get(day) ?? start.toPlainDate().add({ days: day }).toString();
  dates.set(day, date);
  return date;
}

/** Whether a meal lies past an end: 48 hours from nine in the morning are over before the supper of the second day. */
export function isPast(meal: MealTime, end: End, session: Moment | null): boolean {
  if (session === null || end.until === null) return meal.day + clockOf(meal.at ?? usualMealTime) > end.clock + 1e-9;
  return instantOf(meal, session) > Date.parse(end.until);
}

function instantOf({ day, at = usualMealTime }: MealTime, session: Moment): number {
  const { start, meals } = calendarOf(session);
  const key = `${day} ${at}`;
  const known = meals.get(key);
  if (known !== undefined) return known;
  const date = start.toPlainDate().add({ days: day });
  const eaten = date.toZonedDateTime({ timeZone: start.timeZoneId, plainTime: Temporal.PlainTime.from(at) });
  meals.set(key, eaten.epochMilliseconds);
  return eaten.epochMilliseconds;
}

/** The last day on which a meal of an hour comes in time; below 0: none. */
export function lastDayFor(at: string | undefined, end: End, session: Moment | null): number {
  const last = Math.floor(end.clock);
  const time = at === undefined ? {} : { at };
  return [last, last - 1].find((day) => day >= 0 && !isPast({ day, ...time }, end, session)) ?? -1;
}
