import { Temporal } from "temporal-polyfill";
import type { Household } from "../model/household.js";

/** The local date on which the household's session begins, ISO; null when it did not say. */
export function sessionDate({ session }: Household): string | null {
  if (session === null) return null;
  return Temporal.Instant.from(session.start).toZonedDateTimeISO(session.zone).toPlainDate().toString();
}

/** ISO date so many days after another. */
export const daysAfter = (date: string, days: number): string => Temporal.PlainDate.from(date).add({ days }).toString();

/** Whole days from one ISO date to another; negative when the second is earlier. */
export const daysBetween = (from: string, to: string): number =>
  Temporal.PlainDate.from(from).until(Temporal.PlainDate.from(to), { largestUnit: "day" }).days;
