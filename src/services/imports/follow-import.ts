import { failed, ok, type Result } from "../../domain/problem.js";
import type { Actor } from "../access/actor.js";
import type { Deps } from "../deps.js";
import { signalsOf } from "../plans/change-signals.js";
import { findImport, type FoundImport } from "./find-imports.js";

/**
 * An import as it is, and again each time its progress is different, until it has ended. Who takes long over one state is told of the
 * newest next.
 *
 * @throws NotAllowed where the actor may import nothing
 */
export async function followImport(
  deps: Deps,
  { actor, id, over }: { readonly actor: Actor; readonly id: string; readonly over: AbortSignal },
): Promise<Result<AsyncGenerator<FoundImport, void, undefined>>> {
  const first = await findImport(deps, actor, id);
  return first === null ? failed([{ code: "UNKNOWN_RUN", path: ["id"], run: id }]) : ok(states(deps, first, over));
}

async function* states(
  deps: Deps,
  first: FoundImport,
  over: AbortSignal,
): AsyncGenerator<FoundImport, void, undefined> {
  const { feed, run } = first;
  yield first;
  if (run.endedAt !== null) return;
  let told = JSON.stringify(run);
  const newest: { found: Promise<FoundImport["run"] | null> | null } = { found: null };
  let go = (): void => undefined;
  const stop = signalsOf(deps).polls.watch(
    `import ${run.id}`,
    () => deps.data.importRuns.byId(run.id),
    (found) => {
      newest.found = found;
      // Whoever waits hears what went wrong.
      found.then(
        () => go(),
        () => go(),
      );
    },
  );
  const wake = (): void => go();
  over.addEventListener("abort", wake, { once: true });
  try {
    while (!over.aborted) {
      if (newest.found === null) await new Promise<void>((resolve) => (go = resolve));
      const found = await newest.found;
      newest.found = null;
      if (over.aborted) return;
      // Its feed was removed, and all its imports.
      if (found === null) return;
      const now = JSON.stringify(found);
      if (now !== told) {
        told = now;
        yield { feed, run: found };
      }
      if (found.endedAt !== null) return;
    }
  } finally {
    stop();
    over.removeEventListener("abort", wake);
  }
}
