import { WorkStopped } from "../domain/work.js";
import { withinRequest } from "../persistence/request-scope.js";
import type { Pace, Paced } from "./pace.js";

interface Hurried extends Paced {
  /** Left out: computing is not cut into turns, and only what waits can be ended. */
  readonly pace?: Pace;
}

/**
 * What the work comes to; ENDED, if it takes longer than so many milliseconds, or if whoever asked goes before. Its statements are
 * cancelled then, where the database can do so, its computing stops at its next step, and what it still comes to is nobody's.
 *
 * @param work is given the same tools, which know the time of the request
 */
export async function withinTime<Tools extends Hurried, T>(
  tools: Tools,
  milliseconds: number,
  gone: AbortSignal | null,
  work: (tools: Tools, over: AbortSignal) => Promise<T>,
): Promise<T | "ENDED"> {
  // Not AbortSignal.any: one that is listened to and never aborts is kept by Node for ever, with all that its listeners hold.
  const ending = new AbortController();
  const end = (): void => ending.abort();
  const timer = setTimeout(end, milliseconds);
  gone?.addEventListener("abort", end, { once: true });
  if (gone?.aborted === true) end();
  const over = ending.signal;
  const ended = new Promise<"ENDED">((resolve) => {
    if (over.aborted) resolve("ENDED");
    over.addEventListener("abort", () => resolve("ENDED"), { once: true });
  });
  const { pace } = tools;
  const own = pace === undefined ? tools : { ...tools, work: pace.begin(milliseconds, over, end) };
  const working = withinRequest(over, () => work(own, over));
  // Nobody waits for it once it has ended.
  working.catch(() => undefined);
  try {
    return await Promise.race([working, ended]);
  } catch (error) {
    if (error instanceof WorkStopped && over.aborted) return "ENDED";
    throw error;
  } finally {
    clearTimeout(timer);
    gone?.removeEventListener("abort", end);
  }
}
