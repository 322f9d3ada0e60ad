import { Temporal } from "temporal-polyfill";
import { readOrNull } from "../../domain/read-or-null.js";

/** The longest a recipe is believed to take: a year in minutes. */
export const longestDuration = 366 * 24 * 60;

/** The longest text that is read: no time of a recipe needs more. */
const longestText = 40;

/**
 * Minutes of an ISO 8601 duration (`PT1H30M`, `PT1.5H`, `P0DT1H45M`, `P1W`); null for anything else. Months and years have
 * no length of their own and are not taken, nor is a time that goes backwards.
 */
export function isoDurationMinutes(text: string): number | null {
  const duration = read(text.trim());
  if (duration === null || duration.sign < 0 || duration.years !== 0 || duration.months !== 0) return null;
  const minutes = duration.with({ weeks: 0, days: duration.days + duration.weeks * 7 }).total({ unit: "minute" });
  return minutes <= longestDuration ? minutes : null;
}

/** Temporal takes small letters, which the standard has not. */
const read = (text: string): Temporal.Duration | null =>
  text.length > longestText || /[a-z]/.test(text) ? null : readOrNull(() => Temporal.Duration.from(text));
