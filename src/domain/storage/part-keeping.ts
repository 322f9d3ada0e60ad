import type { FoodPart } from "../model/food.js";
import type { Warning } from "../problem.js";
import type { KeepingQuestion } from "./guidance.js";
import { limitsOf, mainPlace } from "./keeping-limits.js";
import { lastDayFor } from "./keeping-window.js";

/** One use of a part: in a meal, or in the session (meal null, day 0). */
export interface PartUse {
  readonly part: string;
  readonly day: number;
  readonly meal: string | null;
  /** Index of its plan on a list of several. */
  readonly plan: number;
}

/** A part for a meal, of a piece that was cut for another part on an earlier day. */
interface WaitingPart {
  readonly part: string;
  readonly meal: string;
  readonly plan: number;
  readonly day: number;
  /** The last day before it on which a piece is cut from which it no longer keeps. */
  readonly cutOn: number;
  /** Days it keeps once its piece is cut; null: nobody says. */
  readonly keeps: number | null;
  /** Another piece is cut late enough for it. */
  readonly freshToo: boolean;
}

/**
 * Whole days that a part keeps after its piece is cut, until a meal at that hour: the stricter of its writer's word and the published ceiling, in the fridge
 * or on the shelf. Nobody freezes a part unasked, so the freezer does not count. null: nobody says.
 */
export function partKeeps(
  part: Pick<FoodPart, "keepsAs" | "keeping">,
  question: KeepingQuestion,
  at?: string,
): number | null {
  const { keepsAs = null, keeping = [] } = part;
  if (keepsAs === null && keeping.length === 0) return null;
  const thing = { subject: { kind: "FOOD", slug: "" } as const, keepsAs, keeping, madeDay: 0 };
  const main = mainPlace(limitsOf(thing, question));
  return main === null ? null : Math.max(0, lastDayFor(at, main.end, question.session));
}

/**
 * Parts that cannot come, or of which nobody says whether they can, from a piece cut for another part on an earlier day. Part
 * and piece age together: a zested lemon is a cut lemon.
 */
export function waitingParts(
  uses: readonly PartUse[],
  keepsFor: (part: string) => number | null,
): readonly WaitingPart[] {
  const told = new Set<string>();
  return uses.flatMap(({ part, day, meal, plan }): WaitingPart[] => {
    if (meal === null) return [];
    const cut = uses.filter((other) => other.part !== part && other.day <= day).map((other) => other.day);
    const keeps = keepsFor(part);
    const tooEarly = cut.filter((cutOn) => day - cutOn > (keeps ?? 0));
    const key = JSON.stringify([plan, meal, part]);
    if (tooEarly.length === 0 || told.has(key)) return [];
    told.add(key);
    return [{ part, meal, plan, day, cutOn: Math.max(...tooEarly), keeps, freshToo: tooEarly.length < cut.length }];
  });
}

/** What a reader should know about a part that waits. */
export function waitingPartWarning(food: string, { part, meal, day, cutOn, keeps }: WaitingPart): Warning {
  if (keeps === null)
    return { code: "KEEPING_UNKNOWN", path: ["foods", food, "parts", part], item: `${food}, ${part}` };
  return { code: "PART_TOO_OLD", path: ["meals", meal], food, part, meal, day, cutOn, days: keeps };
}
