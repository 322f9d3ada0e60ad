import { componentGraph } from "../component/graph.js";
import { limits } from "../limits.js";
import type { Component } from "../model/component.js";
import type { Line } from "../model/line.js";
import type { PlanBundle } from "../model/plan.js";
import type { Path, Problem } from "../problem.js";
import { missingText, toBase } from "../quantity/convert.js";
import { toNumber } from "../quantity/rational.js";
import { nearestUnits } from "../quantity/unit.js";
import { checkCount, checkMeasured, checkNumber, checkRational, checkText, checkUnique } from "./check-text.js";
import { compileLine, type LineContext } from "./compile-line.js";
import { lineContext } from "./line-context.js";

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

function checkLine(line: Line, path: Path, context: LineContext): Problem[] {
  const problems = [
    ...checkText(line.id, "an id", path),
    ...checkCount(line.written.length, limits.text, "characters of a written line", path),
    ...checkRule(line, path),
    ...(line.amount === null ? [] : checkMeasured(line.amount, path, 0)),
    ...line.swaps.flatMap((swap) => checkRational(swap.ratio, [...path, "swaps", swap.food], anyAmount)),
  ];
  if (problems.length > 0) return problems;
  if (line.amount?.unit === "batch" && line.item.kind === "FOOD") {
    return [{ code: "BAD_AMOUNT", path, written: line.written, why: "BATCH_OF_A_FOOD" }];
  }
  const own = compileLine(line, null, path, context);
  const swaps = line.swaps.map((swap) => compileLine(line, swap, [...path, "swaps", swap.food], context));
  return [own, ...(own.ok ? swaps : [])].flatMap((result) => (result.ok ? [] : result.problems));
}

function checkLines(lines: readonly Line[], path: Path, context: LineContext): Problem[] {
  return [
    ...checkUnique(
      lines.map(({ id }) => id),
      (id) => [...path, "lines", id],
    ),
    ...lines.flatMap((line) => checkLine(line, [...path, "lines", line.id], context)),
  ];
}

function checkYield(component: Component, path: Path): Problem[] {
  const at = [...path, "yield"];
  const { amount } = component.yield;
  const written = checkMeasured(amount, at, Number.MIN_VALUE);
  if (written.length > 0) return written;
  const base = toBase(amount, component, null);
  if (base.ok) return [];
  if (base.missing.code === "UNIT") {
    return [{ code: "UNKNOWN_UNIT", path: at, unit: amount.unit, nearest: nearestUnits(amount.unit) }];
  }
  const missing = missingText(base.missing);
  return [
    { code: "NOT_CONVERTIBLE", path: at, item: component.slug, from: amount.unit, to: "g, ml or pieces", missing },
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
  const [min, max] = [toNumber(batch.min), toNumber(batch.max)];
  const largest =
    batch.increment === null
      ? max
      : min + Math.floor((max - min) / toNumber(batch.increment) + 1e-9) * toNumber(batch.increment);
  if (max >= min && largest > 0) return [];
  return [
    {
      code: "BAD_SHAPE",
      path: at,
      expected: "a largest size that at least one batch size fits in",
      got: `min ${batch.min}, max ${batch.max}`,
    },
  ];
}

function checkComponent(component: Component, context: LineContext): Problem[] {
  const path = ["components", component.slug];
  return [
    ...checkText(component.slug, "a slug", path),
    ...checkText(component.title, "a title", path),
    ...checkYield(component, path),
    ...checkBatch(component, path),
    ...checkLines(component.lines, path, context),
    ...checkUnique(
      component.routes.map(({ name }) => name),
      (name) => [...path, "routes", name],
    ),
    ...component.routes.flatMap((route) => checkLines(route.lines, [...path, "routes", route.name], context)),
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
  ];
}

function checkMeals({ plan }: PlanBundle, context: LineContext): Problem[] {
  return plan.meals.flatMap((meal) => {
    const path = ["meals", meal.slug];
    return [
      ...checkText(meal.slug, "a slug", path),
      ...checkText(meal.title, "a title", path),
      ...checkNumber(meal.serves, [...path, "serves"], { min: Number.MIN_VALUE, max: limits.servings }),
      ...checkNumber(meal.day, [...path, "day"], { min: 0, max: limits.day }),
      ...checkLines(meal.lines, path, context),
    ];
  });
}

const checked = new WeakMap<PlanBundle, readonly Problem[]>();

/**
 * Everything that would make a plan uncomputable, all at once, each with the path to its line: sizes beyond the limits,
 * broken amounts and rules, names that stand for nothing, units nobody knows, cycles with every step named, components
 * no meal leads to, demands that cannot be turned into the unit of their component's yield. A bundle is a value: the answer for one
 * is remembered as long as it lives.
 */
export function checkBundle(bundle: PlanBundle): readonly Problem[] {
  const known = checked.get(bundle);
  if (known !== undefined) return known;
  const problems = findProblems(bundle);
  checked.set(bundle, problems);
  return problems;
}

function findProblems(bundle: PlanBundle): readonly Problem[] {
  const { plan, components, foods } = bundle;
  const sizes = checkSizes(bundle);
  if (sizes.length > 0) return sizes;
  const context = lineContext(bundle);
  const graph = componentGraph(
    components,
    plan.meals.flatMap(({ lines }) => lines),
  );
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
    ...checkMeals(bundle, context),
    ...components.flatMap((component) => checkComponent(component, context)),
    ...graph.cycles.map((cycle): Problem => ({ code: "COMPONENT_CYCLE", path: ["components", cycle[0] ?? ""], cycle })),
    ...graph.unreached.map((component): Problem => ({
      code: "COMPONENT_NOT_REACHED",
      path: ["components", component],
      component,
    })),
  ];
}
