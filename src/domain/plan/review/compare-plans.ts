import type { Path } from "../../problem.js";
import { planFacts, type ComputedPlan, type FactKind, type PlanFact } from "../compile/plan-facts.js";

/** One thing that readers find otherwise than before. */
export interface PlanDifference {
  readonly kind: FactKind;
  /** Slugs, ids and codes from the plan downwards. */
  readonly path: Path;
  /** What it said; null: it is new. */
  readonly before: string | null;
  /** What it says; null: it is gone. */
  readonly after: string | null;
}

/**
 * What changed for readers from one state of a plan to another, each computed at its own servings: what the older one says
 * in its order, then what is new. Nothing changed is an empty list.
 */
export function comparePlans(before: ComputedPlan, after: ComputedPlan): readonly PlanDifference[] {
  const [old, now] = [byPath(planFacts(before)), byPath(planFacts(after))];
  const kept = [...old].flatMap(([key, was]): readonly PlanDifference[] => {
    const is = now.get(key);
    if (is?.exact === was.exact) return [];
    // Two amounts that a kitchen rounds to one are shown unrounded: else nothing would seem to have changed.
    const [before, after] = is?.text === was.text ? [was.exact, is.exact] : [was.text, is?.text ?? null];
    return [{ kind: was.kind, path: was.path, before, after }];
  });
  const added = [...now].flatMap(([key, is]): readonly PlanDifference[] =>
    old.has(key) ? [] : [{ kind: is.kind, path: is.path, before: null, after: is.text }],
  );
  return [...kept, ...added];
}

const byPath = (facts: readonly PlanFact[]): ReadonlyMap<string, PlanFact> =>
  new Map(facts.map((each) => [JSON.stringify([each.kind, each.path]), each]));
