import { AnswerTooLarge, tooMuchAtOnce } from "../http/answer-size.js";
import type { Deps } from "../services/deps.js";
import { withTimeLimit } from "../services/with-time-limit.js";

/** The time of a request is over. It is answered with 504, in the form that errors have on its route. */
export class TimeLimitExceeded extends Error {
  override readonly name = "TimeLimitExceeded";
  readonly statusCode = 504;

  constructor() {
    super("This took too long and was stopped. Request less, or try again later.");
  }
}

/**
 * What the work comes to. It is ended, with its statements, when it takes longer than so many milliseconds, or when whoever asked has
 * gone; null: that does not matter.
 *
 * @throws TimeLimitExceeded, AnswerTooLarge
 */
export async function answerWithTimeLimit<T>(
  deps: Deps,
  milliseconds: number,
  gone: AbortSignal | null,
  work: (deps: Deps, over: AbortSignal) => Promise<T>,
): Promise<T> {
  const answer = await withTimeLimit(deps, milliseconds, gone, work);
  if (answer === "ENDED") throw new TimeLimitExceeded();
  if (answer === "TOO_MUCH") throw new AnswerTooLarge(tooMuchAtOnce);
  return answer;
}
