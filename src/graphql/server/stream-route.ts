import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { acceptedType } from "../../http/accepted-type.js";
import { callerDisconnected } from "../../http/caller-disconnected.js";
import { eventText, eventStreamType, type EventStream, type WriteStreamEnd } from "../../http/event-stream.js";
import { DatabaseUnavailable, logUnavailable } from "../../services/database-unavailable.js";
import type { Deps } from "../../services/deps.js";
import { shownFault } from "../errors.js";
import type { GraphqlServer } from "./graphql-server.js";
import { readAddress, readBody } from "./read-request.js";
import { refusal, type Refusal } from "./refusal.js";
import type { Subscription } from "./subscriptions.js";

interface StreamRouteOptions {
  readonly deps: Deps;
  readonly server: GraphqlServer;
  /** Answers with a refusal, in the form that errors have at /graphql. */
  refuse(refused: Refusal, request: FastifyRequest, reply: FastifyReply): FastifyReply;
}

const path = "/graphql/stream";

/**
 * Subscriptions over server-sent events, by the distinct connections mode of the GraphQL over SSE protocol
 * (https://github.com/enisdenjo/graphql-sse/blob/master/PROTOCOL.md): one stream for each.
 */
export function registerGraphqlStream(scope: FastifyInstance, { deps, server, refuse }: StreamRouteOptions): void {
  const begin = async (
    method: "GET" | "POST",
    bytes: Buffer,
    request: FastifyRequest,
    reply: FastifyReply,
  ): Promise<FastifyReply> => {
    if (acceptedType(request.headers, [eventStreamType, "text/event-stream"]) === undefined)
      return refuse(notAcceptable, request, reply);
    const subscription = await server.subscribe(
      { method, bytes, read: () => (method === "GET" ? readAddress(request.raw.url ?? "") : readBody(bytes)) },
      {
        charge: (cost) => reply.charge(cost),
        chargeOwed: (steps) => reply.chargeOwed(steps),
        report: (operation) => {
          request.operation = operation;
        },
        gone: () => callerDisconnected(reply.raw),
      },
      { deps, requestId: request.id, actor: request.actor },
    );
    if ("code" in subscription) return refuse(subscription, request, reply);
    try {
      const stream = reply.openStream(":\n\n", endOf(request.id));
      void send(subscription, stream, request);
      return reply;
    } catch (error) {
      subscription.end();
      throw error;
    }
  };
  scope.get(path, { exposeHeadRoute: false }, (request, reply) =>
    begin("GET", Buffer.from(request.raw.url ?? ""), request, reply),
  );
  scope.post(path, (request: FastifyRequest<{ Body?: Buffer }>, reply) =>
    begin("POST", request.body ?? Buffer.alloc(0), request, reply),
  );
  scope.route({
    method: ["HEAD", "PUT", "PATCH", "DELETE"],
    url: path,
    handler: (request, reply) => refuse(wrongMethod, request, reply),
  });
}

async function send(subscription: Subscription, stream: EventStream, { log, id }: FastifyRequest): Promise<void> {
  const end = (): void => subscription.end();
  stream.over.addEventListener("abort", end, { once: true });
  if (stream.over.aborted) end();
  let isFirst = true;
  try {
    for await (const result of subscription.results) {
      // The first is paid with the request.
      if (stream.over.aborted || (!isFirst && !stream.charge(subscription.cost))) return;
      isFirst = false;
      await stream.send(nextText(result));
    }
    stream.finish(complete);
  } catch (error) {
    if (stream.over.aborted) return;
    const isAway = error instanceof DatabaseUnavailable;
    if (isAway) logUnavailable(log, id, error);
    else log.error({ err: error }, "a subscription failed");
    stream.end(isAway ? "UNAVAILABLE" : "FAULT");
  } finally {
    end();
  }
}

const nextText = (data: string): string => eventText({ event: "next", data });
const complete = eventText({ event: "complete", data: "" });

/** A stream that breaks off without `complete` is begun again by its client; where that would not help, it is told why. */
const endOf =
  (requestId: string): WriteStreamEnd =>
  (why, retryMs) => {
    const retry = `retry: ${retryMs}\n\n`;
    if (why === "STOPPING" || why === "TIME" || why === "UNAVAILABLE") return retry;
    const errors = why === "BUDGET" ? noPoints(retryMs).errors : [shownFault(requestId)];
    return nextText(JSON.stringify({ errors })) + complete;
  };

const noPoints = (retryMs: number): Refusal =>
  refusal("RATE_LIMITED", `No points are left to go on. Subscribe again in ${Math.ceil(retryMs / 1_000)} s.`);

const notAcceptable = refusal("NOT_ACCEPTABLE", "Subscriptions are answered as text/event-stream. Accept it.");

const wrongMethod = refusal(
  "METHOD_NOT_ALLOWED",
  "Send a subscription by POST, or by GET.",
  {},
  { headers: { allow: "GET, POST" } },
);
