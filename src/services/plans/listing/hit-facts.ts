import { listedNutrients } from "../../../domain/plan/listing/listed-facts.js";
import { factsIn } from "../../../domain/plan/listing/fact-labels.js";
import type { StoredFacts } from "../../deps.js";
import type { PlanHit } from "./search-plans.js";

/** Facts of a plan as a list found it, where the list was asked for. */
export type HitFacts = StoredFacts & Pick<PlanHit, "region" | "markets" | "foodsAtHand">;

/** null: not worked out yet. */
export const factsOfHit = ({ facts, region, markets, foodsAtHand }: PlanHit): HitFacts | null =>
  facts && { ...facts, region, markets, foodsAtHand };

const dietPrefix = "diet ";

/** Codes of the diets that the plan keeps there. */
export const dietsOfHit = ({ labels, region }: HitFacts): readonly string[] =>
  factsIn(labels, region)
    .filter((fact) => fact.startsWith(dietPrefix))
    .map((fact) => fact.slice(dietPrefix.length))
    .toSorted();

/** What a serving costs there, in each currency in the first of the markets in which the plan is priced, where the price of every food is known. */
export const costsOfHit = ({ costs, markets, costsOf }: HitFacts) =>
  [...new Set(costs.map(({ currency }) => currency))].toSorted().flatMap((currency) => {
    const priced = markets
      .map((market) => costs.find((cost) => cost.market === market && cost.currency === currency))
      .find((cost) => cost !== undefined);
    const amount = priced?.amount ?? null;
    return amount === null ? [] : [{ perServing: { amount, currency }, date: costsOf }];
  });

/** What is certain of a serving, in the usual order of nutrients. */
export const nutrientsOfHit = ({ nutrients }: HitFacts) =>
  listedNutrients.flatMap((nutrient) => {
    const amount = nutrients[nutrient];
    return amount === undefined ? [] : [{ nutrient, min: amount.low, max: amount.high }];
  });

/** Every allergen there. */
export const allergensOfHit = ({ allergens, region }: HitFacts) =>
  allergens.flatMap(({ code, regions, presence, traces }) =>
    regions === null || regions.includes(region) ? [{ allergen: code, presence, traces }] : [],
  );
