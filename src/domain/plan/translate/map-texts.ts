import type { Component, Route, Step } from "../../model/component.js";
import type { OwnMeasure } from "../../model/food.js";
import type { Image } from "../../model/image.js";
import type { KeepingRule } from "../../model/keeping.js";
import type { Line, Swap } from "../../model/line.js";
import type { Meal, Plan } from "../../model/plan.js";
import type { WordsOfPlan, WritersTexts } from "../../model/writers-words.js";

/** WRITING: in the part of CommonMark that writers may use. WORDS: a few of them, which may stand in several places. */
export type TextKind = "TEXT" | "WRITING" | "WORDS";

/** Gives the text that is to stand there instead. */
export type TextChange = (text: string, path: readonly string[], kind: TextKind) => string;

/** Every text of a plan that readers see, with those of its meals, passed through a function. Amounts and names of foods are none. */
export function mapPlanTexts(plan: Plan, change: TextChange): Plan {
  return {
    ...plan,
    title: change(plan.title, ["title"], "TEXT"),
    summary: plan.summary === null ? null : change(plan.summary, ["summary"], "TEXT"),
    ...words(plan, [], change),
    ...picture(plan, [], change),
    meals: plan.meals.map((meal) => mealWith(meal, ["meals", meal.slug], change)),
  };
}

/** The same of a component, with its routes. */
export function mapComponentTexts(component: Component, change: TextChange): Component {
  return {
    ...component,
    title: change(component.title, ["title"], "TEXT"),
    ...words(component, [], change),
    ...picture(component, [], change),
    ...made(component, [], change),
    keeping: component.keeping.map((rule) => keepingWith(rule, change)),
    measures: component.measures.map((measure) => measureWith(measure, change)),
    routes: component.routes.map((route) => routeWith(route, ["routes", route.name], change)),
  };
}

const few = (text: string, change: TextChange): string => change(text, ["words", text], "WORDS");

const mealWith = (meal: Meal, path: readonly string[], change: TextChange): Meal => ({
  ...meal,
  title: change(meal.title, [...path, "title"], "TEXT"),
  ...texts(meal, path, change),
  ...picture(meal, path, change),
  ...made(meal, path, change),
});

function routeWith(route: Route, path: readonly string[], change: TextChange): Route {
  const called = few(route.name, change);
  return {
    ...route,
    ...(called === route.name ? {} : { called }),
    ...made(route, path, change),
    keeping: route.keeping.map((rule) => keepingWith(rule, change)),
  };
}

const made = (
  { lines, steps }: { readonly lines: readonly Line[]; readonly steps: readonly Step[] },
  path: readonly string[],
  change: TextChange,
) => ({
  lines: lines.map((line) => lineWith(line, path, change)),
  steps: steps.map((step): Step => ({ ...step, ...stepText(step, step.text, [...path, "steps", step.id], change) })),
});

/** What is read out of the words of a step is read out of those it was written in. */
function stepText({ said }: { readonly said?: string }, text: string, path: readonly string[], change: TextChange) {
  const next = change(text, path, "TEXT");
  return next === text ? { text } : { text: next, said: said ?? text };
}

const lineWith = (line: Line, path: readonly string[], change: TextChange): Line => ({
  ...line,
  preparation: line.preparation === null ? null : few(line.preparation, change),
  mark: line.mark === null ? null : few(line.mark, change),
  swaps: line.swaps.map((swap) => swapWith(swap, [...path, "swaps", line.id, swap.food], change)),
});

function swapWith(swap: Swap, path: readonly string[], change: TextChange): Swap {
  const { note, own } = swap;
  return {
    ...swap,
    note: note === null ? null : change(note, [...path, "note"], "TEXT"),
    ...(own !== undefined && {
      own: {
        ...own,
        ...(own.preparation !== undefined && { preparation: few(own.preparation, change) }),
        ...(own.steps !== undefined && {
          steps: own.steps.map((step) =>
            step.text === undefined
              ? step
              : { ...step, ...stepText(step, step.text, [...path, "steps", step.id], change) },
          ),
        }),
      },
    }),
  };
}

const keepingWith = (rule: KeepingRule, change: TextChange): KeepingRule => ({
  ...rule,
  container: rule.container === null ? null : few(rule.container, change),
  condition: rule.condition === null ? null : few(rule.condition, change),
});

const measureWith = (measure: OwnMeasure, change: TextChange): OwnMeasure => ({
  ...measure,
  one: few(measure.one, change),
  many: few(measure.many, change),
});

function picture({ image }: { readonly image?: Image }, path: readonly string[], change: TextChange) {
  return image === undefined ? {} : { image: { ...image, alt: change(image.alt, [...path, "alt"], "TEXT") } };
}

const texts = (thing: WritersTexts, path: readonly string[], change: TextChange): WritersTexts =>
  Object.fromEntries(
    (["introduction", "notes", "tips"] as const).flatMap((key) => {
      const text = thing[key];
      return text === undefined ? [] : [[key, change(text, [...path, key], "WRITING")]];
    }),
  );

const words = (thing: WordsOfPlan, path: readonly string[], change: TextChange): WordsOfPlan => ({
  ...texts(thing, path, change),
  ...(thing.equipment !== undefined && { equipment: thing.equipment.map((each) => few(each, change)) }),
  ...(thing.tags !== undefined && { tags: thing.tags.map((each) => few(each, change)) }),
});
