import type { Household } from "../../model/household.js";
import type { KeepingClass } from "../../model/keeping.js";
import type { Kitchen } from "../../model/plan.js";
import { chillingSteps, defaultLimits, lastCooking, type ColdRule } from "../../prep-session/cooling.js";
import type { SessionInput, SessionLimit, SessionWork, StepRef } from "../../prep-session/session.js";
import { byTheLoad, divisibleSteps, rawLimits, rawSteps } from "../../prep-session/raw-food.js";
import { coldRuleOf } from "../check/cold-rule.js";
import { lineContext } from "../compile/line-context.js";
import { rawLines } from "../check/raw-lines.js";
import type { ScaledComponent, ScaledLine, ScaledPlan } from "../scaled.js";
import { resolvedMealSteps, resolvedSteps } from "./resolved-steps.js";

interface Worked {
  readonly work: SessionWork;
  readonly lines: readonly ScaledLine[];
  readonly cold: ColdRule | null;
  /** Lines of raw meat, poultry or fish. */
  readonly raw: ReadonlySet<string>;
}

type Uses = SessionWork["uses"];

/** What is on hand in full is not made, so nothing waits for it. */
const uses = (lines: readonly ScaledLine[], made: ReadonlySet<string>): Uses =>
  lines.flatMap(({ line, item }) =>
    item.kind === "COMPONENT" && made.has(item.component) ? [{ line: line.id, component: item.component }] : [],
  );

/** Components that go into others, or into meals of another day. */
const takenLater = ({ components, meals }: ScaledPlan): ReadonlySet<string> =>
  new Set(
    [...components.filter(({ batches }) => batches > 0), ...meals.filter(({ meal }) => meal.day !== 0)].flatMap(
      ({ lines }) => lines.flatMap(({ item }) => (item.kind === "COMPONENT" ? [item.component] : [])),
    ),
  );

/** Some of the work of a plan, done on one of several days. */
export interface SessionPart {
  /** Days after the first session. What is eaten on the day of the first is finished in it. */
  readonly day: number;
  /** What is made of each component on it. */
  readonly components: readonly ScaledComponent[];
}

export interface SessionChoice {
  /** Whether what is eaten today may be taken before it is chilled; absent: yes. */
  readonly mayBeWarm?: boolean;
  /** Whether all that can be is done load by load; absent: only work on raw meat, poultry and fish. */
  readonly byLoad?: boolean;
  /** Absent: all of it. */
  readonly part?: SessionPart;
}

interface ComponentContext {
  readonly scaled: ScaledPlan;
  readonly slugs: ReadonlySet<string>;
  readonly later: ReadonlySet<string>;
  readonly classes: readonly KeepingClass[];
  readonly byLoad: boolean;
  readonly day: number;
}

function componentWork(made: ScaledComponent, context: ComponentContext): Worked {
  const { scaled, slugs, later, classes, byLoad, day } = context;
  const { component, route, batches, loads, lines, leftOver } = made;
  const { slug, title } = component;
  const cold = coldRuleOf(component, route, classes);
  const all = resolvedSteps(made);
  const chills = chillingSteps(all, cold).map(({ id }) => id);
  // Nothing of it is left for another day.
  const skipped = day === 0 && leftOver.low <= 0 && !later.has(slug) ? chills : [];
  const kept = all.filter(({ id }) => !skipped.includes(id) || all.some(({ after }) => after.includes(id)));
  const raw = rawLines(lines, scaled, classes);
  const steps = byTheLoad(kept, byLoad ? divisibleSteps(kept) : rawSteps(kept, raw));
  return {
    work: { kind: "COMPONENT", slug, title, steps, batches, loads, uses: uses(lines, slugs), chills },
    lines,
    cold,
    raw,
  };
}

/**
 * Whether a component can be eaten warm today: its last cooking is done in pots that stand side by side, so that none of
 * it waits for the others.
 */
function comesWarm({ work: { steps } }: Worked, { appliances }: Kitchen): boolean {
  const last = lastCooking(steps);
  return (
    last.length > 0 &&
    last.every(({ loads, appliance }) => (loads ?? 1) <= (appliance === null ? 1 : (appliances[appliance] ?? 1)))
  );
}

