import type { Food } from "../../../domain/model/food.js";
import { failed, ok } from "../../../domain/problem.js";
import { checksumOf } from "../../../persistence/sql/canonical-json.js";
import type { Feed, ImportRun } from "../../../persistence/imports/import-data.js";
import { undoCatalogue } from "./undo-catalogue.js";
import { undoDrafts } from "./undo-drafts.js";
import type { Deps } from "../../deps.js";
import { noCounts, RunLost, type Loaded } from "../running-import.js";

/**
 * Takes back what a run did. What somebody changed since stays as it is now, and is counted among the unchanged: an undo never
 * throws a later change away.
 */
export async function undoRun(deps: Deps, run: ImportRun, feed: Feed, worker: string): Promise<Loaded> {
  const undone = run.undoes === null ? null : await deps.data.importRuns.byId(run.undoes);
  if (undone === null || undone.feed !== feed.id || undone.kind !== "LOAD" || undone.state !== "DONE") {
    return failed([
      { code: "BAD_SHAPE", path: ["run"], expected: "a run of this feed that loaded something", got: "another" },
    ]);
  }
  if (feed.kind === "PRICES" && feed.publisher === null) {
    const done = await deps.data.listedPacks.undo(run.id, feed.id, undone.id, worker, deps.clock());
    if (done === null) throw new RunLost(run.id);
    return ok(done);
  }
  if (feed.kind === "CATALOGUE") return undoCatalogue(deps, run, undone.id, worker);
  if (feed.kind !== "FOODS") return undoDrafts(deps, run, feed, undone.id, worker);
  return undoFoods(deps, run, undone.id, worker);
}

async function undoFoods(deps: Deps, run: ImportRun, undone: string, worker: string): Promise<Loaded> {
  return deps.data.transaction(async (data) => {
    const changes = await data.importRuns.changes(undone);
    const now = await data.foods.bySlugs(changes.map(({ key }) => key));
    const isAsLeft = (at: number): boolean => {
      const food = now[at] ?? null;
      return (
        food !== null &&
        checksumOf({ ...food, packs: [] }) === checksumOf({ ...(changes[at]?.after as Food), packs: [] })
      );
    };
    const back = changes.filter((_, at) => isAsLeft(at));
    await data.foods.save(back.flatMap(({ before }) => (before === null ? [] : [before as Food])));
    await data.foods.remove(back.flatMap(({ key, before }) => (before === null ? [key] : [])));
    const counts = { ...noCounts, changed: back.length, unchanged: changes.length - back.length };
    const end = { state: "DONE", at: deps.clock(), problems: [], counts } as const;
    if (!(await data.importRuns.finish(run.id, worker, end))) throw new RunLost(run.id);
    return ok(counts);
  });
}
