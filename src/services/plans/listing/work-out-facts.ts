import type { InSlices, Work } from "../../../domain/counted-work.js";
import type { PlanBundle } from "../../../domain/model/plan.js";
import { noHousehold, type Household } from "../../../domain/model/household.js";
import { applianceFact, everywhere, languageFact, tagFact } from "../../../domain/plan/listing/fact-labels.js";
import type { ListedFacts } from "../../../domain/plan/listing/listed-facts.js";
import { listedNutrition } from "../../../domain/plan/listing/listed-nutrients.js";
import type { FoodsToday } from "../../../domain/plan/review/foods-today.js";
import { scalePlanInSlices } from "../../../domain/plan/scale-plan.js";
import type { ScaledPlan } from "../../../domain/plan/scaled.js";
import { shopInSlices } from "../../../domain/plan/shop.js";
import { languagesOfPlan } from "../../../domain/plan/translate/texts-of.js";
import { ok, type Result } from "../../../domain/problem.js";
import { utcDay } from "../../../domain/utc-day.js";
import { prepSessionsInSlices } from "../../answers/plan-prep-session.js";
import { publisherReader, resolveRegion } from "../../answers/resolve-region.js";
import { readToday } from "../../answers/scale-for-reader.js";
import { stateNutritionInSlices } from "../../answers/state-contents.js";
import type { Deps } from "../../deps.js";
import { rulesToday, type KnownRules } from "../../rules/find-rules.js";
import { runInSlices } from "../../time-slices.js";
import { foldText } from "../../../persistence/sql/fold-words.js";
import { listedContents, type ListedContents } from "./listed-contents.js";
import { listedCosts } from "./listed-costs.js";

/** A published plan at its own servings by what is known today, for readers who say nothing of themselves. */
interface ListedPlan {
  readonly scaled: ScaledPlan;
  readonly own: Household;
  readonly rules: KnownRules;
  readonly today: FoodsToday;
}

async function scaleForList(deps: Deps, bundle: PlanBundle): Promise<Result<ListedPlan>> {
  const rules = await rulesToday(deps);
  const own = await resolveRegion(noHousehold, [bundle], rules, publisherReader(deps));
  const today = await readToday(deps, [bundle], own, rules);
  const scaled = await runInSlices(deps, (work) => scalePlanInSlices(bundle, bundle.plan.serves, own, today, work));
  return scaled.ok ? ok({ scaled: scaled.value, own, rules, today }) : scaled;
}

/** All that a list finds a plan by, by the rules, foods and prices of today. Problems: those of computing it. */
export async function workOutFacts(deps: Deps, bundle: PlanBundle): Promise<Result<ListedFacts>> {
  const listed = await scaleForList(deps, bundle);
  return listed.ok ? ok(await runInSlices(deps, (work) => factsOf(deps, listed.value, work))) : listed;
}

/** Only what it contains, by the rules and foods of today. */
export async function workOutContents(deps: Deps, bundle: PlanBundle): Promise<Result<ListedContents>> {
  const listed = await scaleForList(deps, bundle);
  if (!listed.ok) return listed;
  const { scaled, own, rules } = listed.value;
  return ok(await runInSlices(deps, (work) => listedContents(scaled, own, rules, deps.clock, work)));
}

function* factsOf({ clock }: Deps, { scaled, own, rules, today }: ListedPlan, work: Work): InSlices<ListedFacts> {
  const { bundle } = scaled;
  const contents = yield* listedContents(scaled, own, rules, clock, work);
  const { days } = yield* prepSessionsInSlices(scaled, own, rules, work);
  const { lines } = yield* shopInSlices([scaled], own, today, work);
  const nutrition = yield* stateNutritionInSlices(scaled, own, work);
  const mealDays = bundle.plan.meals.map(({ day }) => day);
  return {
    ...contents,
    labels: [...contents.labels, ...labelsOf(scaled)],
    sessionMinutes: days.length === 0 ? null : Math.max(...days.map(({ session }) => session.totalMinutes)),
    handsOnMinutes: days.length === 0 ? null : days.reduce((sum, { session }) => sum + session.handsOnMinutes, 0),
    days: mealDays.length === 0 ? 0 : Math.max(...mealDays) - Math.min(...mealDays) + 1,
    servings: bundle.plan.serves,
    bought: [
      ...new Set(
        lines.flatMap(({ food, buy, toBuy }) => (buy.length > 0 || (toBuy?.high ?? 0) > 0 ? [food.slug] : [])),
      ),
    ],
    nutrients: listedNutrition(nutrition.plan),
    costs: yield* listedCosts(scaled, own, today, work),
    costsOf: utcDay(clock()),
  };
}

/** Of what is the same wherever the reader is. */
function labelsOf({ bundle, components, meals }: ScaledPlan): readonly string[] {
  const languages = languagesOfPlan(bundle).flatMap((tag) => [tag, tag.split("-")[0] ?? tag]);
  const steps = [
    ...components.flatMap(({ component, route }) => route?.steps ?? component.steps),
    ...meals.flatMap(({ meal }) => meal.steps),
  ];
  const facts = [
    ...languages.map(languageFact),
    ...(bundle.plan.tags ?? []).map((tag) => tagFact(foldText(tag))),
    ...steps.flatMap(({ appliance }) => (appliance === null ? [] : applianceFact(appliance))),
  ];
  return [...new Set(facts)].map(everywhere);
}
