import type { Household } from "../../../domain/model/household.js";
import type { PlanBundle } from "../../../domain/model/plan.js";
import type { AskedPortion, ofPortion } from "../../../domain/plan/check/check-asked.js";
import type { FoodsToday } from "../../../domain/plan/review/foods-today.js";
import { ok, type Result } from "../../../domain/problem.js";
import type { GivenHousehold } from "../../../services/answers/read-household.js";
import { foodCatalogue, readReadersHousehold } from "../../../services/answers/read-readers-household.js";
import { noHousehold, resolveRegion } from "../../../services/answers/resolve-region.js";
import type { Deps } from "../../../services/deps.js";
import type { KnownRules } from "../../../services/rules/find-rules.js";
import type { Loaders } from "../../loaders.js";

interface ReadersSide {
  readonly household: Household;
  /** In force today. */
  readonly rules: KnownRules;
  readonly today: FoodsToday;
}

/** A household as plans are computed for it, with the rules and foods of today. Problems: those of `readReadersHousehold`. */
export async function readersSide(
  deps: Deps,
  loaders: Loaders,
  portions: readonly AskedPortion[],
  given: GivenHousehold,
  placed?: typeof ofPortion,
): Promise<Result<ReadersSide>> {
  const bundles = portions.map(({ bundle }) => bundle);
  const rules = await loaders.rulesToday();
  const { diets } = rules.allergens;
  const read = await readReadersHousehold(given, portions, diets, foodCatalogue(deps, loaders.readFoods), deps, placed);
  if (!read.ok) return read;
  const household = await resolveRegion(read.value, bundles, rules, loaders.readPublishers);
  return ok({ household, rules, today: await loaders.today(bundles, household) });
}

/** The same where no reader asks: the rules of today, where the plans hold. */
export async function anybodysSide(
  loaders: Loaders,
  bundles: readonly PlanBundle[],
): Promise<Pick<ReadersSide, "household" | "rules">> {
  const rules = await loaders.rulesToday();
  return { household: await resolveRegion(noHousehold, bundles, rules, loaders.readPublishers), rules };
}
