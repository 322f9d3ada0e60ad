import type { Component, Route } from "../model/component.js";
import type { Household } from "../model/household.js";
import type { PlanBundle } from "../model/plan.js";
import { failed, ok, type Problem, type Result } from "../problem.js";
import type { DietJudge } from "../nutrition/diets.js";
import type { InSlices, Work } from "../counted-work.js";
import { checkBundleInSlices } from "./check/check-bundle.js";
import { compilePlanInSlices, type RouteChoice } from "./compile/compile-plan.js";
import type { CompiledPlan } from "./compile/compiled-plan.js";

/** Smaller is better, first number first. */
export type Score = readonly number[];

/** Up to so many combinations of routes are all tried; beyond, one component at a time is improved until none can be. */
const mostCombinations = 64;

/** The name under which a reader asks for a component as its writer made it. */
const asWrittenName = "as-written";

/** The routes that a household names for the plan's components. A list over several plans names components of all of them; another plan's are no mistake here. */
function* namedRoutes({ components }: PlanBundle, { routes }: Household) {
  const bySlug = new Map(components.map((component) => [component.slug, component]));
  for (const [at, { component: slug, route: name }] of routes.byName.entries()) {
    const component = bySlug.get(slug);
    if (component === undefined) continue;
    const route = component.routes.find((each) => each.name === name);
    yield { at, component, name, route: route ?? (name === asWrittenName ? null : undefined) };
  }
}

/** Routes that a household names and a component does not have. */
export const unknownRoutes = (bundle: PlanBundle, household: Household): readonly Problem[] =>
  [...namedRoutes(bundle, household)].flatMap(({ at, component, name, route }): readonly Problem[] => {
    if (route !== undefined) return [];
    const known = [asWrittenName, ...component.routes.map((each) => each.name)];
    const path = ["household", "routes", "byName", at, "route"];
    return [{ code: "UNKNOWN_ROUTE", path, component: component.slug, route: name, known }];
  });

function named(bundle: PlanBundle, household: Household): Result<ReadonlyMap<string, Route | null>> {
  const problems = unknownRoutes(bundle, household);
  if (problems.length > 0) return failed(problems);
  return ok(
    new Map(
      [...namedRoutes(bundle, household)].flatMap(({ component, route }) =>
        route === undefined ? [] : [[component.slug, route] as const],
      ),
    ),
  );
}

const choiceOf = (routes: ReadonlyMap<string, Route | null>): RouteChoice =>
  new Map([...routes].flatMap(([slug, route]) => (route === null ? [] : [[slug, route] as const])));

const better = (a: Score, b: Score): boolean => {
  for (let at = 0; at < Math.max(a.length, b.length); at++) {
    const difference = (a[at] ?? 0) - (b[at] ?? 0);
    if (Math.abs(difference) > 1e-9) return difference < 0;
  }
  return false;
};

const combinations = (open: readonly Component[]): Map<string, Route | null>[] =>
  open.reduce<Map<string, Route | null>[]>(
    (all, component) =>
      all.flatMap((chosen) =>
        [null, ...component.routes].map((route) => new Map([...chosen, [component.slug, route]])),
      ),
    [new Map()],
  );

/** Tries routes of the components that are open. As written comes first, so a route must be truly better to be taken. */
function* bestOf(
  open: readonly Component[],
  score: (routes: ReadonlyMap<string, Route | null>) => InSlices<Score>,
): InSlices<Map<string, Route | null>> {
  const size = open.reduce((product, { routes }) => product * (routes.length + 1), 1);
  let best = new Map<string, Route | null>(open.map(({ slug }) => [slug, null]));
  let bestScore = yield* score(best);
  const consider = function* (candidate: Map<string, Route | null>): InSlices<boolean> {
    const candidateScore = yield* score(candidate);
    if (!better(candidateScore, bestScore)) return false;
    best = candidate;
    bestScore = candidateScore;
    return true;
  };
  if (size <= mostCombinations) {
    for (const candidate of combinations(open)) yield* consider(candidate);
    return best;
  }
  for (let improved = true; improved;) {
    improved = false;
    for (const { slug, routes } of open) {
      for (const route of [null, ...routes])
        improved = (yield* consider(new Map([...best, [slug, route]]))) || improved;
    }
  }
  return best;
}

/** How far a plan is from what the household does not eat: allergens it avoids first, those that are known to be there before others, then what it does not like. */
function unmet({ warnings }: CompiledPlan): Score {
  const ofAllergens = warnings.flatMap((each) => (each.code === "ALLERGEN_NOT_AVOIDED" ? [each.presence] : []));
  return [
    ofAllergens.filter((presence) => presence === "CONTAINS").length,
    ofAllergens.filter((presence) => presence !== "CONTAINS").length,
    warnings.reduce((sum, each) => sum + (each.code === "DISLIKE_NOT_AVOIDED" ? each.meals.length : 0), 0),
  ];
}

/**
 * The plan with its routes settled: those named by the household, and for the others whichever way scores best over the
 * whole plan (a cheaper tin may make another pot unnecessary); before that, whichever way keeps out what the household avoids. Fails on a route that a component does not have, and with all of
 * `checkBundle`.
 *
 * @param scoreOf of one choice, given the compiled plan; null: as written
 */
export function* chooseRoutesInSlices(
  bundle: PlanBundle,
  household: Household,
  scoreOf: ((plan: CompiledPlan) => InSlices<Score>) | null,
  fitsDiet: DietJudge,
  work: Work,
): InSlices<Result<CompiledPlan>> {
  const problems = yield* checkBundleInSlices(bundle);
  if (problems.length > 0) return failed(problems);
  const fixed = named(bundle, household);
  if (!fixed.ok) return fixed;
  const compile = (routes: ReadonlyMap<string, Route | null>): InSlices<Result<CompiledPlan>> =>
    compilePlanInSlices(bundle, household, choiceOf(new Map([...fixed.value, ...routes])), fitsDiet, work);
  const open = bundle.components.filter(({ slug, routes }) => routes.length > 0 && !fixed.value.has(slug));
  const avoids = household.avoidAllergens.length > 0 || household.dislikes.length > 0;
  if (open.length === 0 || (scoreOf === null && !avoids)) return yield* compile(new Map());
  if (scoreOf === null) {
    const written = yield* compile(new Map());
    if (!written.ok || unmet(written.value).every((count) => count === 0)) return written;
  }
  const best = yield* bestOf(open, function* (routes) {
    yield;
    const plan = yield* compile(routes);
    if (!plan.ok) return [Infinity];
    return [...(avoids ? unmet(plan.value) : []), ...(scoreOf === null ? [] : yield* scoreOf(plan.value))];
  });
  return yield* compile(best);
}
