import type { Component, Step } from "../model/component.js";
import type { Household } from "../model/household.js";
import type { Line, Swap, SwapOwn } from "../model/line.js";
import type { PlanBundle } from "../model/plan.js";
import type { DietJudge } from "../nutrition/diets.js";
import { chooseSwap } from "./choose-swap.js";
import { lineContext } from "./compile/line-context.js";

/** A line with the words of the food that stands in: "beaten" was said of the egg. */
export function applySwap({ each: _, ...line }: Line, { own = {} }: Swap): Line {
  return { ...line, preparation: own.preparation ?? null, form: own.form ?? line.form };
}

/** The plan with the steps, yields and classes that the swaps taken bring along; the same where they bring none. */
export function bundleWithSwaps(bundle: PlanBundle, household: Household, fitsDiet: DietJudge): PlanBundle {
  const owners = [...bundle.plan.meals, ...bundle.components, ...bundle.components.flatMap(({ routes }) => routes)];
  if (!owners.some(({ lines }) => lines.some(({ swaps }) => swaps.some(({ own }) => own !== undefined)))) return bundle;
  const { foods } = lineContext(bundle);
  const taken = (lines: readonly Line[]): readonly SwapOwn[] =>
    lines.flatMap((line) => chooseSwap(line, household, foods, fitsDiet, []).swap?.own ?? []);
  return {
    ...bundle,
    plan: {
      ...bundle.plan,
      meals: bundle.plan.meals.map((meal) => ({ ...meal, steps: stepsWith(meal.steps, taken(meal.lines)) })),
    },
    components: bundle.components.map((component): Component => {
      const own = taken(component.lines);
      const amount = last(own, (each) => each.yield);
      return {
        ...component,
        steps: stepsWith(component.steps, own),
        keepsAs: last(own, (each) => each.keepsAs) ?? component.keepsAs,
        yield: amount === undefined ? component.yield : { amount, source: byWriter },
        routes: component.routes.map((route) => {
          const ofRoute = taken(route.lines);
          return {
            ...route,
            steps: stepsWith(route.steps, ofRoute),
            keepsAs: last(ofRoute, (each) => each.keepsAs) ?? route.keepsAs,
          };
        }),
      };
    }),
  };
}

/**
 * The plan without the optional lines whose food, after swaps, the household does not like, and what was left out of what; the same where
 * nothing is disliked.
 */
export function withoutDisliked(
  bundle: PlanBundle,
  household: Household,
  fitsDiet: DietJudge,
): { readonly bundle: PlanBundle; readonly leftOut: readonly LeftOut[] } {
  if (household.dislikes.length === 0) return { bundle, leftOut: [] };
  const { foods } = lineContext(bundle);
  const leftOut: LeftOut[] = [];
  const kept = <Of extends { readonly lines: readonly Line[]; readonly steps: readonly Step[] }>(
    of: Of,
    place: Omit<LeftOut, "item">,
  ): Of => {
    const gone = of.lines.flatMap((line) => {
      const item = line.optional ? chooseSwap(line, household, foods, fitsDiet, []).disliked : null;
      return item === null ? [] : [{ id: line.id, item }];
    });
    if (gone.length === 0) return of;
    leftOut.push(...gone.map(({ item }) => ({ ...place, item })));
    const isGone = (id: string): boolean => gone.some((each) => each.id === id);
    return {
      ...of,
      lines: of.lines.filter(({ id }) => !isGone(id)),
      steps: of.steps.map((step) => ({ ...step, lines: step.lines.filter((id) => !isGone(id)) })),
    };
  };
  const meals = bundle.plan.meals.map((meal) => kept(meal, { kind: "MEAL", slug: meal.slug, route: null }));
  const components = bundle.components.map((component) => ({
    ...kept(component, { kind: "COMPONENT", slug: component.slug, route: null }),
    routes: component.routes.map((route) =>
      kept(route, { kind: "COMPONENT", slug: component.slug, route: route.name }),
    ),
  }));
  if (leftOut.length === 0) return { bundle, leftOut };
  return { bundle: { ...bundle, plan: { ...bundle.plan, meals }, components }, leftOut };
}

/** A food that was left out of a meal, or of a component as it is written (`route` null) or by one of its routes. */
export interface LeftOut {
  readonly kind: "MEAL" | "COMPONENT";
  readonly slug: string;
  readonly route: string | null;
  readonly item: string;
}

const byWriter = { kind: "WRITER", title: "The writer's own measure", section: "with the swap" } as const;

const last = <T>(own: readonly SwapOwn[], of: (each: SwapOwn) => T | undefined): T | undefined =>
  own.map(of).findLast((each) => each !== undefined);

const stepsWith = (steps: readonly Step[], own: readonly SwapOwn[]): readonly Step[] =>
  steps.map((step) => {
    const changes = own.flatMap((each) => each.steps ?? []).filter(({ id }) => id === step.id);
    return changes.reduce<Step>(({ said, ...now }, { text, minutes = now.minutes, said: written }) => {
      const before = text === undefined ? said : written;
      return { ...now, text: text ?? now.text, minutes, ...(before === undefined ? {} : { said: before }) };
    }, step);
  });
