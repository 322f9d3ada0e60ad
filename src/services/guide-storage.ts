import { Temporal } from "temporal-polyfill";
import type { Household } from "../domain/model/household.js";
import type { PublishedKeepingRule } from "../domain/model/keeping.js";
import type { ScaledPlan } from "../domain/plan/scaled.js";
import type { StorageAnswer } from "../domain/storage/guidance.js";
import { storageGuidance } from "../domain/storage/storage-guidance.js";
import type { Clock, Deps } from "./deps.js";

/** Reads the published rules in force on an ISO date. */
export type RuleReader = (date: string) => Promise<readonly PublishedKeepingRule[]>;

/** The rules in force, from the database. */
export const findKeepingRules = (deps: Deps, date: string): Promise<readonly PublishedKeepingRule[]> =>
  deps.data.keepingRules.inForce(date);

/** How long everything of a scaled plan keeps for one household, by the rules of today or of the session's later day. */
export async function guideStorage(
  scaled: ScaledPlan,
  household: Household,
  clock: Clock,
  readRules: RuleReader,
): Promise<StorageAnswer> {
  const today = clock().toISOString().slice(0, 10);
  const { session, region } = household;
  const sessionDay =
    session === null
      ? today
      : Temporal.Instant.from(session.start).toZonedDateTimeISO(session.zone).toPlainDate().toString();
  const rules = await readRules(sessionDay > today ? sessionDay : today);
  const { components, meals, bundle } = scaled;
  return storageGuidance({ components, meals, foods: bundle.foods }, { rules, region, today, session });
}
