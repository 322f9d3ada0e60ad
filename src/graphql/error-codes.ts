/** What a code of `errors[].extensions.code` says about the whole request. */
export interface ErrorCode {
  /** HTTP status of an answer that holds nothing but this error. */
  readonly status: number;
  /**
   * The request was read and its document was not run, or its answer is not sent. Clients that name `application/json`, the older media type, are told so
   * with 200, as GraphQL over HTTP advises, because they may not look into an answer of another status.
   */
  readonly documentRefused?: true;
}

/** Every code that this layer gives. Codes of `ProblemCode` stand in the schema, and come with data. docs/graphql.md explains them. */
export const errorCodes = {
  BAD_REQUEST: { status: 400 },
  BATCHING_REFUSED: { status: 400 },
  UNAUTHENTICATED: { status: 401 },
  FORBIDDEN: { status: 403 },
  METHOD_NOT_ALLOWED: { status: 405 },
  NOT_ACCEPTABLE: { status: 406 },
  UNSUPPORTED_MEDIA_TYPE: { status: 415 },
  RATE_LIMITED: { status: 429 },
  TOO_MANY_STREAMS: { status: 429 },
  GRAPHQL_PARSE_FAILED: { status: 400, documentRefused: true },
  GRAPHQL_VALIDATION_FAILED: { status: 400, documentRefused: true },
  TOO_LARGE: { status: 400, documentRefused: true },
  OPERATION_RESOLUTION_FAILURE: { status: 400, documentRefused: true },
  BAD_USER_INPUT: { status: 400, documentRefused: true },
  DOCUMENT_NOT_FOUND: { status: 400, documentRefused: true },
  PERSISTED_QUERY_NOT_FOUND: { status: 400, documentRefused: true },
  DOCUMENT_NOT_REGISTERED: { status: 400, documentRefused: true },
  COST_TOO_HIGH: { status: 400, documentRefused: true },
  ANSWER_TOO_LARGE: { status: 400, documentRefused: true },
  INTERNAL_SERVER_ERROR: { status: 500 },
  OVERLOADED: { status: 503 },
  UNAVAILABLE: { status: 503 },
  TIMED_OUT: { status: 504 },
} as const satisfies Record<string, ErrorCode>;

export type ErrorCodeName = keyof typeof errorCodes;
