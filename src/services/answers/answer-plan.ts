import type { PlanAnswer } from "../../domain/plan/plan-answer.js";
import { shopInSlices } from "../../domain/plan/shop.js";
import { ok, type Result } from "../../domain/problem.js";
import type { Deps, PublishedRevision, RevisionRef } from "../deps.js";
import { findKeepingRules, guideStorage } from "./guide-storage.js";
import { loadPlan } from "../plans/load-plan.js";
import { runInSlices } from "../time-slices.js";
import { prepSessionsInSlices } from "./plan-prep-session.js";
import { scaleForReader, type Asked } from "./scale-for-reader.js";
import { inStage } from "../answer-stage.js";
import { stateContentsInSlices, findCautionsInSlices, stateNutritionInSlices } from "./state-contents.js";
import { rulesInLanguage } from "../../exports/sentences/rules-in-language.js";

export type { PlanAnswer } from "../../domain/plan/plan-answer.js";
export type { Asked } from "./scale-for-reader.js";

/** Everything about one published plan for one household; null: there is none of that name or number. */
export async function answerPlan(deps: Deps, ref: RevisionRef, asked: Asked): Promise<Result<PlanAnswer> | null> {
  const published = await loadPlan(deps, ref);
  return published === null ? null : answerFor(deps, published, asked);
}

/** The same for a revision that is loaded already. */
export async function answerFor(deps: Deps, published: PublishedRevision, asked: Asked): Promise<Result<PlanAnswer>> {
  const read = await scaleForReader(deps, published, asked);
  if (!read.ok) return read;
  const { publication, household, reader, rules, scaled, today } = read.value;
  const { whole: session, days } = await inStage(deps, "schedule", () =>
    runInSlices(deps, (work) => prepSessionsInSlices(scaled, household, rules, work)),
  );
  const answer: PlanAnswer = {
    publication,
    household,
    reader,
    scaled,
    list: await inStage(deps, "shop", () =>
      runInSlices(deps, (work) => shopInSlices([scaled], household, today, work)),
    ),
    session: session.ok ? session.value : null,
    sessionProblems: session.ok ? [] : session.problems,
    sessions: days,
    storage: await guideStorage(scaled, household, deps, (date) => findKeepingRules(deps, date)),
    contents: await runInSlices(deps, (work) => stateContentsInSlices(scaled, household, rules, deps.clock, work)),
    nutrition: await runInSlices(deps, (work) => stateNutritionInSlices(scaled, household, work)),
    cautions: await runInSlices(deps, (work) => findCautionsInSlices(scaled, household, rules, work)),
  };
  return ok(rulesInLanguage(answer));
}
