import { Temporal } from "temporal-polyfill";
import { readOrNull } from "../../domain/read-or-null.js";
import type { PlanTime } from "../../domain/model/plan.js";
import { failed, ok, type Path, type Problem, type Result } from "../../domain/problem.js";
import { knownZone, nearestZones } from "./zone-names.js";

/** When, as an instant and as it was written. */
export interface LocalTime {
  readonly dueAt: Date;
  /** ISO date and time on the clock of the zone. */
  readonly localTime: string;
  /** IANA name. */
  readonly zone: string;
}

type BadTime = Extract<Problem, { readonly code: "BAD_TIME" }>;

export const badTime = (
  { at, zone }: PlanTime,
  path: Path,
  why: BadTime["why"],
  offers: readonly string[],
): Result<never> =>
  failed([{ code: "BAD_TIME", path, written: at.slice(0, 60), zone: zone.slice(0, 60), why, offers }]);

const written = /^(\d{4}-\d{2}-\d{2}[T ]\d{2}:\d{2})(?::(\d{2}))?(Z|[+-]\d{2}:\d{2})?$/;

/**
 * The instant of a time. What the clocks of the zone skip is refused, and what they repeat is asked for with its offset: a time is
 * never moved silently.
 */
export function readLocalTime(given: PlanTime, path: Path): Result<LocalTime> {
  const { at, zone } = given;
  const known = knownZone(zone);
  if (known === null) return badTime(given, [...path, "zone"], "UNKNOWN_ZONE", nearestZones(zone));
  const here = [...path, "at"];
  const [, minute, second = "00", offset = null] = written.exec(at) ?? [];
  const local =
    minute === undefined
      ? null
      : readOrNull(() => Temporal.PlainDateTime.from(`${minute.replace(" ", "T")}:${second}`, { overflow: "reject" }));
  if (local === null) return badTime(given, here, "UNREADABLE", ["2026-12-24T06:00"]);
  const [earlier, later] = (["earlier", "later"] as const).map((disambiguation) =>
    local.toZonedDateTime(known, { disambiguation }),
  ) as [Temporal.ZonedDateTime, Temporal.ZonedDateTime];
  const isOnce = earlier.equals(later);
  if (!isOnce && !earlier.toPlainDateTime().equals(local))
    return badTime(given, here, "SKIPPED", [clockText(earlier), clockText(later)]);
  const withOffsets = [...new Set([earlier, later].map((each) => clockText(each) + each.offset))];
  const meant = [earlier, later].find((each) => each.offset === (offset === "Z" ? "+00:00" : offset));
  if (offset !== null && meant === undefined) return badTime(given, here, "OTHER_OFFSET", withOffsets);
  if (offset === null && !isOnce) return badTime(given, here, "REPEATED", withOffsets);
  const dueAt = new Date((meant ?? earlier).epochMilliseconds);
  return ok({ dueAt, localTime: clockText(local) + (isOnce ? "" : (offset ?? "")), zone: known });
}

/** To the minute, or to the second where there is one. */
export const clockText = (time: Temporal.PlainDateTime | Temporal.ZonedDateTime): string => {
  const text = ("timeZoneId" in time ? time.toPlainDateTime() : time).toString({ smallestUnit: "second" });
  return text.endsWith(":00") ? text.slice(0, -3) : text;
};
