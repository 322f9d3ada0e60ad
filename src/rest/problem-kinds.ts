/** What an answer that is no answer is about. The name is the end of its `type`, and the address of its page. */
export const problemKinds = {
  "bad-request": {
    status: 400,
    title: "The request cannot be read",
    help: "The address, a header or the body is not what HTTP and JSON allow. `detail` says which.",
  },
  "bad-parameters": {
    status: 400,
    title: "A parameter is wrong",
    help:
      "`problems` lists every parameter that is wrong: `path` begins with its name, and `message` says what to write instead." +
      " Nothing was computed. Unknown parameters are rejected too, so that a misspelt one is never ignored.",
  },
  unauthenticated: {
    status: 401,
    title: "The access token is missing or invalid",
    help:
      "Send it as `Authorization: Bearer` and the token. `detail` says what is wrong: it was not copied whole, is unknown, was" +
      " revoked, or has expired. What is published can be read without one.",
  },
  forbidden: {
    status: 403,
    title: "This access token may not do that",
    help: "`detail` names the scope it needs. What belongs to another publisher looks as if it did not exist.",
  },
  "not-found": {
    status: 404,
    title: "There is nothing at this address",
    help:
      "Check both slugs and the number. A withdrawn revision is still found by its number. An ending such as `.md` is part of" +
      " the address: there is nothing where a thing cannot be had in that form.",
  },
  withdrawn: {
    status: 410,
    title: "The plan was withdrawn",
    help:
      "Its publisher took it back as a whole. `problems` says when, and the reason given. Each revision is still found by its number," +
      " as `?revision=2`: do not begin with one.",
  },
  removed: {
    status: 410,
    title: "It was removed",
    help: "Its publisher took it away for good. Plans that showed it are shown without it.",
  },
  "method-not-allowed": {
    status: 405,
    title: "This address does not support that method",
    help: "The header `Allow` lists the supported methods.",
  },
  "not-acceptable": {
    status: 406,
    title: "No accepted media type is available",
    help: "`available` lists the media types. Ask for one of them in `Accept`, or by the ending of the address.",
  },
  "too-slow": {
    status: 408,
    title: "The request did not arrive in time",
    help: "A body has half a minute to arrive, a file for a feed or a picture ten minutes. Send it again over a new connection.",
  },
  "address-too-long": {
    status: 414,
    title: "The address is too long",
    help: "A part of a path has at most 200 characters. Send long questions by POST where that is taken.",
  },
  "head-too-large": {
    status: 431,
    title: "The address and the headers are too large",
    help: "They have room for 16 kilobytes together. Send long questions by POST where that is taken.",
  },
  "too-large": {
    status: 413,
    title: "The body is too large",
    help: "Bodies are read up to one megabyte, and files for feeds and pictures up to the size that `detail` names.",
  },
  "unsupported-media-type": {
    status: 415,
    title: "The media type of the body is not supported",
    help: "Send it as `application/json` in UTF-8.",
  },
  "not-processable": {
    status: 422,
    title: "Something in the body is wrong",
    help: "`problems` lists everything that is wrong: `path` is the place in the body, and `message` says what to write instead.",
  },
  "no-session": {
    status: 422,
    title: "No order of the work is possible",
    help:
      "What was asked is right, and no order of the steps keeps all their waits, in one session or divided over days. `problems`" +
      " names the steps that stand in each other's way. Ask for fewer servings, for another kitchen with `cooks` or `appliance`, or" +
      " have one of the things on hand. All the rest of the plan can be had at its own address.",
  },
  "answer-too-large": {
    status: 422,
    title: "The answer would be too large",
    help:
      "Answers have at most 4 MB. Ask for less: one part of a plan (its list, its session, how it keeps) and not all of it, fewer plans" +
      " in a list, shorter pages, a shorter household, or in several requests.",
  },
  "quota-exceeded": {
    status: 429,
    title: "The rate limit was exceeded",
    help:
      "Wait as long as the header `Retry-After` says. `RateLimit-Policy` names the budget in points a minute, and `RateLimit` what" +
      " is left of it. With an access token the token is charged and not the address. An answer may be kept as long as its" +
      " `Cache-Control` says: what is kept costs nothing.",
  },
  "too-many-streams": {
    status: 429,
    title: "Too many streams are open",
    help:
      "An address, or an access token, may have so many streams of events open as `detail` says. One stream without `publisher` tells of the" +
      " plans of all publishers. The header `Retry-After` says when to try again.",
  },
  overloaded: {
    status: 503,
    title: "The service is overloaded",
    help: "Nothing was done. Try again after as many seconds as the header `Retry-After` says.",
  },
  unavailable: {
    status: 503,
    title: "The database cannot be reached at the moment",
    help:
      "Ask again after as many seconds as the header `Retry-After` says. What was to be changed may have been changed or not: send it" +
      " again under its idempotency key where it has one.",
  },
  "timed-out": {
    status: 504,
    title: "This took too long",
    help: "It was stopped. Request less, or try again later.",
  },
  fault: {
    status: 500,
    title: "An internal error occurred",
    help: "Quote the `requestId` when you report it.",
  },
} as const satisfies Record<string, { readonly status: number; readonly title: string; readonly help: string }>;

export type ProblemKind = keyof typeof problemKinds;

/** A problem for where there is no request that could be named: no instance, no id. */
export function sentProblem(kind: ProblemKind): {
  readonly status: number;
  readonly title: string;
  readonly body: string;
} {
  const { status, title, help } = problemKinds[kind];
  return {
    status,
    title,
    body: JSON.stringify({ type: problemType(kind), title, status, detail: help, problems: [] }),
  };
}

/** Where the page about a kind is. */
export const problemAddress = (kind: string): string => `/problems/${kind}`;

/** The `type` of a problem document: as registered where somebody registered it, else the address of our page. */
export const problemType = (kind: ProblemKind): string =>
  // draft-ietf-httpapi-ratelimit-headers, 5.1
  kind === "quota-exceeded" ? "https://iana.org/assignments/http-problem-types#quota-exceeded" : problemAddress(kind);
