import type { Warning } from "../problem.js";
import { notShared, partUses, type MergedNeed } from "../shopping/merge.js";
import { waitingParts, waitingPartWarning } from "../storage/part-keeping.js";
import type { Source } from "./contributions.js";
import type { ScaledPlan } from "./scaled.js";

/**
 * What a reader of a list should know about parts that are used on a later day than their pieces are cut: those that take pieces
 * of their own because the part does not keep until then, and those that are shared although nobody says how long they keep.
 */
export function laterPartWarnings(
  { food, contributions }: MergedNeed<Source>,
  plans: readonly ScaledPlan[],
): readonly Warning[] {
  if (!contributions.some(({ part }) => part !== null)) return [];
  // What would not matter even if every part had to be used at once is no news.
  if (!notShared(contributions.map((each) => ({ ...each, keeps: each.keeps ?? 0 })))) return [];
  const sharesAll = !notShared(contributions);
  const keeps = new Map(partUses(contributions, "high").map((part) => [part.part, part.keeps]));
  const uses = contributions.flatMap(({ part, day, dimension, source: { meal, scaled } }) =>
    part === null || dimension === null ? [] : [{ part, day, meal: meal?.slug ?? null, plan: plans.indexOf(scaled) }],
  );
  return waitingParts(uses, (part) => keeps.get(part) ?? null)
    .filter((each) => each.keeps === null || !sharesAll)
    .map((each) => {
      const warning = waitingPartWarning(food.slug, each);
      return plans.length > 1 ? { ...warning, path: ["plans", each.plan, ...warning.path] } : warning;
    });
}
