/** The most that is sent for one request, in bytes. Several times what the largest plan with all that is known of it takes. */
export const mostAnswerBytes = 4_000_000;

const tooManyBytes =
  "The answer would be larger than 4 MB. Request less: one part of a plan, fewer plans, shorter pages, a shorter household, or several requests.";

/** What is computed for one request at a time has a limit, however little of it is sent. */
export const tooMuchAtOnce =
  "This is more than is computed for one request. Request less: fewer plans, shorter pages, fewer aliases, or several requests.";

/** What was asked would be answered with more than anybody reads. Asking for less helps. */
export class AnswerTooLarge extends Error {
  override readonly name = "AnswerTooLarge";
  readonly statusCode = 422;

  constructor(message = tooManyBytes) {
    super(message);
  }
}

/** The text as bytes. @throws AnswerTooLarge */
export function boundedBytes(text: string, most = mostAnswerBytes): Buffer {
  // A text has no more characters than bytes, so one that is far too long is never copied.
  if (text.length > most) throw new AnswerTooLarge();
  const bytes = Buffer.from(text);
  if (bytes.length > most) throw new AnswerTooLarge();
  return bytes;
}
