import { batchSizes } from "../../component/batch.js";
import { componentGraph } from "../../component/component-graph.js";
import { factLimits, limits } from "../../engine-limits.js";
import type { Component } from "../../model/component.js";
import type { Line } from "../../model/line.js";
import type { PlanBundle } from "../../model/plan.js";
import type { Path, Problem } from "../../problem.js";
import { ownMeasureName, standardUnit } from "../../quantity/unit.js";
import { runToEnd, type InSlices } from "../../counted-work.js";
import { checkConvertible, checkFood, checkMeasureFacts } from "./check-facts.js";
import { checkSteps } from "./check-steps.js";
import { checkSwaps } from "./check-swaps.js";
import { checkLanguages } from "./check-translations.js";
import { checkCount, checkMeasured, checkNumber, checkRational, checkText, checkUnique } from "./check-text.js";
import { compileLine } from "../compile/compile-line.js";
import type { LineContext } from "../compile/line-context.js";
import { lineContext } from "../compile/line-context.js";

const anyAmount = { min: 0, max: limits.amount };

function checkRule({ rule, exponent, amount }: Line, path: Path): Problem[] {
  const shape = (expected: string, got: string): Problem[] => [{ code: "BAD_SHAPE", path, expected, got }];
  if (rule === "TO_TASTE") return amount === null ? [] : shape("no amount with TO_TASTE", "an amount");
  if (amount === null) return shape(`an amount with ${rule}, or TO_TASTE`, "no amount");
  if (rule === "POWER") {
    return exponent !== null && exponent > 0 && exponent <= 1
      ? []
      : shape("an exponent above 0 and at most 1 with POWER", String(exponent));
  }
  return exponent === null ? [] : shape(`no exponent with ${rule}`, String(exponent));
}

interface Checking {
  readonly context: LineContext;
  /** Foods and components whose own facts are at fault: lines on them cannot be computed, which is not the lines' fault. */
  readonly faulty: { readonly foods: ReadonlySet<string>; readonly components: ReadonlySet<string> };
}

const leansOnFault = ({ item, swaps }: Line, { faulty }: Checking): boolean =>
  (item.kind === "FOOD" ? faulty.foods.has(item.food) : faulty.components.has(item.component)) ||
  swaps.some(({ food }) => faulty.foods.has(food));

/** One of so many pieces of a whole food weighs something. */
function checkWeightOfOne({ amount, each, item }: Line, path: Path): Problem[] {
  if (each === undefined) return [];
  const at = [...path, "each"];
  const faults = checkMeasured(each, at, factLimits.factor.min);
  if (faults.length > 0) return faults;
  const counts = amount !== null && (amount.unit === "piece" || ownMeasureName(amount.unit) !== null);
  const fits = item.kind === "FOOD" && item.part === null && counts && standardUnit(each.unit)?.dimension === "MASS";
  return fits ? [] : [{ code: "BAD_AMOUNT", path: at, written: `${each.low} ${each.unit}`, why: "NOT_OF_ONE" }];
}

function checkLine(line: Line, path: Path, checking: Checking): Problem[] {
  const problems = [
    ...checkText(line.id, "an id", path),
    ...checkCount(line.written.length, limits.text, "characters of a written line", path),
    ...checkCount(line.swaps.length, factLimits.entries, "swaps", [...path, "swaps"]),
    ...checkRule(line, path),
    ...(line.amount === null ? [] : checkMeasured(line.amount, path, 0)),
    ...checkWeightOfOne(line, path),
    ...(line.eaten === undefined ? [] : checkRational(line.eaten, [...path, "eaten"], { min: 0, max: 1 })),
    ...line.swaps.flatMap((swap) => checkRational(swap.ratio, [...path, "swaps", swap.food], anyAmount)),
  ];
  if (problems.length > 0 || leansOnFault(line, checking)) return problems;
  if (line.amount?.unit === "batch" && line.item.kind === "FOOD") {
    return [{ code: "BAD_AMOUNT", path, written: line.written, why: "BATCH_OF_A_FOOD" }];
  }
  const { context } = checking;
  const own = compileLine(line, null, path, context);
  const swaps = line.swaps.map((swap) => compileLine(line, swap, [...path, "swaps", swap.food], context));
  return [own, ...(own.ok ? swaps : [])].flatMap((result) => (result.ok ? [] : result.problems));
}

