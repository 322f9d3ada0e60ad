import { Temporal } from "temporal-polyfill";
import { compareEnds, endOf, lastingDays, type End, type Span } from "./keeping-window.js";

/** A cooked food, frozen and thawed: ISO instants in order, seen from an IANA zone. */
interface FrozenFood {
  readonly made: string;
  readonly frozen: string;
  readonly thawed: string;
  readonly zone: string;
}

type RemainingAfterFreezing =
  | {
      readonly ok: true;
      /** Days (or hours as fractions) of its own rule used up before it was frozen. */
      readonly used: number;
      readonly remaining: number;
      readonly lastDay: string;
      readonly until: string;
      /** PAUSED: what was left when it was frozen. THAWED: the rule for thawed food, being shorter. */
      readonly decidedBy: "PAUSED" | "THAWED";
    }
  | { readonly ok: false; readonly why: "TOO_OLD_WHEN_FROZEN" | "OUT_OF_ORDER" };

/**
 * Freezing stops a clock and does not reset it: after thawing it runs on with what was left, and where a rule for thawed
 * food is in force the shorter of the two holds. `thawRule` counts from the thawing; null: there is none.
 * A day on which the food went into the freezer counts as used only once it was over.
 * @throws RangeError for an instant or a zone that is none
 */
export function remainingAfterFreezing(food: FrozenFood, keeps: Span, thawRule: Span | null): RemainingAfterFreezing {
  const [made, frozen, thawed] = [food.made, food.frozen, food.thawed].map((at) => Temporal.Instant.from(at));
  if (!made || !frozen || !thawed) throw new RangeError("three instants are needed");
  if (Temporal.Instant.compare(made, frozen) > 0 || Temporal.Instant.compare(frozen, thawed) > 0)
    return { ok: false, why: "OUT_OF_ORDER" };
  const used =
    keeps.counts === "HOURS"
      ? frozen.since(made).total("seconds") / 86_400
      : dayOf(made, food.zone).until(dayOf(frozen, food.zone), { largestUnit: "days" }).days;
  const remaining = lastingDays(keeps) - used;
  if (remaining < 0) return { ok: false, why: "TOO_OLD_WHEN_FROZEN" };
  const from = { start: food.thawed, zone: food.zone };
  const left = endOf({ days: remaining, counts: keeps.counts, firstDay: 0 }, 0, from);
  const after = thawRule === null ? null : endOf(thawRule, 0, from);
  const thawDecides = thawRule !== null && after !== null && shorter(after, thawRule, left, keeps);
  const end = thawDecides ? after : left;
  if (end.lastDay === null || end.until === null) throw new RangeError("an end without a date");
  return {
    ok: true,
    used,
    remaining: thawDecides ? lastingDays(thawRule) : remaining,
    lastDay: end.lastDay,
    until: end.until,
    decidedBy: thawDecides ? "THAWED" : "PAUSED",
  };
}

const dayOf = (instant: Temporal.Instant, zone: string): Temporal.PlainDate =>
  instant.toZonedDateTimeISO(zone).toPlainDate();

const shorter = (a: End, aSpan: Span, b: End, bSpan: Span): boolean =>
  compareEnds({ ...a, counts: aSpan.counts }, { ...b, counts: bSpan.counts }) < 0;
