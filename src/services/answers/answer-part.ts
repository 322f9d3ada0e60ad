import { shopInSlices } from "../../domain/plan/shop.js";
import { servingsTableInSlices, type ServingsRow } from "../../domain/plan/servings-table.js";
import { ok, type Result } from "../../domain/problem.js";
import type { StorageAnswer } from "../../domain/storage/guidance.js";
import type { ListsAnswer } from "./answer-lists.js";
import type { Deps, RevisionRef } from "../deps.js";
import { findKeepingRules, guideStorage } from "./guide-storage.js";
import { loadPlan } from "../plans/load-plan.js";
import { runInSlices } from "../time-slices.js";
import { prepSessionsInSlices, type PrepSessions } from "./plan-prep-session.js";
import type { GivenHousehold } from "./read-household.js";
import { inStage } from "../answer-stage.js";
import { readAskedHousehold, scaleForReader, type Asked, type ScaledForReader } from "./scale-for-reader.js";

/** One part of what is said about a plan, computed without the others. null: there is no such plan. */
async function partOf<T>(
  deps: Deps,
  ref: RevisionRef,
  asked: Asked,
  compute: (scaled: ScaledForReader) => Promise<Result<T>> | Result<T>,
): Promise<Result<ScaledForReader & T> | null> {
  const published = await loadPlan(deps, ref);
  if (published === null) return null;
  const read = await scaleForReader(deps, published, asked);
  if (!read.ok) return read;
  const part = await compute(read.value);
  return part.ok ? ok({ ...read.value, ...part.value }) : part;
}

/** The shopping list of one plan. */
export const answerList = (deps: Deps, ref: RevisionRef, asked: Asked): Promise<Result<ListsAnswer> | null> =>
  partOf(deps, ref, asked, async ({ publication, scaled, household, reader, today }) =>
    ok({
      plans: [{ bundle: scaled.bundle, revision: publication.revision, servings: scaled.servings }],
      list: await inStage(deps, "shop", () =>
        runInSlices(deps, (work) => shopInSlices([scaled], household, today, work)),
      ),
      reader,
    }),
  );

/** The order of the work, in one session or several; no days where the steps fit no order. */
export const answerSession = (
  deps: Deps,
  ref: RevisionRef,
  asked: Asked,
): Promise<Result<ScaledForReader & PrepSessions> | null> =>
  partOf(deps, ref, asked, async ({ scaled, household, rules }) =>
    ok(
      await inStage(deps, "schedule", () =>
        runInSlices(deps, (work) => prepSessionsInSlices(scaled, household, rules, work)),
      ),
    ),
  );

/** How long everything keeps. */
export const answerStorage = (
  deps: Deps,
  ref: RevisionRef,
  asked: Asked,
): Promise<Result<ScaledForReader & { readonly storage: StorageAnswer }> | null> =>
  partOf(deps, ref, asked, async ({ scaled, household }) =>
    ok({ storage: await guideStorage(scaled, household, deps, (date) => findKeepingRules(deps, date)) }),
  );

/** What the plan costs and leaves over at every number of servings of a range. */
export async function answerServings(
  deps: Deps,
  ref: RevisionRef,
  asked: { readonly from: number; readonly to: number; readonly household: GivenHousehold },
): Promise<Result<readonly ServingsRow[]> | null> {
  const published = await loadPlan(deps, ref);
  if (published === null) return null;
  const { bundle } = published;
  const read = await readAskedHousehold(deps, { bundle, servings: null }, asked.household);
  if (!read.ok) return read;
  const { household, today } = read.value;
  return runInSlices(deps, (work) => servingsTableInSlices(bundle, asked.from, asked.to, household, today, work));
}