/** Lines, foods or steps that are checked in one turn: about a millisecond. */
const checkedInTurn = 100;

/** What is wrong with each, turn by turn. */
function* checkEach<T>(things: readonly T[], check: (thing: T) => readonly Problem[]): InSlices<Problem[]> {
  const found: Problem[] = [];
  for (const [at, thing] of things.entries()) {
    if (at % checkedInTurn === checkedInTurn - 1) yield;
    for (const problem of check(thing)) found.push(problem);
  }
  return found;
}

function* checkLines(lines: readonly Line[], path: Path, checking: Checking): InSlices<Problem[]> {
  return [
    ...checkUnique(
      lines.map(({ id }) => id),
      (id) => [...path, "lines", id],
    ),
    ...(yield* checkEach(lines, (line) => checkLine(line, [...path, "lines", line.id], checking))),
  ];
}

function checkBatch({ batch }: Component, path: Path): Problem[] {
  const at = [...path, "batch"];
  const positive = { min: Number.MIN_VALUE, max: limits.amount };
  const problems = [
    ...checkRational(batch.min, [...at, "min"], anyAmount),
    ...(batch.max === null ? [] : checkRational(batch.max, [...at, "max"], positive)),
    ...(batch.increment === null ? [] : checkRational(batch.increment, [...at, "increment"], positive)),
  ];
  if (problems.length > 0 || batch.max === null) return problems;
  const { min, max } = batchSizes(batch);
  if (max >= min && max > 0) return [];
  return [
    {
      code: "BAD_SHAPE",
      path: at,
      expected: "a largest size that at least one batch size fits in",
      got: `min ${batch.min}, max ${batch.max}`,
    },
  ];
}

function checkComponentFacts(component: Component): Problem[] {
  const path = ["components", component.slug];
  return [
    ...checkMeasureFacts(component, path),
    ...checkConvertible(component.yield.amount, component.slug, component, [...path, "yield"]),
  ];
}

function* checkComponent(component: Component, checking: Checking): InSlices<Problem[]> {
  const path = ["components", component.slug];
  yield;
  const ofRoutes: Problem[] = [];
  for (const { name, lines, steps } of component.routes) {
    const at = [...path, "routes", name];
    ofRoutes.push(...(yield* checkLines(lines, at, checking)), ...checkSteps(steps, at));
    ofRoutes.push(...checkSwaps({ lines, steps, yield: null, isKept: true }, at));
  }
  return [
    ...checkText(component.slug, "a slug", path),
    ...checkText(component.title, "a title", path),
    ...checkBatch(component, path),
    ...(yield* checkLines(component.lines, path, checking)),
    ...checkUnique(
      component.routes.map(({ name }) => name),
      (name) => [...path, "routes", name],
    ),
    ...checkSteps(component.steps, path),
    ...checkSwaps({ ...component, yield: component.yield.amount, isKept: true }, path),
    ...ofRoutes,
  ];
}

function checkSizes({ plan, components, foods }: PlanBundle): Problem[] {
  const lines = [...plan.meals, ...components, ...components.flatMap(({ routes }) => routes)];
  return [
    ...checkCount(plan.meals.length, limits.meals, "meals", ["meals"]),
    ...checkCount(components.length, limits.components, "components", ["components"]),
    ...checkCount(foods.length, limits.foods, "foods", ["foods"]),
    ...checkCount(
      lines.reduce((sum, each) => sum + each.lines.length, 0),
      limits.lines,
      "lines",
      ["meals"],
    ),
    ...checkCount(
      lines.reduce((sum, each) => sum + each.steps.length, 0),
      limits.steps,
      "steps",
      ["meals"],
    ),
  ];
}

