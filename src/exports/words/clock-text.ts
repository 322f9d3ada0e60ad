import { memoizeLatest } from "../../domain/memoize.js";
import { intlTag } from "../../domain/quantity/intl-tag.js";

type Asked = readonly [locale: string, zone: string, parts: Intl.DateTimeFormatOptions];

/** Formats are dear to make; endless new locales and zones make this slower, never larger. */
const remembered = memoizeLatest(
  "date-formats",
  200,
  JSON.stringify as (asked: Asked) => string,
  ([locale, zone, parts]: Asked) =>
    new Intl.DateTimeFormat(intlTag(locale), { ...parts, timeZone: zone, numberingSystem: "latn" }),
);

const formatOf = (...asked: Asked): Intl.DateTimeFormat => remembered(asked);

/** Editions of the locale data differ in which space they write. */
const spaced = (text: string): string => text.replace(/[\u00a0\u202f]/g, " ");

/** "09:30", of an ISO instant, in a zone; "9:30 AM" where the clock has twelve hours. */
export const timeText = (instant: string, zone: string, locale: string): string => {
  const both = formatOf(locale, zone, { hour: "2-digit", minute: "2-digit" });
  const twelve = both.resolvedOptions().hour12 === true;
  const format = twelve ? formatOf(locale, zone, { hour: "numeric", minute: "2-digit" }) : both;
  return spaced(format.format(new Date(instant)));
};

/** "09:30" of an hour on the clock, `HH:MM`. */
export const hourText = (hour: string, locale: string): string => timeText(`2026-01-01T${hour}:00Z`, "UTC", locale);

/** "Sunday, 1 March 2026" of an ISO date. Put together here: editions of the locale data differ in what joins the parts. */
export const dateText = (date: string, locale: string): string =>
  `${weekdayText(date, locale)}, ${longDayText(date, locale)}`;

/** "Sun, 1 Mar, 09:30" of an ISO instant, in a zone. */
export const momentText = (instant: string, zone: string, locale: string): string =>
  `${shortDayText(new Date(instant), zone, locale)}, ${timeText(instant, zone, locale)}`;

/** Noon of an ISO date: the same day in UTC whatever is done with it. */
const noon = (date: string): Date => new Date(`${date}T12:00:00Z`);

/** "Sunday" of an ISO date. */
export const weekdayText = (date: string, locale: string): string =>
  spaced(formatOf(locale, "UTC", { weekday: "long" }).format(noon(date)));

/** "1 March 2026" of an ISO date. */
export const longDayText = (date: string, locale: string): string =>
  spaced(formatOf(locale, "UTC", { day: "numeric", month: "long", year: "numeric" }).format(noon(date)));

/** "Sun, 1 Mar" of an ISO date. */
export const shortDateText = (date: string, locale: string): string => shortDayText(noon(date), "UTC", locale);

const shortDayText = (moment: Date, zone: string, locale: string): string => {
  const weekday = formatOf(locale, zone, { weekday: "short" }).format(moment);
  return spaced(`${weekday}, ${formatOf(locale, zone, { day: "numeric", month: "short" }).format(moment)}`);
};
