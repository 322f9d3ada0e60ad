import type { Component, Route } from "../../model/component.js";
import type { KeepingClass } from "../../model/keeping.js";
import type { ColdRule } from "../../prep-session/cooling.js";
import { classesAround, needsCold } from "../../storage/keeping-classes.js";

/** Minutes from the heat into the fridge: two hours (USDA FSIS, Leftovers and Food Safety), one for rice (UK FSA, Home food fact checker). */
const intoTheCold = { usual: 120, rice: 60 } as const;
/** What never stands at room temperature (NCHFP, Freezing Garlic-in-Oil, and its FAQ on herbs and oils). */
const underOil: ReadonlySet<string> = new Set(["garlic-in-oil", "herbs-in-oil", "vegetables-in-oil"]);

const isRice = (word: string): boolean => /(^|-)rice(-|$)/.test(word);

/** How fast a component has to get into the cold. Of what nobody classed it is not known, so it does. */
export function coldRuleOf(
  component: Component,
  route: Route | null,
  classes: readonly KeepingClass[],
): ColdRule | null {
  const keepsAs = route?.keepsAs ?? component.keepsAs;
  if (!needsCold(keepsAs, classes)) return null;
  const around = keepsAs === null ? [] : [keepsAs, ...classesAround(keepsAs, classes).map(({ code }) => code)];
  const foods = (route?.lines ?? component.lines).flatMap(({ item }) => (item.kind === "FOOD" ? [item.food] : []));
  const rice = [...around, ...component.cautions, ...foods].some(isRice);
  return {
    within: rice ? intoTheCold.rice : intoTheCold.usual,
    neverStands: [...around, ...component.cautions].some((code) => underOil.has(code)),
  };
}
