import type { PlanTime } from "../../domain/model/plan.js";
import type { ScheduledPartsFragment } from "./generated/operations.js";
import { usage, type JsonValue } from "./outcome.js";

/** What --at and --zone say; null: neither is there. @throws CommandFailed */
export function timeOptions({ at, zone }: { readonly at?: string; readonly zone?: string }): PlanTime | null {
  if (at === undefined && zone === undefined) return null;
  if (at === undefined || zone === undefined)
    throw usage("--at and --zone go together, such as --at 2026-12-24T06:00 --zone Europe/Berlin.");
  return { at, zone };
}

/** Something scheduled, in a line. */
export const scheduledLine = ({
  id,
  publisher,
  slug,
  kind,
  state,
  localTime,
  zone,
  notice,
}: ScheduledPartsFragment): string =>
  [id, `${publisher.slug}/${slug}`, kind, state, `${localTime} ${zone}`, notice].join("  ");

export const shownScheduled = ({ publisher, problems, ...scheduled }: ScheduledPartsFragment): JsonValue => ({
  ...scheduled,
  publisher: publisher.slug,
  problems: problems.map(({ code, message }) => ({ code, message })),
});
