import type { Component, Route } from "../model/component.js";
import type { ColdRule } from "../prep-session/cooling.js";
import { classesAround, keepingClasses } from "../storage/keeping-classes.js";

/** Heat to fridge: two hours (USDA FSIS, Leftovers and Food Safety), an hour for rice (UK FSA, Home food fact checker). */
const hoursIntoTheCold = { usual: 120, rice: 60 } as const;
/** What never stands at room temperature (NCHFP, Freezing Garlic-in-Oil, and its FAQ on herbs and oils). */
const underOil: ReadonlySet<string> = new Set(["garlic-in-oil", "herbs-in-oil", "vegetables-in-oil"]);

const isRice = (word: string): boolean => /(^|-)rice(-|$)/.test(word);

/** How fast a component has to get into the cold. Of what nobody classed it is not known, so the strictest holds. */
export function coldRuleOf(component: Component, route: Route | null): ColdRule | null {
  const keepsAs = route?.keepsAs ?? component.keepsAs;
  const around = keepsAs === null ? [] : classesAround(keepsAs).map(({ code }) => code);
  if (around.length > 0 && !around.some((code) => keepingClasses[code].perishable)) return null;
  const foods = (route?.lines ?? component.lines).flatMap(({ item }) => (item.kind === "FOOD" ? [item.food] : []));
  const rice = [...around, ...component.cautions, ...foods].some(isRice);
  return {
    within: rice ? hoursIntoTheCold.rice : hoursIntoTheCold.usual,
    neverStands: [...around, ...component.cautions].some((code) => underOil.has(code)),
  };
}
