import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";

/** A request that was answered, in words of which there are few: nothing of what was asked or by whom. */
interface RequestEnd {
  readonly part: "graphql" | "rest" | "pages" | "service";
  readonly method: string;
  /** As it was registered: `/v1/plans/:publisher/:slug`; null: there is nothing at that address. */
  readonly route: string | null;
  readonly kind: "query" | "mutation" | "subscription" | "refused" | null;
  /** Name of the operation, where it is one; the caller's own word. */
  readonly operation: string | null;
  /** The same where the operator knows it, so that there are few. */
  readonly registered: string | null;
  /** Slug: of the address, or else of the token. */
  readonly publisher: string | null;
  readonly status: number;
  /** From the head of the request to the last byte of the answer, of a stream to its first. */
  readonly ms: number;
  readonly cost: number | null;
  readonly hasErrors: boolean;
  /** The caller went away first. */
  readonly isAborted: boolean;
}

export type OnRequestEnd = (end: RequestEnd, request: FastifyRequest) => void;

/** Tells the listeners of every request. */
export function reportRequests(app: FastifyInstance, listeners: readonly OnRequestEnd[]): void {
  if (listeners.length === 0) return;
  app.addHook("onResponse", (request, reply, done) => {
    const end = requestEnd(request, reply);
    for (const listen of listeners) listen(end, request);
    done();
  });
}

function requestEnd(request: FastifyRequest, reply: FastifyReply): RequestEnd {
  const { operation: summary } = request;
  const route = request.routeOptions.url ?? null;
  const operation = summary?.operation ?? null;
  const name = operation !== null && /^[_A-Za-z][_0-9A-Za-z]{0,63}$/.test(operation) ? operation : null;
  return {
    part: partOf(route),
    method: request.method,
    route,
    kind: summary?.kind ?? null,
    operation: name,
    registered: summary?.isRegistered === true ? name : null,
    publisher: publisherOf(request),
    status: reply.statusCode,
    ms: Math.round((reply.streamedAfter ?? reply.elapsedTime) * 100) / 100,
    cost: summary?.cost ?? null,
    hasErrors: summary?.hasErrors ?? false,
    // The reader of a stream leaves when it has seen enough.
    isAborted: reply.streamedAfter === null && request.socket.destroyed && !reply.raw.writableFinished,
  };
}

function partOf(route: string | null): RequestEnd["part"] {
  if (route === null) return "pages";
  if (route.startsWith("/graphql")) return "graphql";
  if (route.startsWith("/v1")) return "rest";
  return route === "/healthz" || route === "/readyz" ? "service" : "pages";
}

function publisherOf({ params, actor }: FastifyRequest): string | null {
  const given = (params as Readonly<Record<string, string>> | undefined)?.["publisher"];
  if (given !== undefined) return /^[a-z0-9][a-z0-9-]{0,99}$/.test(given) ? given : null;
  return actor?.kind === "TOKEN" ? actor.publisher : null;
}
