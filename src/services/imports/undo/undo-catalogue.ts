import type { KnownCatalogueRow } from "../../../domain/model/catalogue-row.js";
import { ok } from "../../../domain/problem.js";
import { placedWeights, withWeights } from "../../../domain/component/revise-catalogue-row.js";
import type { Deps, ImportRun } from "../../deps.js";
import { noCounts, RunLost, type Loaded } from "../running-import.js";
import { measuresMoved, sameFacts } from "../../foods/compare-catalogue-rows.js";

/**
 * Takes back what a run did to the open food table, with the editions the rows stood in. A food that was changed since stays as
 * it is: in its facts, where the run brought facts, or in a weight that the run brought.
 */
export async function undoCatalogue(deps: Deps, run: ImportRun, undone: string, worker: string): Promise<Loaded> {
  return deps.data.transaction(async (data) => {
    await data.catalogue.lock();
    const changes = await data.importRuns.changes(undone);
    const now = await data.catalogue.byNumbers(changes.map(({ key }) => key));
    const back = changes.flatMap((change, at) => {
      const [is, was] = [now[at] ?? null, change.before as KnownCatalogueRow | null];
      const row = is === null ? undefined : undoneRow(is, was, change.after as KnownCatalogueRow);
      return row === undefined ? [] : [{ key: change.key, row }];
    });
    await data.catalogue.save(back.flatMap(({ row }) => row ?? []));
    await data.catalogue.remove(back.flatMap(({ key, row }) => (row === null ? [key] : [])));
    // What came back may be of an edition that the program has left behind since.
    if (back.length > 0) await data.catalogue.forgetHash();
    const counts = { ...noCounts, changed: back.length, unchanged: changes.length - back.length };
    const end = { state: "DONE", at: deps.clock(), problems: [], counts } as const;
    if (!(await data.importRuns.finish(run.id, worker, end))) throw new RunLost(run.id);
    return ok(counts);
  });
}

/** null: it goes; undefined: it was changed since, and stays. */
function undoneRow(
  is: KnownCatalogueRow,
  was: KnownCatalogueRow | null,
  left: KnownCatalogueRow,
): KnownCatalogueRow | null | undefined {
  if (was === null) return sameFacts(is, left) && measuresMoved(left, is).size === 0 ? null : undefined;
  const movedFacts = !sameFacts(was, left);
  const moved = measuresMoved(was, left);
  const since = measuresMoved(left, is);
  if ((movedFacts && !sameFacts(is, left)) || [...moved].some((measure) => since.has(measure))) return undefined;
  const weights = placedWeights(was);
  return withWeights(
    movedFacts ? was : is,
    since.size === 0
      ? weights
      : placedWeights(is).flatMap((weight) =>
          moved.has(weight.measure) ? weights.filter(({ measure }) => measure === weight.measure) : [weight],
        ),
  );
}
