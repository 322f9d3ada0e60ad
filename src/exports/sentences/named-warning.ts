import type { PlanBundle } from "../../domain/model/plan.js";
import type { Reader } from "../../domain/plan/plan-answer.js";
import type { Warning } from "../../domain/problem.js";
import { nameBook, type NameBook } from "../words/name-book.js";

/** What a reader calls things. */
export interface WarningNames {
  /** A food or a component. */
  readonly thing: (slug: string) => string;
  readonly meal: (slug: string) => string;
  /** Left out: plans keep their slugs. */
  readonly plan?: (slug: string) => string;
}

/** What in a warning is the slug of what. */
const things = ["food", "item", "component", "from", "to"] as const;
const meals = ["meal"] as const;

/** A warning for a reader, who knows things by their names and no paths. */
export function namedWarning(warning: Warning, { thing, meal, plan }: WarningNames): Warning {
  const facts: Readonly<Record<string, unknown>> = warning;
  const renamed = (keys: readonly string[], name: (slug: string) => string): [string, string][] =>
    keys.flatMap((key) => {
      const slug = facts[key];
      return typeof slug === "string" ? [[key, name(slug)] as [string, string]] : [];
    });
  const named = { ...warning, ...Object.fromEntries([...renamed(things, thing), ...renamed(meals, meal)]), path: [] };
  if ("meals" in named) return { ...named, meals: named.meals.map(meal) };
  if ("plans" in named && plan) return { ...named, plans: named.plans.map(plan) };
  return "offered" in named && named.offered ? { ...named, offered: named.offered.map(thing) } : named;
}

/** What the reader of some plans calls their things: by the first plan that knows them. Each thing is looked up once. */
export function warningNames(bundles: readonly PlanBundle[], reader: Reader): WarningNames {
  const distinct = [...new Set(bundles)];
  const opened: NameBook[] = [];
  const titles = new Map(bundles.map(({ plan }) => [plan.slug, plan.title]));
  const named = (kind: "thing" | "meal"): ((slug: string) => string) => {
    const known = new Map<string, string>();
    const find = (slug: string): string => {
      for (const [at, bundle] of distinct.entries()) {
        const name = (opened[at] ??= nameBook(bundle, reader))[kind](slug);
        if (name !== slug) return name;
      }
      return slug;
    };
    return (slug) => {
      const name = known.get(slug) ?? find(slug);
      known.set(slug, name);
      return name;
    };
  };
  return { thing: named("thing"), meal: named("meal"), plan: (slug) => titles.get(slug) ?? slug };
}
