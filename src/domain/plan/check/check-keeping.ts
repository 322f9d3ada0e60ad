import type { Component, Route } from "../../model/component.js";
import type { Food } from "../../model/food.js";
import type { KeepingRule, PublishedKeepingRule } from "../../model/keeping.js";
import { inForceOn } from "../../model/region.js";
import type { KeepingProblem, Path } from "../../problem.js";
import { factsOfRoute } from "../../storage/inherited-limits.js";
import { classesAround, isKeepingClass, needsCold } from "../../storage/keeping-classes.js";
import type { KeepingRules } from "../../storage/rule.js";
import { lastingDays } from "../../storage/keeping-window.js";

/** Something that keeps, with what its writer says. */
interface Keeping {
  readonly subject: string;
  readonly keepsAs: string | null;
  readonly keeping: readonly KeepingRule[];
  readonly path: Path;
}

/** The rule that allows most, of all published for a class at a place: of any region, kitchen and purpose. null: there is none. */
function mostLenient(
  keepsAs: string,
  place: KeepingRule["place"],
  { keeping, classes }: KeepingRules,
  date: string,
): PublishedKeepingRule | null {
  const codes = new Set(classesAround(keepsAs, classes).map(({ code }) => code));
  return keeping
    .filter((rule) => codes.has(rule.keepsAs) && rule.place === place && inForceOn(rule, date))
    .reduce<PublishedKeepingRule | null>(
      (most, rule) => (most === null || lastingDays(rule) > lastingDays(most) ? rule : most),
      null,
    );
}

/**
 * What no reader should be told whatever region they are in: days beyond every published rule of the class, and a shelf for
 * food that needs the cold. Freezing is left out, since what is published about it is quality.
 */
function keepingProblems(
  { subject, keepsAs, keeping, path }: Keeping,
  rules: KeepingRules,
  date: string,
): readonly KeepingProblem[] {
  if (keepsAs === null || !isKeepingClass(keepsAs, rules.classes)) return [];
  return keeping.flatMap(({ place, days }, index): readonly KeepingProblem[] => {
    if (place === "FREEZER") return [];
    const where: Path = [...path, "keeping", index];
    const rule = mostLenient(keepsAs, place, rules, date);
    const most = rule === null ? null : lastingDays(rule);
    if (most !== null && days <= most + 1e-9) return [];
    if (place === "ROOM" && needsCold(keepsAs, rules.classes))
      return [{ code: "NEEDS_THE_COLD", path: where, subject, keepsAs, days }];
    return rule === null || most === null
      ? []
      : [{ code: "KEPT_BEYOND_RULES", path: where, subject, keepsAs, at: place, days, most, rule: rule.id }];
  });
}

/** The same for a component and each of its routes. */
export const checkKeeping = (component: Component, rules: KeepingRules, date: string): readonly KeepingProblem[] => {
  const path: Path = ["components", component.slug];
  const { slug: subject, keepsAs, keeping } = component;
  return [
    ...keepingProblems({ subject, keepsAs, keeping, path }, rules, date),
    ...component.routes.flatMap((route: Route) =>
      keepingProblems(
        {
          subject,
          keepsAs: factsOfRoute(component, route).keepsAs,
          keeping: route.keeping,
          path: [...path, "routes", route.name],
        },
        rules,
        date,
      ),
    ),
  ];
};

/** The same for a food and each of its parts, as it is bought. */
export const checkFoodKeeping = (food: Food, rules: KeepingRules, date: string): readonly KeepingProblem[] => {
  const path: Path = ["foods", food.slug];
  const { slug: subject, keepsAs, keeping } = food;
  return [
    ...keepingProblems({ subject, keepsAs, keeping, path }, rules, date),
    ...food.parts.flatMap(({ name, keepsAs: partKeepsAs = null, keeping: partKeeping = [] }) => {
      const at: Path = [...path, "parts", name];
      return keepingProblems({ subject, keepsAs: partKeepsAs, keeping: partKeeping, path: at }, rules, date);
    }),
  ];
};
