import type { Subject } from "../../domain/storage/guidance.js";
import { adviceText } from "../../services/explain.js";
import { showAmount } from "../../services/show-amount.js";
import { componentIn, foodIn, mealIn, type FrozenPlan } from "../frozen-plan.js";
import type { BasisResolvers, StorageGuidanceResolvers } from "../generated/resolver-types.js";
import type { BasisParent, KeepableParent, ScaledPlanParent, StorageGuidanceParent } from "../parents.js";
import type { FieldsBeyond } from "./fields-beyond.js";
import { componentParent, foodParent, mealParent } from "./parents-of.js";

export const storageGuidanceResolvers: FieldsBeyond<StorageGuidanceResolvers, StorageGuidanceParent> = {
  subject: ({ guidance, plan }) => keepable(plan.frozen, guidance.subject),
  place: ({ guidance }) => guidance.place,
  days: ({ guidance }) => guidance.days,
  counts: ({ guidance }) => guidance.counts,
  purpose: ({ guidance }) => guidance.purpose,
  lastDay: ({ guidance }) => guidance.lastDay,
  keepUntil: ({ guidance }) => guidance.keepUntil,
  container: ({ guidance }) => guidance.container,
  condition: ({ guidance }) => guidance.condition,
  basis: ({ guidance, plan }) => guidance.basis.map((basis) => ({ basis, frozen: plan.frozen })),
  limitedBy: ({ guidance, plan }) => guidance.limitedBy && keepable(plan.frozen, guidance.limitedBy),
  scope: ({ guidance }) => guidance.scope,
  tooLateFor: ({ guidance, plan: { scaled, frozen, show } }) =>
    scaled.meals
      .filter(({ meal }) => guidance.tooLateFor.includes(meal.slug))
      .map((meal) => ({ scaled: meal, frozen, show })),
  advice: ({ guidance, plan }) => guidance.advice.map((advice) => adviceText(advice, wordsOf(plan))),
};

export const basisResolvers: FieldsBeyond<BasisResolvers, BasisParent> = {
  of: ({ basis, frozen }) => keepable(frozen, basis.of),
  source: ({ basis }) => basis.source,
  sourced: ({ basis }) => basis.sourced,
  days: ({ basis }) => basis.days,
  printed: ({ basis }) => basis.printed,
  purpose: ({ basis }) => basis.purpose,
  region: ({ basis }) => basis.region,
  temperature: ({ basis }) => basis.temperature,
  condition: ({ basis }) => basis.condition,
  byAnalogy: ({ basis }) => basis.byAnalogy,
  note: ({ basis }) => basis.note,
  decides: ({ basis }) => basis.decides,
};

function keepable(frozen: FrozenPlan, { kind, slug }: Subject): KeepableParent {
  switch (kind) {
    case "COMPONENT":
      return { ...componentParent(frozen, componentIn(frozen, slug)), __typename: "Component" };
    case "FOOD":
      return { ...foodParent(foodIn(frozen, slug), frozen.published), __typename: "Food" };
    case "MEAL":
      return { ...mealParent(frozen, mealIn(frozen, slug)), __typename: "Meal" };
  }
}

const wordsOf = ({ frozen, show }: ScaledPlanParent) => ({
  meal: (slug: string) => mealIn(frozen, slug).title,
  component: (slug: string) => componentIn(frozen, slug).title,
  food: (slug: string) => foodIn(frozen, slug).names[0]?.one ?? slug,
  amount: (amount: Parameters<typeof showAmount>[0], slug: string) =>
    showAmount(amount, componentIn(frozen, slug), show).text,
});
