import { WorkStopped } from "../domain/counted-work.js";
import { withinRequest } from "../persistence/database/request-scope.js";
import type { Ended, TimeSlicer, Sliced } from "./time-slices.js";

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
  /** What the work comes to; or why it was ended before. */
  hold<T>(work: () => Promise<T>): Promise<T | Ended>;
}

/** A limit that does not run yet: what is asked, and so how long it may take, may be found out within it. */
export function openTimeLimit(): TimeLimit {
  // Not AbortSignal.any: one that is listened to and never aborts is kept by Node for ever, with all that its listeners hold.
  const ending = new AbortController();
  let why: Ended = "ENDED";
  const end = (because: Ended): void => {
    if (!ending.signal.aborted) why = because;
    ending.abort();
  };
  const timeIsOver = (): void => end("ENDED");
  const over = ending.signal;
  let stop = (): void => undefined;
  return {
    over,
    begin: (tools, milliseconds, gone) => {
      const timer = setTimeout(timeIsOver, milliseconds);
      gone?.addEventListener("abort", timeIsOver, { once: true });
      if (gone?.aborted === true) timeIsOver();
      stop = () => {
        clearTimeout(timer);
        gone?.removeEventListener("abort", timeIsOver);
      };
      const { slicer } = tools;
      return slicer === undefined ? tools : { ...tools, work: slicer.begin(milliseconds, over, end) };
    },
    hold: async (work) => {
      const ended = new Promise<Ended>((resolve) => {
        if (over.aborted) resolve(why);
        over.addEventListener("abort", () => resolve(why), { once: true });
      });
      const working = withinRequest(over, work);
      // Nobody waits for it once it has ended.
      working.catch(() => undefined);
      try {
        return await Promise.race([working, ended]);
      } catch (error) {
        if (error instanceof WorkStopped && over.aborted) return why;
        throw error;
      } finally {
        stop();
      }
    },
  };
}
