import { Temporal } from "temporal-polyfill";
import type { PlanTime } from "../../domain/model/plan.js";
import { ok, type Path, type Result } from "../../domain/problem.js";
import { badTime, clockText, readLocalTime } from "../../imports/documents/read-local-time.js";
import type { ScheduledTime } from "../deps.js";

/** Further ahead a year is rather a slip of the finger. */
const furthestYears = 2;

/** The instant of a time to come. */
export function readScheduledTime(given: PlanTime, now: Date, path: Path): Result<ScheduledTime> {
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
