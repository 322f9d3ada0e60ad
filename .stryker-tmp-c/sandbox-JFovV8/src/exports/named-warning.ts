// @ts-nocheck
import type { Warning } from "../domain/problem.js";

/** What in a warning is the slug of a thing, or several. */
const things = ["food", "item", "component", "from", "to"] as const;

/**
 * A warning for a reader, who knows things by their names and no paths.
 *
 * @param name of a food or component
 */
export function namedWarning(warning: Warning, name: (slug: string) => string): Warning {
  const facts: Readonly<Record<string, unknown>> = warning;
  const named = things.flatMap((key): [string, string][] => {
    const slug = facts[key];
    return typeof slug === "string" ? [[key, name(slug)]] : [];
  });
  return { ...warning, ...Object.fromEntries(named), path: [] };
}
