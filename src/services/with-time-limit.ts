import { openTimeLimit, type TimeLimited } from "./time-limit.js";
import type { Ended } from "./time-slices.js";

/**
 * What the work comes to; ENDED, if it takes longer than so many milliseconds, or if whoever asked goes before; TOO_MUCH, if it holds more than one
 * request may. Its statements are
 * cancelled then, where the database can do so, its computing stops at its next step, and what it still comes to is nobody's.
 *
 * @param work is given the same tools, which know the time of the request
 */
export function withTimeLimit<Tools extends TimeLimited, T>(
  tools: Tools,
  milliseconds: number,
  gone: AbortSignal | null,
  work: (tools: Tools, over: AbortSignal) => Promise<T>,
): Promise<T | Ended> {
  const limit = openTimeLimit();
  const own = limit.begin(tools, milliseconds, gone);
  return limit.hold(() => work(own, limit.over));
}
