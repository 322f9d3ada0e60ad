// @ts-nocheck
import type { Step } from "../model/component.js";
import type { Household } from "../model/household.js";
import type { SessionInput, SessionWork, StepRef } from "../prep-session/session.js";
import { lineContext } from "./line-context.js";
import type { ScaledLine, ScaledPlan } from "./scaled.js";

interface Worked {
  readonly work: SessionWork;
  readonly lines: readonly ScaledLine[];
}

/** What is on hand in full is not made, so nothing waits for it. */
const uses = (lines: readonly ScaledLine[], made: ReadonlySet<string>): SessionWork["uses"] =>
  lines.flatMap(({ line, item }) =>
    item.kind === "COMPONENT" && made.has(item.component) ? [{ line: line.id, component: item.component }] : [],
  );

/** What is made in the session: every component of which something is made, and the meals that are eaten on its day. */
function workOf({ components, meals }: ScaledPlan): readonly Worked[] {
  const slugs = new Set(components.flatMap(({ component, batches }) => (batches > 0 ? [component.slug] : [])));
  const made = components
    .filter(({ batches }) => batches > 0)
    .map(({ component, route, batches, loads, lines }): Worked => {
      const steps: readonly Step[] = route?.steps ?? component.steps;
      const { slug, title } = component;
      return { work: { kind: "COMPONENT", slug, title, steps, batches, loads, uses: uses(lines, slugs) }, lines };
    });
  const eaten = meals
    .filter(({ meal }) => meal.day === 0)
    .map(({ meal: { slug, title, steps }, factor, lines }): Worked => ({
      work: { kind: "MEAL", slug, title, steps, batches: factor, loads: 1, uses: uses(lines, slugs) },
      lines,
    }));
  return [...made, ...eaten];
}

const key = ({ kind, slug, step }: StepRef): string => JSON.stringify([kind, slug, step]);

/** Whether one step has to come before another anyway, through the orders that the plan itself gives. */
function precedes(all: readonly Worked[]): (first: StepRef, then: StepRef) => boolean {
  const next = new Map<string, string[]>();
  const add = (before: StepRef, after: StepRef): void => {
    const known = next.get(key(before));
    if (known === undefined) next.set(key(before), [key(after)]);
    else known.push(key(after));
  };
  for (const { work } of all) {
    for (const step of work.steps) {
      const ref = { kind: work.kind, slug: work.slug, step: step.id };
      for (const earlier of step.after) add({ ...ref, step: earlier }, ref);
      for (const { component } of work.uses) {
        const from = all.find((each) => each.work.kind === "COMPONENT" && each.work.slug === component);
        for (const made of from?.work.steps ?? []) add({ kind: "COMPONENT", slug: component, step: made.id }, ref);
      }
    }
  }
  return (first, then) => {
    const seen = new Set([key(first)]);
    const open = [key(first)];
    for (let at = open.pop(); at !== undefined; at = open.pop()) {
      if (at === key(then)) return true;
      for (const after of next.get(at) ?? []) {
        if (!seen.has(after)) open.push(after);
        seen.add(after);
      }
    }
    return false;
  };
}

/**
 * Parts of one food that have to be taken before others (zest before juice), as orders between the steps that use them.
 * Where the plan itself asks for the opposite, the plan stands: the fruit is then not shared, and no order is added.
 */
function partOrder(all: readonly Worked[], scaled: ScaledPlan): SessionInput["extraOrder"] {
  const { foods } = lineContext(scaled.bundle);
  const users = new Map<string, StepRef[]>();
  for (const { work, lines } of all) {
    for (const step of work.steps) {
      for (const { line, item } of lines) {
        if (item.kind !== "FOOD" || item.part === null || !step.lines.includes(line.id)) continue;
        const part = JSON.stringify([item.food, item.part]);
        users.set(part, [...(users.get(part) ?? []), { kind: work.kind, slug: work.slug, step: step.id }]);
      }
    }
  }
  const forced = precedes(all);
  return [...foods.values()].flatMap((food) =>
    food.parts.flatMap((part) =>
      part.after.flatMap((earlier) => {
        const first = users.get(JSON.stringify([food.slug, earlier])) ?? [];
        const then = users.get(JSON.stringify([food.slug, part.name])) ?? [];
        return first.flatMap((before) =>
          then
            .filter((after) => key(after) !== key(before) && !forced(after, before))
            .map((after) => ({ before, after })),
        );
      }),
    ),
  );
}

/** The work of a scaled plan's session, for `planSession`. */
export function sessionInput(scaled: ScaledPlan, { session }: Household): SessionInput {
  const all = workOf(scaled);
  return {
    work: all.map(({ work }) => work),
    kitchen: scaled.bundle.plan.kitchen,
    start: session === null ? null : { instant: session.start, zone: session.zone },
    evening: null,
    extraOrder: partOrder(all, scaled),
  };
}
