import { Temporal } from "temporal-polyfill";
import type { Household } from "../../domain/model/household.js";
import { planStorageInSlices } from "../../domain/plan/plan-storage.js";
import type { ScaledPlan } from "../../domain/plan/scaled.js";
import type { KeepingQuestion, StorageAnswer } from "../../domain/storage/guidance.js";
import type { KeepingRules } from "../../domain/storage/rule.js";
import type { Clock, Deps } from "../deps.js";
import { findRules } from "../rules/find-rules.js";
import { runInSlices } from "../time-slices.js";
import { utcDay } from "../../domain/utc-day.js";

/** Reads the published keeping rules of an ISO date. Single ones may be superseded: those name the day they ended. */
export type RuleReader = (date: string) => Promise<KeepingRules>;

/** The keeping rules of the set of that day. */
export const findKeepingRules = async (deps: Deps, date: string): Promise<KeepingRules> =>
  (await findRules(deps, date)).safety;

/** What is asked of the keeping rules for one household: those of today, or of the session's day where that is later. */
export async function keepingQuestion(
  { session, region, regions }: Household,
  clock: Clock,
  readRules: RuleReader,
): Promise<KeepingQuestion> {
  const today = utcDay(clock());
  const sessionDay =
    session === null
      ? today
      : Temporal.Instant.from(session.start).toZonedDateTimeISO(session.zone).toPlainDate().toString();
  const { keeping: rules, classes } = await readRules(sessionDay > today ? sessionDay : today);
  return { rules, classes, region, ...(regions && { regions }), today, session };
}

/** How long everything of a scaled plan keeps for one household. */
export async function guideStorage(
  scaled: ScaledPlan,
  household: Household,
  deps: Pick<Deps, "clock" | "work">,
  readRules: RuleReader,
): Promise<StorageAnswer> {
  const question = await keepingQuestion(household, deps.clock, readRules);
  return runInSlices(deps, (work) => planStorageInSlices(scaled, question, work));
}
