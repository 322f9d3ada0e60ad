import { adviceText } from "../../services/explain.js";
import { showAmount } from "../../services/show-amount.js";
import { componentIn, foodIn, mealIn } from "../frozen-plan.js";
import type { BasisResolvers, StorageGuidanceResolvers } from "../generated/resolver-types.js";
import type { BasisParent, ScaledPlanParent, StorageGuidanceParent } from "../parents.js";
import type { FieldsBeyond } from "./fields-beyond.js";
import { keepable } from "./keepable.js";

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
  tooLateFor: ({ guidance, plan }) =>
    plan.scaled.meals
      .filter(({ meal }) => guidance.tooLateFor.includes(meal.slug))
      .map((meal) => ({ scaled: meal, frozen: plan.frozen, show: plan.show, plan })),
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

const wordsOf = ({ frozen, show }: ScaledPlanParent) => ({
  meal: (slug: string) => mealIn(frozen, slug).title,
  component: (slug: string) => componentIn(frozen, slug).title,
  food: (slug: string) => foodIn(frozen, slug).names[0]?.one ?? slug,
  amount: (amount: Parameters<typeof showAmount>[0], slug: string) =>
    showAmount(amount, componentIn(frozen, slug), show).text,
});
