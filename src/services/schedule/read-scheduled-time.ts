import { Temporal } from "temporal-polyfill";
import { ok, type Path, type Result } from "../../domain/problem.js";
import { badTime, clockText, readLocalTime, type GivenTime } from "../../imports/documents/read-local-time.js";
import type { ScheduledTime } from "../deps.js";

export type { GivenTime } from "../../imports/documents/read-local-time.js";

/** Further ahead a year is rather a slip of the finger. */
const furthestYears = 2;

/** The instant of a time to come. */
export function readScheduledTime(given: GivenTime, now: Date, path: Path): Result<ScheduledTime> {
  const read = readLocalTime(given, path);
  if (!read.ok) return read;
  const { dueAt, zone } = read.value;
  if (dueAt <= now) return badTime(given, [...path, "at"], "PAST", []);
  const furthest = Temporal.Instant.fromEpochMilliseconds(now.getTime())
    .toZonedDateTimeISO(zone)
    .add({ years: furthestYears });
  return dueAt.getTime() > furthest.epochMilliseconds
    ? badTime(given, [...path, "at"], "TOO_FAR", [clockText(furthest)])
    : ok(read.value);
}