function* checkMeals({ plan }: PlanBundle, checking: Checking): InSlices<Problem[]> {
  const found: Problem[] = [];
  for (const meal of plan.meals) {
    const path = ["meals", meal.slug];
    yield;
    found.push(
      ...checkText(meal.slug, "a slug", path),
      ...checkText(meal.title, "a title", path),
      ...checkNumber(meal.serves, [...path, "serves"], { min: 1, max: limits.servings }),
      ...checkNumber(meal.day, [...path, "day"], { min: 0, max: limits.day }),
      ...(yield* checkLines(meal.lines, path, checking)),
      ...checkSwaps({ ...meal, yield: null, isKept: false }, path),
      ...checkSteps(meal.steps, path),
    );
  }
  return found;
}

/** A problem repeats what somebody wrote, but not a megabyte of it. */
const mostShown = 200;
const cut = (value: unknown): unknown => {
  if (typeof value === "string" && value.length > mostShown) return `${value.slice(0, mostShown)}…`;
  return Array.isArray(value) ? value.map(cut) : value;
};
const shortened = (problem: Problem): Problem =>
  Object.fromEntries(Object.entries(problem).map(([key, value]) => [key, cut(value)])) as Problem;

const checked = new WeakMap<PlanBundle, readonly Problem[]>();

/**
 * Everything that would make a plan uncomputable, all at once, each with the path to its line: sizes beyond the limits,
 * broken amounts and rules, names that stand for nothing, units nobody knows, cycles with every step named, components
 * no meal leads to, demands that cannot be turned into the unit of their component's yield. A bundle is a value: the answer for one
 * is remembered as long as it lives.
 */
export const checkBundle = (bundle: PlanBundle): readonly Problem[] => runToEnd(checkBundleInSlices(bundle));

/** The same turn by turn. */
export function* checkBundleInSlices(bundle: PlanBundle): InSlices<readonly Problem[]> {
  const known = checked.get(bundle);
  if (known !== undefined) return known;
  const problems = (yield* findProblems(bundle)).map(shortened);
  checked.set(bundle, problems);
  return problems;
}

function* findProblems(bundle: PlanBundle): InSlices<readonly Problem[]> {
  const { plan, components, foods } = bundle;
  const sizes = checkSizes(bundle);
  if (sizes.length > 0) return sizes;
  const faulty = { foods: new Set<string>(), components: new Set<string>() };
  const noting = (slugs: Set<string>, slug: string, problems: readonly Problem[]): readonly Problem[] => {
    if (problems.length > 0) slugs.add(slug);
    return problems;
  };
  const foodFaults = yield* checkEach(foods, (food) => noting(faulty.foods, food.slug, checkFood(food)));
  const componentFaults = yield* checkEach(components, (each) =>
    noting(faulty.components, each.slug, checkComponentFacts(each)),
  );
  const checking: Checking = { context: lineContext(bundle), faulty };
  yield;
  const graph = componentGraph(
    components,
    plan.meals.flatMap(({ lines }) => lines),
  );
  const meals = yield* checkMeals(bundle, checking);
  const made: Problem[] = [];
  for (const component of components) made.push(...(yield* checkComponent(component, checking)));
  return [
    ...checkText(plan.title, "a title", ["title"]),
    ...checkNumber(plan.serves, ["serves"], { min: 1, max: limits.servings }),
    ...(plan.meals.length === 0
      ? [{ code: "BAD_SHAPE" as const, path: ["meals"], expected: "at least one meal", got: "none" }]
      : []),
    ...checkUnique(
      plan.meals.map(({ slug }) => slug),
      (slug) => ["meals", slug],
    ),
    ...checkUnique(
      components.map(({ slug }) => slug),
      (slug) => ["components", slug],
    ),
    ...checkUnique(
      foods.map(({ slug }) => slug),
      (slug) => ["foods", slug],
    ),
    ...foodFaults,
    ...componentFaults,
    ...meals,
    ...made,
    ...checkLanguages(bundle),
    ...graph.cycles.map((cycle): Problem => ({ code: "COMPONENT_CYCLE", path: ["components", cycle[0] ?? ""], cycle })),
    ...graph.unreached.map((component): Problem => ({
      code: "COMPONENT_NOT_REACHED",
      path: ["components", component],
      component,
    })),
  ];
}
