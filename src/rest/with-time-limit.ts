import type { Deps } from "../services/deps.js";
import { withinTime } from "../services/with-time-limit.js";

/** The time of a request is over. It is answered with 504, in the form that errors have on its route. */
export class TookTooLong extends Error {
  override readonly name = "TookTooLong";
  readonly statusCode = 504;

  constructor() {
    super("This took too long and was ended. Ask for less, or again later.");
  }
}

/**
 * What the work comes to. It is ended, with its statements, when it takes longer than so many milliseconds, or when whoever asked has
 * gone; null: that does not matter.
 *
 * @throws TookTooLong
 */
export async function answerInTime<T>(
  deps: Deps,
  milliseconds: number,
  gone: AbortSignal | null,
  work: (deps: Deps, over: AbortSignal) => Promise<T>,
): Promise<T> {
  const answer = await withinTime(deps, milliseconds, gone, work);
  if (answer === "ENDED") throw new TookTooLong();
  return answer;
}
