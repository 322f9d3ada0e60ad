import { utcDay } from "../../domain/utc-day.js";
import { Temporal } from "temporal-polyfill";
import type { Household } from "../../domain/model/household.js";
import { readerLocale } from "../../domain/quantity/reader-locale.js";
import { longDayText, momentText, shortDateText, timeText, weekdayText } from "../words/clock-text.js";
import type { NameBook } from "../words/name-book.js";
import type { Words } from "../words/words.js";

/** A locale in which dates fit the words. */
export const wordsLocale = ({ language }: Pick<Words, "language">): string => (language === "en" ? "en-GB" : language);

/** The reader's own locale where the words are in its language; else one in which dates fit the words. */
export const dateLocale = ({ reader, words }: Pick<NameBook, "reader" | "words">): string =>
  readerLocale(reader.locale).tag.language === words.language ? reader.locale : wordsLocale(words);

/** An ISO date as `Sun, 1 Mar`. */
export const dayText = (date: string, book: Pick<NameBook, "reader" | "words">): string =>
  shortDateText(date, dateLocale(book));

/** An ISO date as `Sunday`. */
export const weekday = (date: string, book: Pick<NameBook, "reader" | "words">): string =>
  weekdayText(date, dateLocale(book));

/** `1 March 2026`, of the day in UTC. */
export const longDate = (at: Date, locale: string): string => longDayText(utcDay(at), locale);

const localTime = (instant: string, zone: string): Temporal.ZonedDateTime =>
  Temporal.Instant.from(instant).toZonedDateTimeISO(zone);

/** An instant as `Sun, 1 Mar, 18:05` on the clock of a zone. */
export const whenText = (instant: string, zone: string, book: Pick<NameBook, "reader" | "words">): string =>
  momentText(instant, zone, dateLocale(book));

/** Minutes from the start of the work as the clock on the wall shows them; null where no start is known. */
export function wallClock(
  minute: number,
  session: Household["session"],
  book: Pick<NameBook, "reader" | "words">,
): string | null {
  if (session === null) return null;
  const at = localTime(session.start, session.zone).add({ seconds: Math.round(minute * 60) });
  return timeText(at.toInstant().toString(), session.zone, dateLocale(book));
}

/** Minutes from the start as they stand along a chart: those of the wall, `0:45` where no start is known. */
export function clockText(minute: number, session: Household["session"]): string {
  if (session === null) {
    const whole = Math.round(Math.abs(minute));
    return `${minute < 0 ? "−" : ""}${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
  }
  return localTime(session.start, session.zone)
    .add({ seconds: Math.round(minute * 60) })
    .toPlainTime()
    .toString()
    .slice(0, 5);
}

/** Minutes of the hour on the wall clock at the start; 0 where no start is known. */
export const startMinuteOfHour = (session: Household["session"]): number =>
  session === null ? 0 : localTime(session.start, session.zone).minute;

/** The local date so many days after the session; null where no start is known. */
export const dateOfDay = (day: number, session: Household["session"]): string | null =>
  session === null ? null : localTime(session.start, session.zone).toPlainDate().add({ days: day }).toString();
