import type { InSlices, Work } from "../../../domain/counted-work.js";
import type { Household } from "../../../domain/model/household.js";
import { noHousehold } from "../../../domain/model/household.js";
import type { AllergenStatement } from "../../../domain/nutrition/allergens.js";
import { foodsEaten } from "../../../domain/plan/contents/foods-eaten.js";
import { dietFact, freeFact, regionalLabels } from "../../../domain/plan/listing/fact-labels.js";
import { factRegions, ownRegion } from "../../../domain/plan/listing/fact-regions.js";
import { isWithout } from "../../../domain/nutrition/allergen-presence.js";
import { listedAllergens } from "../../../domain/plan/listing/listed-allergens.js";
import type { ListedFacts } from "../../../domain/plan/listing/listed-facts.js";
import type { RuleSet } from "../../../domain/plan/compile/rule-set.js";
import type { ScaledPlan } from "../../../domain/plan/scaled.js";
import { stateAllergens, stateDiets } from "../../answers/state-contents.js";
import type { Clock } from "../../deps.js";

/** What a plan is listed without and which diets it is listed for, in every region that has rules. */
export type ListedContents = Pick<ListedFacts, "labels" | "allergens">;

/** A reader of a region who says no more. */
export const readerIn = (region: string): Household => ({
  ...noHousehold,
  region,
  regions: [{ region, owner: "READER" }],
});

/** @param own for readers who name no region: where the plan is for */
export function* listedContents(
  scaled: ScaledPlan,
  own: Household,
  rules: RuleSet,
  clock: Clock,
  work: Work,
): InSlices<ListedContents> {
  const regions = [ownRegion, ...factRegions(rules.allergens)];
  const statements = new Map<string, AllergenStatement>();
  const holding: { readonly fact: string; readonly region: string }[] = [];
  for (const region of regions) {
    const household = region === ownRegion ? own : readerIn(region);
    statements.set(region, yield* stateAllergens(scaled, null, household, rules, clock, work));
    for (const { diet, fits } of yield* stateDiets(scaled, null, household, rules, clock, work))
      if (fits === true) holding.push({ fact: dietFact(diet), region });
  }
  yield;
  const allergens = listedAllergens(foodsEaten(scaled.compiled).plan, statements, rules.allergens.diets);
  for (const each of allergens)
    if (isWithout(each))
      for (const region of each.regions ?? regions) holding.push({ fact: freeFact(each.code), region });
  return { labels: regionalLabels(holding, regions), allergens };
}
