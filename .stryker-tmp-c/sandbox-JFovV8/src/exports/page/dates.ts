// @ts-nocheck
import { Temporal } from "temporal-polyfill";
import type { Household } from "../../domain/model/household.js";

/** In English like the words around them, and spelled here: what a runtime makes of a date changes with its version. */
const weekdays = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"] as const;
const months = [
  ...(["January", "February", "March", "April", "May", "June"] as const),
  ...(["July", "August", "September", "October", "November", "December"] as const),
] as const;

const monthOf = ({ month }: Temporal.PlainDate): string => months[month - 1] ?? String(month);

/** An ISO date as `Sun 1 Mar`. */
export function dayText(date: string): string {
  const day = Temporal.PlainDate.from(date);
  return `${weekdays[day.dayOfWeek - 1] ?? ""} ${day.day} ${monthOf(day).slice(0, 3)}`;
}

/** `1 March 2026`, of the day in UTC. */
export function longDate(at: Date): string {
  const day = Temporal.PlainDate.from(at.toISOString().slice(0, 10));
  return `${day.day} ${monthOf(day)} ${day.year}`;
}

const localTime = (instant: string, zone: string): Temporal.ZonedDateTime =>
  Temporal.Instant.from(instant).toZonedDateTimeISO(zone);

/** An instant as `Sun 1 Mar, 18:05` on the clock of a zone. */
export function momentText(instant: string, zone: string): string {
  const local = localTime(instant, zone);
  return `${dayText(local.toPlainDate().toString())}, ${clockOf(local)}`;
}

const clockOf = (local: Temporal.ZonedDateTime): string => local.toPlainTime().toString().slice(0, 5);

/** Minutes from the start of the session as the clock on the wall shows them; `0:45` where no start is known. */
export function clockText(minute: number, session: Household["session"]): string {
  if (session === null) {
    const whole = Math.round(Math.abs(minute));
    return `${minute < 0 ? "−" : ""}${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
  }
  return clockOf(localTime(session.start, session.zone).add({ seconds: Math.round(minute * 60) }));
}

/** Minutes of the hour on the wall clock at the start; 0 where no start is known. */
export const startMinuteOfHour = (session: Household["session"]): number =>
  session === null ? 0 : localTime(session.start, session.zone).minute;

/** The local date so many days after the session; null where no start is known. */
export const dateOfDay = (day: number, session: Household["session"]): string | null =>
  session === null ? null : localTime(session.start, session.zone).toPlainDate().add({ days: day }).toString();

/** `2 h 35 min`. */
export function lengthText(minutes: number): string {
  const whole = Math.ceil(minutes);
  const parts = [
    whole >= 60 ? `${Math.floor(whole / 60)} h` : "",
    whole % 60 > 0 || whole < 60 ? `${whole % 60} min` : "",
  ];
  return parts.filter((part) => part !== "").join(" ");
}
