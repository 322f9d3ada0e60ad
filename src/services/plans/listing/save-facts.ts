import type { PlanBundle } from "../../../domain/model/plan.js";
import { searchedTexts } from "../../../domain/plan/listing/searched-texts.js";
import type { Deps } from "../../deps.js";
import { findPublishers } from "../../access/find-publishers.js";
import { rulesToday } from "../../rules/find-rules.js";
import { foodsOf, readKnown } from "./known-by.js";
import { workOutFacts } from "./work-out-facts.js";

interface PlanInForce {
  readonly revisionId: string;
  /** How often its facts were asked for, as it was found. */
  readonly due: number;
}

/** Works out what lists find a plan by and stores it. A plan that cannot be computed is found as it was before, until something changes. */
export async function saveFacts(deps: Deps, plan: PlanInForce, bundle: PlanBundle): Promise<void> {
  const { data, clock, log } = deps;
  const foods = foodsOf(bundle);
  // Before all else: what changes meanwhile makes it differ.
  const known = await readKnown(deps, await rulesToday(deps), foods);
  const [publisher = null] = await findPublishers(deps, [bundle.plan.publisher]);
  const facts = await workOutFacts(deps, bundle);
  if (!facts.ok) {
    log.warn(
      { revision: plan.revisionId, problems: facts.problems },
      "a plan is in no list by its facts: it cannot be computed",
    );
    return data.planFacts.giveUp(plan);
  }
  const stored = { ...facts.value, foods, knownBy: known.checksum(foods, publisher) };
  await data.planFacts.save(plan.revisionId, stored, searchedTexts(bundle), clock(), plan.due);
}
