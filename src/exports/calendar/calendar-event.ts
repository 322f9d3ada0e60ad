import { daysAfter } from "../../domain/plan/session/session-date.js";
import { calendarDate, calendarInstant, calendarText, type CalendarProperty } from "./calendar-lines.js";

/** One entry of a calendar. */
export interface CalendarEvent {
  /** What it is about, the same in every revision: part of its UID. */
  readonly thing: string;
  readonly summary: string;
  readonly description: string;
  /** Instants (ISO), or a whole day (ISO date). `end` null: no length. */
  readonly at: { readonly start: string; readonly end: string | null } | { readonly date: string };
  /** When it reminds, as a duration from its start (RFC 5545, 3.8.6.3); null: not at all. */
  readonly alarm: string | null;
  /** It takes up the reader's time. */
  readonly busy: boolean;
}

/** What all entries of one calendar share. */
export interface CalendarFrame {
  /** What follows the thing in a UID. */
  readonly uid: string;
  readonly revision: number;
  readonly publishedAt: Date;
  readonly address: string;
}

/**
 * The properties of an entry. Instants are in UTC, which needs no time zone rules and is right in every night of a clock change;
 * days are dates, which are the same day wherever the reader is.
 */
export function eventProperties(event: CalendarEvent, frame: CalendarFrame): readonly CalendarProperty[] {
  const { thing, summary, description, at, alarm, busy } = event;
  return [
    ["BEGIN", "VEVENT"],
    ["UID", `${encodeURIComponent(thing)}.${frame.uid}`],
    ["DTSTAMP", calendarInstant(frame.publishedAt.toISOString())],
    ["SEQUENCE", String(frame.revision)],
    ...timesOf(at),
    ["SUMMARY", calendarText(summary)],
    ...(description === "" ? [] : [["DESCRIPTION", calendarText(description)] as const]),
    ["URL", frame.address],
    ["TRANSP", busy ? "OPAQUE" : "TRANSPARENT"],
    ...(alarm === null ? [] : alarmProperties(alarm, summary)),
    ["END", "VEVENT"],
  ];
}

function timesOf(at: CalendarEvent["at"]): readonly CalendarProperty[] {
  if ("date" in at) {
    // The end of a whole day is the first day that is no longer in it.
    return [
      ["DTSTART;VALUE=DATE", calendarDate(at.date)],
      ["DTEND;VALUE=DATE", calendarDate(daysAfter(at.date, 1))],
    ];
  }
  const start: CalendarProperty = ["DTSTART", calendarInstant(at.start)];
  // An end must lie after its start.
  return at.end === null || Date.parse(at.end) <= Date.parse(at.start)
    ? [start]
    : [start, ["DTEND", calendarInstant(at.end)]];
}

const alarmProperties = (trigger: string, summary: string): readonly CalendarProperty[] => [
  ["BEGIN", "VALARM"],
  ["ACTION", "DISPLAY"],
  ["TRIGGER", trigger],
  ["DESCRIPTION", calendarText(summary)],
  ["END", "VALARM"],
];
