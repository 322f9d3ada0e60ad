import { Temporal } from "temporal-polyfill";

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

/** Temporal answers what it cannot read with a RangeError, and takes small letters, which the standard has not. */
function read(text: string): Temporal.Duration | null {
  if (text.length > longestText || /[a-z]/.test(text)) return null;
  try {
    return Temporal.Duration.from(text);
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}
