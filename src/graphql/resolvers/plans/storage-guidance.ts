import type { StorageAnswer } from "../../../domain/storage/guidance.js";
import { adviceTexts } from "../../../exports/sentences/advice-text.js";
import { storageIn } from "../../../exports/sentences/rules-in-language.js";
import { warningText } from "../../../exports/sentences/warning-text.js";
import { wordsFor } from "../../../exports/words/words-for.js";
import type { KeptAlone } from "../../../services/answers/guide-single-item.js";
import { foodNameFor } from "../../../exports/words/food-name.js";
import { showAmount, type Show } from "../../../exports/words/shown-amount.js";
import { componentIn, foodIn, mealIn, showOf, type FrozenPlan } from "../../frozen-plan.js";
import type { BasisResolvers, StorageGuidanceResolvers } from "../../generated/resolver-types.js";
import type { BasisParent, FoodParent, ScaledPlanParent, StorageGuidanceParent } from "../../parent-types.js";
import type { FieldsToResolve } from "../fields-to-resolve.js";
import { keepable } from "./keepable.js";

/** What a scaled plan says about keeping. */
export const guidanceInPlan = (storage: StorageAnswer, plan: ScaledPlanParent): readonly StorageGuidanceParent[] =>
  storageIn(storage, wordsFor(plan.show.locale)).guidance.map((each) => ({
    guidance: each,
    find: (subject) => keepable(plan.frozen, subject),
    advice: () => adviceTexts(each.advice, wordsOf(plan.frozen, plan.show), each.tooLateFor),
    plan,
  }));

/** The same for a component on its own. What the answer as a whole says is said where it is best kept. */
export const guidanceOfComponent = (kept: KeptAlone, frozen: FrozenPlan): readonly StorageGuidanceParent[] => {
  const words = wordsOf(frozen, showOf(frozen));
  const { guidance, notes } = storageIn(kept, words.words);
  return guidance.map((each, place) => ({
    guidance: each,
    find: (subject) => keepable(frozen, subject),
    advice: () => [
      ...adviceTexts(each.advice, words, each.tooLateFor),
      ...(place === 0 ? notes.map((note) => warningText(note, words.words)) : []),
    ],
    plan: null,
  }));
};

/** The same for a food on its own, which has neither meals nor parts to speak of. */
export const guidanceOfFood = (kept: KeptAlone, food: FoodParent): readonly StorageGuidanceParent[] => {
  const words = wordsFor(food.locale ?? "en");
  const { guidance, notes } = storageIn(kept, words);
  return guidance.map((each, place) => ({
    guidance: each,
    find: () => ({ ...food, __typename: "Food" }),
    advice: () => (place === 0 ? notes.map((note) => warningText(note, words)) : []),
    plan: null,
  }));
};

export const storageGuidanceResolvers: FieldsToResolve<StorageGuidanceResolvers, StorageGuidanceParent> = {
  subject: ({ guidance, find }) => find(guidance.subject),
  place: ({ guidance }) => guidance.place,
  days: ({ guidance }) => guidance.days,
  upToDays: ({ guidance }) => guidance.upToDays,
  counts: ({ guidance }) => guidance.counts,
  purpose: ({ guidance }) => guidance.purpose,
  lastDay: ({ guidance }) => guidance.lastDay,
  keepUntil: ({ guidance }) => guidance.keepUntil,
  container: ({ guidance }) => guidance.container,
  condition: ({ guidance }) => guidance.condition,
  basis: ({ guidance, find }) => guidance.basis.map((basis) => ({ basis, find })),
  limitedBy: ({ guidance, find }) => guidance.limitedBy && find(guidance.limitedBy),
  scope: ({ guidance }) => guidance.scope,
  advice: ({ advice }) => advice(),
  tooLateFor: ({ guidance, plan }) =>
    plan === null
      ? []
      : plan.scaled.meals
          .filter(({ meal }) => guidance.tooLateFor.includes(meal.slug))
          .map((meal) => ({ scaled: meal, frozen: plan.frozen, show: plan.show, plan })),
};

export const basisResolvers: FieldsToResolve<BasisResolvers, BasisParent> = {
  of: ({ basis, find }) => find(basis.of),
  source: ({ basis }) => basis.source,
  sourced: ({ basis }) => basis.sourced,
  days: ({ basis }) => basis.days,
  daysFrom: ({ basis }) => basis.daysFrom,
  printed: ({ basis }) => basis.printed,
  purpose: ({ basis }) => basis.purpose,
  region: ({ basis }) => basis.region,
  temperature: ({ basis }) => basis.temperature,
  condition: ({ basis }) => basis.condition,
  byAnalogy: ({ basis }) => basis.byAnalogy,
  note: ({ basis }) => basis.note,
  decides: ({ basis }) => basis.decides,
};

const wordsOf = (frozen: FrozenPlan, show: Show) => ({
  words: wordsFor(show.locale),
  meal: (slug: string) => mealIn(frozen, slug).title,
  component: (slug: string) => componentIn(frozen, slug).title,
  food: (slug: string) => foodNameFor(foodIn(frozen, slug), show.locale),
  amount: (amount: Parameters<typeof showAmount>[0], slug: string) =>
    showAmount(amount, componentIn(frozen, slug), show).text,
});
