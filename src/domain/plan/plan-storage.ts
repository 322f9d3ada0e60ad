import { memoizeLatestInSlices, memoize } from "../memoize.js";
import type { KeepingClass, PublishedKeepingRule } from "../model/keeping.js";
import type { KeepingQuestion, KeptMeal, StorageAnswer, StorageGuidance } from "../storage/guidance.js";
import { storageGuidanceInSlices } from "../storage/storage-guidance.js";
import { portionOf } from "../storage/find-advice.js";
import { runToEnd, unlimitedWork, type InSlices, type Work } from "../counted-work.js";
import type { CompiledLine, CompiledPlan } from "./compile/compiled-plan.js";
import type { ScaledPlan } from "./scaled.js";

/** Days, zones and starts of sessions that one plan is asked about in turn. */
const keptQuestions = 4;

const withoutAmounts = (lines: readonly CompiledLine[]): KeptMeal["lines"] =>
  lines.map(({ item }) => ({ item, amount: null }));

interface AskedInSlices {
  readonly question: KeepingQuestion;
  readonly work: Work;
}

/** How long everything of a plan keeps hangs on no amount; only what goes into the freezer is told as one. */
const guidanceOf = memoize((plan: CompiledPlan) =>
  memoize((_rules: readonly PublishedKeepingRule[]) =>
    memoize((_classes: readonly KeepingClass[]) =>
      memoizeLatestInSlices(
        "keeping",
        keptQuestions,
        ({ question: { region, regions, audience, today, session } }: AskedInSlices) =>
          JSON.stringify([region, regions, audience, today, session]),
        function* ({ question, work }) {
          const components = plan.makeOrder.map((index) => plan.components[index]!);
          return yield* storageGuidanceInSlices(
            {
              components: components.map((each) => ({ ...each, lines: withoutAmounts(each.lines) })),
              meals: plan.meals.map(({ meal, lines }) => ({ meal, lines: withoutAmounts(lines) })),
              foods: plan.bundle.foods,
            },
            question,
            work,
          );
        },
      ),
    ),
  ),
);

/** How long everything of a scaled plan keeps: `storageGuidance`, with the amounts of this household. */
export const planStorage = (scaled: ScaledPlan, question: KeepingQuestion): StorageAnswer =>
  runToEnd(planStorageInSlices(scaled, question, unlimitedWork));

/** The same turn by turn. */
export function* planStorageInSlices(
  { compiled, meals }: ScaledPlan,
  question: KeepingQuestion,
  work: Work,
): InSlices<StorageAnswer> {
  const found = yield* guidanceOf(compiled)(question.rules)(question.classes)({ question, work });
  return { ...found, guidance: found.guidance.map((each) => withPortions(each, meals)) };
}

function withPortions(guidance: StorageGuidance, meals: readonly KeptMeal[]): StorageGuidance {
  if (!guidance.advice.some(({ code }) => code === "FREEZE")) return guidance;
  const linesOf = (slug: string): KeptMeal["lines"] => meals.find(({ meal }) => meal.slug === slug)?.lines ?? [];
  return {
    ...guidance,
    advice: guidance.advice.map((advice) =>
      advice.code === "FREEZE"
        ? {
            ...advice,
            portions: advice.portions.map((portion) => ({
              ...portion,
              amount: portionOf(advice.component, linesOf(portion.meal)),
            })),
          }
        : advice,
    ),
  };
}
