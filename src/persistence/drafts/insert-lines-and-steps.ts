import type { Step } from "../../domain/model/component.js";
import type { Line } from "../../domain/model/line.js";
import { lineRows, stepRows, type Owner } from "./draft-rows.js";
import type { Db } from "../database/session.js";

/** The lines and steps of a component, a route or a meal. */
export interface LinesAndSteps {
  readonly owner: Owner;
  readonly lines: readonly Line[];
  readonly steps: readonly Step[];
}

/** Three statements at most, however many lines and steps. */
export async function insertLinesAndSteps(db: Db, work: readonly LinesAndSteps[]): Promise<void> {
  const rows = work.map(({ owner, lines }) => lineRows(owner, lines));
  const lines = rows.flatMap((each) => each.lines);
  const swaps = rows.flatMap((each) => each.swaps);
  const steps = work.flatMap((each) => stepRows(each.owner, each.steps));
  if (lines.length > 0) await db.draftLine.createMany({ data: lines });
  if (swaps.length > 0) await db.draftSwap.createMany({ data: swaps });
  if (steps.length > 0) await db.draftStep.createMany({ data: steps });
}
