import type { PlanBundle } from "../../../domain/model/plan.js";
import { isOptional } from "../../../exports/document/shopping-text.js";
import { partIn } from "../../../exports/words/part-words.js";
import { codeName } from "../../../exports/words/rule-words.js";
import { wordsFor } from "../../../exports/words/words-for.js";
import { showAmount } from "../../../exports/words/shown-amount.js";
import { takenText, toBuyText } from "../../../exports/words/packs-text.js";
import type { FrozenPlan } from "../../frozen-plan.js";
import type {
  PackCountResolvers,
  ShoppingLineResolvers,
  ShoppingListResolvers,
  UseResolvers,
} from "../../generated/resolver-types.js";
import type { PackCountParent, ShoppingLineParent, ShoppingListParent, UseParent } from "../../parent-types.js";
import type { FieldsToResolve } from "../fields-to-resolve.js";
import { componentParent, foodParent, mealParent } from "../make-parents.js";
import { shownWarnings } from "./warning.js";

const noFacts = { densities: [], measures: [] };

const linesOf = ({ list, show, plans }: ShoppingListParent): readonly ShoppingLineParent[] =>
  list.lines.map((line) => ({ line, show, plans }));

export const shoppingListResolvers: FieldsToResolve<ShoppingListResolvers, ShoppingListParent> = {
  lines: linesOf,
  aisles: (parent) => {
    const lines = linesOf(parent);
    const codes = [...new Set(lines.map(({ line }) => line.food.aisle))];
    return codes.map((code) => ({
      code,
      title: codeName("aisles", code, wordsFor(parent.show.locale)),
      name: code,
      lines: lines.filter(({ line }) => line.food.aisle === code),
    }));
  },
  cost: ({ list }) => list.cost,
  warnings: ({ list, show, plans }) =>
    shownWarnings(
      list.warnings,
      plans.map(({ bundle }) => bundle),
      show,
    ),
};

export const shoppingLineResolvers: FieldsToResolve<ShoppingLineResolvers, ShoppingLineParent> = {
  food: ({ line: { food }, plans, show }) => {
    const frozenIn = plans.find((plan) => plan.foods.get(food.slug) === food);
    return foodParent(food, frozenIn?.published ?? null, show.locale);
  },
  need: ({ line, show }) => line.need && showAmount(line.need, line.food, show),
  onHand: ({ line, show }) => line.onHand && showAmount(line.onHand, line.food, show),
  toBuy: ({ line: { toBuy, food }, show }) =>
    toBuy && { ...showAmount(toBuy, food, show), text: toBuyText(toBuy, food, show) },
  buy: ({ line, show }) => line.buy.map((packs) => ({ ...packs, food: line.food, show })),
  cost: ({ line }) => line.cost,
  uses: ({ line, show, plans }) =>
    line.uses.map((use) => ({ use, show, food: line.food, frozen: planOf(plans, use.bundle) })),
  partsOver: ({ line, show }) =>
    // The food's own words and densities are those of whole pieces.
    line.partsOver.map((over) => ({
      ...over,
      partName: partIn(show.locale, over.part),
      amount: over.amount && showAmount(over.amount, noFacts, show),
    })),
  open: ({ line }) => line.open,
  optional: ({ line }) => isOptional(line),
  toTake: ({ line, show }) => takenText(line, show),
};

export const packCountResolvers: FieldsToResolve<PackCountResolvers, PackCountParent> = {
  pack: ({ pack, food, show }) => ({ ...pack, food, show }),
  weighedFrom: ({ weighedFrom, food, show }) => (weighedFrom === undefined ? null : { ...weighedFrom, food, show }),
};

export const useResolvers: FieldsToResolve<UseResolvers, UseParent> = {
  plan: ({ frozen }) => frozen.published,
  meal: ({ use, frozen }) => use.meal && mealParent(frozen, use.meal),
  component: ({ use, frozen }) => use.component && componentParent(frozen, use.component),
  part: ({ use }) => use.part,
  partName: ({ use, show }) => use.part && partIn(show.locale, use.part),
  asWritten: ({ use }) => use.asWritten,
  amount: ({ use, show, food }) => use.amount && showAmount(use.amount, food, show),
  optional: ({ use }) => use.optional,
};

function planOf(plans: readonly FrozenPlan[], bundle: PlanBundle): FrozenPlan {
  // What is said of its foods today, swaps and translations make another bundle of the same plan.
  const isSame = ({ bundle: { plan } }: FrozenPlan): boolean =>
    plan.publisher === bundle.plan.publisher && plan.slug === bundle.plan.slug;
  const found = plans.find((plan) => plan.bundle === bundle) ?? plans.find(isSame);
  if (found === undefined) throw new Error(`a use names the plan ${bundle.plan.slug}, which is not on the list`);
  return found;
}
