// @ts-nocheck
import { HeaderMap, type ApolloServer } from "@apollo/server";
import type { FastifyReply, FastifyRequest } from "fastify";
import type { Context } from "./context.js";

/** Hands a request to the engine and its answer to the reply: status, headers, JSON text. */
export async function executeOverHttp(
  server: ApolloServer<Context>,
  context: Context,
  request: FastifyRequest,
  reply: FastifyReply,
): Promise<FastifyReply> {
  const headers = new HeaderMap();
  for (const [name, value] of Object.entries(request.headers)) {
    if (value !== undefined) headers.set(name, Array.isArray(value) ? value.join(", ") : value);
  }
  const query = request.url.indexOf("?");
  const answer = await server.executeHTTPGraphQLRequest({
    httpGraphQLRequest: {
      method: request.method,
      headers,
      search: query < 0 ? "" : request.url.slice(query),
      body: request.body,
    },
    context: () => Promise.resolve(context),
  });
  // Incremental delivery is off, so an answer in chunks cannot be.
  if (answer.body.kind !== "complete") throw new Error("the engine answered in chunks");
  for (const [name, value] of answer.headers) void reply.header(name, value);
  return reply.code(answer.status ?? 200).send(answer.body.string);
}