/** What is made in the session: every component of which something is made, and the meals that are eaten on its day. */
function workOf(
  scaled: ScaledPlan,
  kitchen: Kitchen,
  classes: readonly KeepingClass[],
  { mayBeWarm = true, byLoad = false, part = { day: 0, components: scaled.components } }: SessionChoice,
): readonly Worked[] {
  const { components } = part;
  const meals = part.day === 0 ? scaled.meals : [];
  const slugs = new Set(components.flatMap(({ component, batches }) => (batches > 0 ? [component.slug] : [])));
  const later = takenLater(scaled);
  const made = components
    .filter(({ batches }) => batches > 0)
    .map((each) => componentWork(each, { scaled, slugs, later, classes, byLoad, day: part.day }));
  const warm = new Set(mayBeWarm ? made.flatMap((each) => (comesWarm(each, kitchen) ? [each.work.slug] : [])) : []);
  const eaten = meals
    .filter(({ meal }) => meal.day === 0)
    .map((each): Worked => {
      const { meal, factor, lines } = each;
      const used = uses(lines, slugs).map((use) => (warm.has(use.component) ? { ...use, warm: true } : use));
      const raw = rawLines(lines, scaled, classes);
      const settled = resolvedMealSteps(each);
      const steps = byTheLoad(settled, rawSteps(settled, raw));
      const { slug, title } = meal;
      const work = { kind: "MEAL" as const, slug, title, steps, batches: factor, loads: 1, uses: used };
      return { work, lines, cold: null, raw };
    });
  return [...made, ...eaten];
}

const componentsOf = (all: readonly Worked[]): ReadonlyMap<string, Worked> =>
  new Map(all.flatMap((each) => (each.work.kind === "COMPONENT" ? [[each.work.slug, each] as const] : [])));

/** What is eaten warm is on the table as soon as it would have to be in the fridge. */
function warmLimits(all: readonly Worked[]): readonly SessionLimit[] {
  const bySlug = componentsOf(all);
  return all.flatMap(({ work }) =>
    work.uses.flatMap(({ component, warm }) => {
      const from = bySlug.get(component);
      if (warm !== true || from === undefined || from.cold === null) return [];
      const { within: max } = from.cold;
      return lastCooking(from.work.steps).flatMap((cooked) =>
        work.steps.map((step): SessionLimit => ({
          from: { kind: "COMPONENT", slug: component, step: cooked.id },
          to: { kind: work.kind, slug: work.slug, step: step.id },
          max,
          until: "END",
        })),
      );
    }),
  );
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
  const bySlug = componentsOf(all);
  for (const { work } of all) {
    for (const step of work.steps) {
      const ref = { kind: work.kind, slug: work.slug, step: step.id };
      for (const earlier of step.after) add({ ...ref, step: earlier }, ref);
      for (const { component } of work.uses) {
        for (const made of bySlug.get(component)?.work.steps ?? [])
          add({ kind: "COMPONENT", slug: component, step: made.id }, ref);
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
        const known = users.get(part) ?? [];
        known.push({ kind: work.kind, slug: work.slug, step: step.id });
        users.set(part, known);
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

/** The kitchen the plan assumes, as far as the reader's own is not another. */
export const kitchenOf = (plan: Kitchen, { kitchen }: Pick<Household, "kitchen">): Kitchen => ({
  cooks: kitchen?.cooks ?? plan.cooks,
  appliances: { ...plan.appliances, ...kitchen?.appliances },
});

/** The work of a scaled plan's session, for `planSession`. */
export function sessionInput(
  scaled: ScaledPlan,
  household: Pick<Household, "session" | "kitchen">,
  classes: readonly KeepingClass[],
  choice: SessionChoice = {},
): SessionInput {
  const { session } = household;
  const kitchen = kitchenOf(scaled.bundle.plan.kitchen, household);
  const all = workOf(scaled, kitchen, classes, choice);
  return {
    work: all.map(({ work }) => work),
    kitchen,
    start: session === null ? null : { instant: session.start, zone: session.zone },
    evening: null,
    extraOrder: partOrder(all, scaled),
    limits: [
      ...all.flatMap(({ work, cold, raw }) => [...defaultLimits(work, cold), ...rawLimits(work, raw)]),
      ...warmLimits(all),
    ],
  };
}
