import type { Deps } from "../deps.js";
import type { Place } from "./generations.js";
import type { Memory } from "./cache.js";
import { watchDeps } from "./tracked-deps.js";

type AnswerShelf = "restAnswers" | "graphqlAnswers";

/** What was computed, and whether it may be given to others who ask the same. */
export interface Computed<Answer> {
  readonly answer: Answer;
  /** Roughly, of what is kept; null: it is for the one who asked. */
  readonly bytes: number | null;
}

interface Kept {
  readonly answer: unknown;
  readonly places: readonly Place[];
  readonly since: number;
  /** The milliseconds it holds for by the clock; null: it did not look at the clock. */
  readonly day: { readonly from: number; readonly until: number } | null;
}

const day = 86_400_000;

/** Where an answer is kept. Making it anew for each request costs as much as looking there. */
export interface AnswerPlace {
  readonly shelf: AnswerShelf;
  readonly key: string;
}

/** @param question names it with all that is asked; who asks is not in it */
export const answerPlace = (shelf: AnswerShelf, question: string): AnswerPlace => ({
  shelf,
  key: `${shelf} ${question}`,
});

/** A ready answer that still holds, or undefined. */
export function knownAnswer(memory: Memory, { shelf, key }: AnswerPlace, deps: Pick<Deps, "clock">): unknown {
  const kept = memory.cache.get(key) as Kept | undefined;
  if (kept === undefined || !memory.generations.hold(kept.places, kept.since)) return undefined;
  if (kept.day !== null) {
    const now = deps.clock().getTime();
    if (now < kept.day.from || now >= kept.day.until) return undefined;
  }
  memory.counts[shelf].hits += 1;
  return kept.answer;
}

/**
 * The answer to a question of anyone: kept, or computed and then kept as long as nothing changes that it was computed from.
 * Everything must be read through the `deps` that `compute` is given. Of several who ask the same at once, one computes.
 */
export async function rememberAnswer<Answer>(
  memory: Memory,
  place: AnswerPlace,
  deps: Deps,
  compute: (deps: Deps) => Promise<Computed<Answer>>,
): Promise<Answer> {
  const known = knownAnswer(memory, place, deps);
  if (known !== undefined) return known as Answer;
  const { generations, underWay } = memory;
  const { shelf, key } = place;
  const since = generations.now();
  const other = underWay.get(key);
  if (other?.since === since && generations.isListening()) {
    const computed = (await other.done) as Computed<Answer>;
    if (computed.bytes !== null) {
      memory.counts[shelf].hits += 1;
      return computed.answer;
    }
  }
  memory.counts[shelf].misses += 1;
  const done = computeAndKeep(memory, key, since, deps, compute);
  underWay.set(key, { since, done });
  try {
    return (await done).answer;
  } finally {
    if (underWay.get(key)?.done === done) underWay.delete(key);
  }
}

async function computeAndKeep<Answer>(
  { cache, generations }: Memory,
  key: string,
  since: number,
  deps: Deps,
  compute: (deps: Deps) => Promise<Computed<Answer>>,
): Promise<Computed<Answer>> {
  const watched = watchDeps(deps, generations);
  const begun = deps.clock().getTime();
  const computed = await compute(watched.deps);
  const { places, usedClock, isPrivate } = watched.noted;
  if (isPrivate) return { ...computed, bytes: null };
  if (computed.bytes === null) return computed;
  const from = begun - (((begun % day) + day) % day);
  const isOneDay = deps.clock().getTime() < from + day;
  const kept: Kept = {
    answer: computed.answer,
    places: [...places],
    since,
    day: usedClock ? { from, until: from + day } : null,
  };
  if (generations.hold(kept.places, since) && (isOneDay || !usedClock)) cache.set(key, kept, computed.bytes);
  return computed;
}
