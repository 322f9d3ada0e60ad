import { WorkStopped } from "../domain/counted-work.js";
import { withinRequest } from "../persistence/database/request-scope.js";
import type { TimeSlicer, Sliced } from "./time-slices.js";

export interface TimeLimited extends Sliced {
  /** Left out: computing is not sliced, and only what waits can be ended. */
  readonly slicer?: TimeSlicer;
}

/**
 * The time of one request. Once it is over, statements are cancelled, where the database can do so, computing stops at its next
 * step, and what the work still comes to is nobody's.
 */
export interface TimeLimit {
  readonly over: AbortSignal;
  /**
   * From now on it has so many milliseconds, and ends before if whoever asked goes; null: that does not matter. To be called once.
   *
   * @returns the same tools, which know the time of the request
   */
  begin<Tools extends TimeLimited>(tools: Tools, milliseconds: number, gone: AbortSignal | null): Tools;
  /** What the work comes to; ENDED, if its time is over before. */
  hold<T>(work: () => Promise<T>): Promise<T | "ENDED">;
}

/** A limit that does not run yet: what is asked, and so how long it may take, may be found out within it. */
export function openTimeLimit(): TimeLimit {
  // Not AbortSignal.any: one that is listened to and never aborts is kept by Node for ever, with all that its listeners hold.
  const ending = new AbortController();
  const end = (): void => ending.abort();
  const over = ending.signal;
  let stop = (): void => undefined;
  return {
    over,
    begin: (tools, milliseconds, gone) => {
      const timer = setTimeout(end, milliseconds);
      gone?.addEventListener("abort", end, { once: true });
      if (gone?.aborted === true) end();
      stop = () => {
        clearTimeout(timer);
        gone?.removeEventListener("abort", end);
      };
      const { slicer } = tools;
      return slicer === undefined ? tools : { ...tools, work: slicer.begin(milliseconds, over, end) };
    },
    hold: async (work) => {
      const ended = new Promise<"ENDED">((resolve) => {
        if (over.aborted) resolve("ENDED");
        over.addEventListener("abort", () => resolve("ENDED"), { once: true });
      });
      const working = withinRequest(over, work);
      // Nobody waits for it once it has ended.
      working.catch(() => undefined);
      try {
        return await Promise.race([working, ended]);
      } catch (error) {
        if (error instanceof WorkStopped && over.aborted) return "ENDED";
        throw error;
      } finally {
        stop();
      }
    },
  };
}
