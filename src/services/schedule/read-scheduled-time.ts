import { Temporal } from "temporal-polyfill";
import { readOrNull } from "../../domain/read-or-null.js";
import { failed, ok, type Path, type Problem, type Result } from "../../domain/problem.js";
import type { ScheduledTime } from "../deps.js";
import { knownZone, nearestZones } from "./zone-names.js";

/** A time as a writer says it: on the clock of a place, and of which place. */
export interface GivenTime {
  /** `2026-12-24T06:00`; of an hour that the clocks repeat with its offset, `2026-10-25T02:30+01:00`. */
  readonly at: string;
  /** IANA name. */
  readonly zone: string;
}

/** Further ahead a year is rather a slip of the finger. */
const furthestYears = 2;

const written = /^(\d{4}-\d{2}-\d{2}[T ]\d{2}:\d{2})(?::(\d{2}))?(Z|[+-]\d{2}:\d{2})?$/;

/**
 * The instant of a time to come. What the clocks of the zone skip is refused, and what they repeat is asked for with its offset: a time is
 * never moved silently.
 */
export function readScheduledTime({ at, zone }: GivenTime, now: Date, path: Path): Result<ScheduledTime> {
  const known = knownZone(zone);
  const wrong = (problem: Omit<BadTime, "code" | "path" | "written" | "zone">, end = "at"): Result<never> =>
    failed([{ code: "BAD_TIME", path: [...path, end], written: at.slice(0, 60), zone: zone.slice(0, 60), ...problem }]);
  if (known === null) return wrong({ why: "UNKNOWN_ZONE", offers: nearestZones(zone) }, "zone");
  const [, minute, second = "00", offset = null] = written.exec(at) ?? [];
  const local =
    minute === undefined
      ? null
      : readOrNull(() => Temporal.PlainDateTime.from(`${minute.replace(" ", "T")}:${second}`, { overflow: "reject" }));
  if (local === null) return wrong({ why: "UNREADABLE", offers: ["2026-12-24T06:00"] });
  const [earlier, later] = (["earlier", "later"] as const).map((disambiguation) =>
    local.toZonedDateTime(known, { disambiguation }),
  ) as [Temporal.ZonedDateTime, Temporal.ZonedDateTime];
  const isOnce = earlier.equals(later);
  if (!isOnce && !earlier.toPlainDateTime().equals(local)) {
    return wrong({ why: "SKIPPED", offers: [clock(earlier), clock(later)] });
  }
  const meant = [earlier, later].find((each) => each.offset === (offset === "Z" ? "+00:00" : offset));
  if (offset !== null && meant === undefined) {
    return wrong({
      why: "OTHER_OFFSET",
      offers: [...new Set([earlier, later].map((each) => clock(each) + each.offset))],
    });
  }
  if (offset === null && !isOnce) {
    return wrong({ why: "REPEATED", offers: [earlier, later].map((each) => clock(each) + each.offset) });
  }
  const due = (meant ?? earlier).toInstant();
  const dueAt = new Date(due.epochMilliseconds);
  if (dueAt <= now) return wrong({ why: "PAST", offers: [] });
  const furthest = Temporal.Instant.fromEpochMilliseconds(now.getTime())
    .toZonedDateTimeISO(known)
    .add({ years: furthestYears });
  if (dueAt.getTime() > furthest.epochMilliseconds) return wrong({ why: "TOO_FAR", offers: [clock(furthest)] });
  return ok({ dueAt, localTime: clock(local) + (isOnce ? "" : (offset ?? "")), zone: known });
}

type BadTime = Extract<Problem, { readonly code: "BAD_TIME" }>;

/** To the minute, or to the second where there is one. */
const clock = (time: Temporal.PlainDateTime | Temporal.ZonedDateTime): string => {
  const text = ("timeZoneId" in time ? time.toPlainDateTime() : time).toString({ smallestUnit: "second" });
  return text.endsWith(":00") ? text.slice(0, -3) : text;
};
