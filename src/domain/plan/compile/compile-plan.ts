import { batchSizes } from "../../component/batch.js";
import { componentGraph } from "../../component/component-graph.js";
import type { Component, Route } from "../../model/component.js";
import type { Household } from "../../model/household.js";
import type { Line } from "../../model/line.js";
import type { PlanBundle } from "../../model/plan.js";
import { memoize } from "../../memoize.js";
import { failed, ok, type Path, type Problem, type Result, type Warning } from "../../problem.js";
import type { DietJudge } from "../../nutrition/diets.js";
import { toBase } from "../../quantity/convert.js";
import { BoundedCache } from "../../bounded-cache.js";
import type { InSlices, Work } from "../../counted-work.js";
import { checkBundleInSlices } from "../check/check-bundle.js";
import { chooseSwap, swapsNotOffered } from "../choose-swap.js";
import { compileLine } from "./compile-line.js";
import type { CompiledComponent, CompiledLine, CompiledMeal, CompiledPlan } from "./compiled-plan.js";
import { bundleWithSwaps, withoutDisliked } from "../apply-swap.js";
import { dislikeWarnings, type Staying } from "./disliked-foods.js";
import { lineContext } from "./line-context.js";

/** For each component of the bundle, by slug, the route to take instead of making it as written. */
export type RouteChoice = ReadonlyMap<string, Route>;

interface Lines {
  readonly lines: readonly CompiledLine[];
  readonly warnings: readonly Warning[];
  /** Foods that are not liked and stay. */
  readonly disliked: readonly string[];
}

/** What a household's wishes change about a compiled plan; two households with equal keys share it. */
const choiceKey = (routes: RouteChoice, household: Household): string =>
  routes.size === 0 && wishesOf(household).every((wishes) => wishes.length === 0)
    ? ""
    : JSON.stringify([
        [...routes].map(([component, route]) => [component, route.name]).toSorted(),
        ...wishesOf(household),
      ]);

const wishesOf = ({ diets, avoidAllergens, dislikes, swaps }: Household) =>
  [diets, avoidAllergens, dislikes, swaps] as const;

/** Ways one bundle may be asked for that are kept compiled, whoever judges; readers' wishes are many, bundles live long. */
const keptPerBundle = 16;
const compiled = memoize(
  (_: PlanBundle) => new BoundedCache<Result<CompiledPlan>>("compiled-plans", { max: keptPerBundle }),
);

/** Tells judges apart, each by a number of its own. */
const numberOf = memoize((_: DietJudge) => ++judges);
let judges = 0;

/**
 * Resolves every reference, unit and fact of a plan once, for one choice of routes and swaps. The answer is kept with the
 * bundle, those asked for last. Fails with all problems of `checkBundle`.
 */
export function* compilePlanInSlices(
  bundle: PlanBundle,
  household: Household,
  routes: RouteChoice,
  fitsDiet: DietJudge,
  work: Work,
): InSlices<Result<CompiledPlan>> {
  const kept = compiled(bundle);
  const key = `${numberOf(fitsDiet)} ${choiceKey(routes, household)}`;
  const known = kept.get(key);
  if (known !== undefined) return known;
  work.step(stepsOf(bundle, household));
  const result = yield* compile(bundle, household, routes, fitsDiet);
  kept.set(key, result);
  return result;
}

/** Each line is read once, and held against each wish of the household. */
const stepsOf = ({ plan, components }: PlanBundle, { diets, avoidAllergens, dislikes, swaps }: Household): number =>
  [...plan.meals, ...components, ...components.flatMap((each) => each.routes)].reduce(
    (sum, { lines }) => sum + lines.length,
    1,
  ) *
  (3 + (diets.length + avoidAllergens.length) / 2 + (dislikes.length + swaps.length) / 20);

/** Lines that are compiled in one turn. */
const linesInTurn = 100;

function* compile(
  written: PlanBundle,
  household: Household,
  routes: RouteChoice,
  fitsDiet: DietJudge,
): InSlices<Result<CompiledPlan>> {
  const problems = yield* checkBundleInSlices(written);
  if (problems.length > 0) return failed(problems);
  yield;
  const { bundle, leftOut } = withoutDisliked(bundleWithSwaps(written, household, fitsDiet), household, fitsDiet);
  const context = lineContext(bundle);
  const faults: Problem[] = [];
  const linesOf = function* (lines: readonly Line[], path: Path): InSlices<Lines> {
    const done: CompiledLine[] = [];
    const warnings: Warning[] = [];
    const disliked: string[] = [];
    for (const [index, line] of lines.entries()) {
      if (index % linesInTurn === 0) yield;
      const at = [...path, "lines", line.id];
      const chosen = chooseSwap(line, household, context.foods, fitsDiet, at);
      const result = compileLine(line, chosen.swap, at, context);
      if (result.ok) done.push(result.value.line);
      else faults.push(...result.problems);
      if (chosen.disliked !== null) disliked.push(chosen.disliked);
      warnings.push(...chosen.warnings, ...(result.ok ? result.value.warnings : []));
    }
    return { lines: done, warnings, disliked };
  };
  const warnings: Warning[] = [];
  const staying: Staying[] = [];
  const meals: CompiledMeal[] = [];
  for (const meal of bundle.plan.meals) {
    const { lines, warnings: found, disliked } = yield* linesOf(meal.lines, ["meals", meal.slug]);
    warnings.push(...found);
    staying.push(...disliked.map((item) => ({ component: null, meal: meal.slug, item })));
    meals.push({ meal, lines, takes: lines.filter(({ component }) => component >= 0) });
  }
  const made = bundle.components.map((component) => routed(component, routes.get(component.slug)?.name ?? null));
  // A component that only an abandoned route's lines led to is not made, and its warnings do not matter.
  const graph = componentGraph(
    made.map(({ lines, component }) => ({ ...component, lines, routes: [] })),
    bundle.plan.meals.flatMap(({ lines }) => lines),
  );
  const unreached = new Set(graph.unreached);
  const components: CompiledComponent[] = [];
  for (const { component, route, lines: own, path } of made) {
    const { lines, warnings: found, disliked } = yield* linesOf(own, path);
    staying.push(...disliked.map((item) => ({ component: components.length, meal: null, item })));
    if (!unreached.has(component.slug)) warnings.push(...found);
    const base = toBase(component.yield.amount, component, null);
    if (!base.ok) throw new TypeError(`the yield of ${component.slug} was checked and is not convertible`);
    components.push({
      component,
      route,
      lines,
      takes: lines.filter(({ component: index }) => index >= 0),
      sizes: batchSizes(component.batch),
      yield: base.amount,
    });
  }
  if (faults.length > 0) return failed(faults);
  const makeOrder = graph.makeOrder.filter((index) => !unreached.has(bundle.components[index]?.slug ?? ""));
  const allLines = [...bundle.plan.meals, ...made].flatMap(({ lines }) => lines);
  return ok({
    bundle,
    meals,
    components,
    makeOrder,
    warnings: [
      ...warnings,
      ...dislikeWarnings(staying, leftOut, { meals, components }),
      ...swapsNotOffered(allLines, household),
    ],
  });
}

function routed(
  component: Component,
  name: string | null,
): { component: Component; route: Route | null; lines: readonly Line[]; path: Path } {
  const path = ["components", component.slug];
  const route = component.routes.find((each) => each.name === name) ?? null;
  return route === null
    ? { component, route, lines: component.lines, path }
    : { component, route, lines: route.lines, path: [...path, "routes", route.name] };
}
