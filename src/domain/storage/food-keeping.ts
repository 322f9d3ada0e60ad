import type { Food } from "../model/food.js";
import type { KeepingQuestion } from "./guidance.js";
import { limitsOf, mainPlace } from "./keeping-limits.js";
import { lastDayFor } from "./keeping-window.js";

/** Whole days that a food keeps once it is bought, until a meal at that hour, out of the freezer; null: nobody says. */
export function foodKeeps(
  { slug, keepsAs, keeping }: Pick<Food, "slug" | "keepsAs" | "keeping">,
  question: KeepingQuestion,
  at?: string,
): number | null {
  if (keepsAs === null && keeping.length === 0) return null;
  const main = mainPlace(limitsOf({ subject: { kind: "FOOD", slug }, keepsAs, keeping, madeDay: 0 }, question));
  return main === null ? null : Math.max(0, lastDayFor(at, main.end, question.session));
}
