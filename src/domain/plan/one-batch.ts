import type { CompiledPlan } from "./compile/compiled-plan.js";
import { batchGrowth } from "./demand.js";
import { grown } from "./scale-compiled.js";
import type { ScaledComponent } from "./scaled.js";

type Made = Pick<ScaledComponent, "component" | "route" | "lines" | "made">;

/** A component of which all was on hand, as one batch of it: what is in it is known although none is made. */
export function oneBatch(scaled: ScaledComponent, { components, makeOrder }: CompiledPlan): Made {
  if (scaled.made.low > 0) return scaled;
  const index = makeOrder.find((each) => components[each]?.component.slug === scaled.component.slug);
  const compiled = index === undefined ? undefined : components[index];
  if (compiled === undefined) return scaled;
  return {
    component: scaled.component,
    route: scaled.route,
    lines: compiled.lines.map((line) => grown(line, batchGrowth(line, 1))),
    made: compiled.yield,
  };
}
