/** What the client asks. `{{n}}` in the path or the body is another number in each request. */
export interface LoadRequest {
  readonly method: "GET" | "POST";
  readonly path: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: string;
}

/** What GraphQL clients send. */
export const graphqlRequest = (body: object, path = "/graphql"): LoadRequest => ({
  method: "POST",
  path,
  headers: { "content-type": "application/json", accept: "application/json" },
  body: JSON.stringify(body),
});

export interface LoadJob {
  readonly port: number;
  readonly request: LoadRequest;
  /** Requests under way at once. */
  readonly connections: number;
  readonly milliseconds: number;
  /** Requests a second at even distances, whatever the answers take; null: the next as soon as the last is answered. */
  readonly rate: number | null;
  /** The first `{{n}}`. */
  readonly from: number;
}

/** Times in milliseconds. At a rate, from when the request was due: a server that stalls is not spared what it kept waiting. */
export interface LoadMeasured {
  readonly answered: number;
  /** Answers other than 200. */
  readonly refused: number;
  readonly perSecond: number;
  readonly p50: number;
  readonly p99: number;
  /** The `{{n}}` to go on from. */
  readonly next: number;
}
