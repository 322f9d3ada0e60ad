import { Temporal } from "temporal-polyfill";
import type { Household } from "../../domain/model/household.js";
import { failed, ok, type Path, type Problem, type Result } from "../../domain/problem.js";
import { isTimeZone } from "../../domain/time-zone.js";
import { readOrNull } from "../../domain/read-or-null.js";

/** Exactly one of `instant` (ISO, UTC) and `local` (ISO without an offset), and an IANA zone. */
export interface GivenStart {
  readonly instant?: string | null | undefined;
  readonly local?: string | null | undefined;
  readonly zone: string;
}

/** An hour that the clocks skip is read as the one after it, an hour they repeat as its first. */
export function readSessionStart(given: GivenStart, path: Path): Result<NonNullable<Household["session"]>> {
  const instant = given.instant ?? null;
  const local = given.local ?? null;
  if ((instant === null) === (local === null)) {
    const got = instant === null ? "neither" : "both";
    return failed([{ code: "BAD_SHAPE", path, expected: "`instant` or `local`", got }]);
  }
  const problems: Problem[] = [];
  const known = isTimeZone(given.zone);
  if (!known) {
    const what = "the IANA name of a time zone, such as Europe/Lisbon";
    problems.push({ code: "BAD_HOUSEHOLD", path: [...path, "zone"], what, value: given.zone.slice(0, 60) });
  }
  const read = local === null ? null : readLocal(local);
  if (local !== null && read === null) {
    const what = "a local date and time, such as 2026-03-01T10:00";
    problems.push({ code: "BAD_HOUSEHOLD", path: [...path, "local"], what, value: local.slice(0, 60) });
  }
  const start = instant ?? (known && read !== null ? read.toZonedDateTime(given.zone).toInstant().toString() : null);
  return start === null || problems.length > 0 ? failed(problems) : ok({ start, zone: given.zone });
}

const readLocal = (text: string): Temporal.PlainDateTime | null =>
  /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2})?$/.test(text)
    ? readOrNull(() => Temporal.PlainDateTime.from(text, { overflow: "reject" }))
    : null;
