import type { Household, OnHand } from "../../domain/model/household.js";
import { addRationals, compareRationals } from "../../domain/quantity/rational.js";

/**
 * What is said twice, once: diets, swaps and routes are sets. What is on hand is no set: two bags of a food are twice as much, so lines
 * that only differ in how much are added up, and keep the place of the first. All that is computed from a household is computed for
 * each of its entries.
 */
export const mergeDuplicates = (household: Household): Household => ({
  ...household,
  diets: [...new Set(household.diets)],
  avoidAllergens: [...new Set(household.avoidAllergens)],
  dislikes: [...new Set(household.dislikes)],
  swaps: oncePer(household.swaps, ({ from, to }) => [from, to]),
  routes: {
    ...household.routes,
    byName: oncePer(household.routes.byName, ({ component, route }) => [component, route]),
  },
  onHand: addedUp(household.onHand),
});

/** The first of each. */
function oncePer<T>(entries: readonly T[], sameBy: (entry: T) => readonly unknown[]): readonly T[] {
  const first = new Map<string, T>();
  for (const entry of entries) {
    const key = JSON.stringify(sameBy(entry));
    if (!first.has(key)) first.set(key, entry);
  }
  return first.size === entries.length ? entries : [...first.values()];
}

function addedUp(entries: readonly OnHand[]): readonly OnHand[] {
  const kept = new Map<string, OnHand>();
  entries.forEach((entry, place) => {
    const { item, unit, useBy, asOtherForm, amount } = entry;
    const key = JSON.stringify([item, unit, useBy, asOtherForm]);
    const before = kept.get(key);
    const sum = before && isAmount(before) && isAmount(entry) ? addRationals(before.amount, amount) : null;
    if (before !== undefined && sum !== null) kept.set(key, { ...before, amount: sum });
    // A second line that cannot be added stands for itself, so that it is refused where it stands.
    else kept.set(before === undefined ? key : `${key} ${place}`, kept.size === place ? entry : { ...entry, place });
  });
  return kept.size === entries.length ? entries : [...kept.values()];
}

/** Not below nothing: that is a mistake, which a sum would hide. */
const isAmount = ({ amount }: OnHand): boolean => compareRationals(amount, "0") >= 0;
