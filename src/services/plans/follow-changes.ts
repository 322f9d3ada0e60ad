import { beginningOfChanges } from "../../persistence/plans/changes.js";
import type { Deps } from "../deps.js";
import { signalsOf } from "./change-signals.js";

/** What was read of the list of changes. */
interface ReadChanges {
  /** Position of the last one; null: there was none. */
  readonly end: string | null;
  readonly hasNext: boolean;
}

interface FollowedChanges<Read extends ReadChanges> {
  /** Slug; null: of all publishers. */
  readonly publisher: string | null;
  /** Position after which it begins. */
  readonly after: string;
  /** Reads from the primary, because a replica may lack the change that was heard. */
  read(after: string): Promise<Read>;
  readonly over: AbortSignal;
}

/** The position of the newest change, or where there is none the one before the first. */
export async function newestPosition({ data }: Pick<Deps, "data">): Promise<string> {
  const { items } = await data.changes.page(null, { first: null, after: null, last: 1, before: null });
  return items[0]?.cursor ?? beginningOfChanges;
}

/**
 * The changes after a position: those there are, and each new one when it is committed, by whatever process. Nothing is read while
 * there is nothing new, nor while whoever reads has not taken what was read before.
 */
export async function* followChanges<Read extends ReadChanges>(
  deps: Pick<Deps, "signals">,
  { publisher, after, read, over }: FollowedChanges<Read>,
): AsyncGenerator<Read, void, undefined> {
  let isNew = true;
  let go = (): void => undefined;
  const wake = (): void => {
    isNew = true;
    go();
  };
  const stop = signalsOf(deps).onChange(publisher, wake);
  over.addEventListener("abort", wake, { once: true });
  try {
    let position = after;
    while (!over.aborted) {
      isNew = false;
      const found = await read(position);
      if (found.end !== null) {
        position = found.end;
        yield found;
      }
      if (found.hasNext) continue;
      // What was heard while it was read, or while it was taken, is looked for at once.
      if (!isNew && !over.aborted) await new Promise<void>((resolve) => (go = resolve));
    }
  } finally {
    stop();
    over.removeEventListener("abort", wake);
  }
}
