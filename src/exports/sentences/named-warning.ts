import type { Warning } from "../../domain/problem.js";

/** What a reader calls things. */
export interface WarningNames {
  /** A food or a component. */
  readonly thing: (slug: string) => string;
  readonly meal: (slug: string) => string;
}

/** What in a warning is the slug of what. */
const things = ["food", "item", "component", "from", "to"] as const;
const meals = ["meal"] as const;

/** A warning for a reader, who knows things by their names and no paths. */
export function namedWarning(warning: Warning, { thing, meal }: WarningNames): Warning {
  const facts: Readonly<Record<string, unknown>> = warning;
  const renamed = (keys: readonly string[], name: (slug: string) => string): [string, string][] =>
    keys.flatMap((key) => {
      const slug = facts[key];
      return typeof slug === "string" ? [[key, name(slug)] as [string, string]] : [];
    });
  const named = { ...warning, ...Object.fromEntries([...renamed(things, thing), ...renamed(meals, meal)]), path: [] };
  return "meals" in named ? { ...named, meals: named.meals.map(meal) } : named;
}
