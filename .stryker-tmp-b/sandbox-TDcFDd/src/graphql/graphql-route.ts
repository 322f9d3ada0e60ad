// @ts-nocheck
import type { ApolloServer } from "@apollo/server";
import type { FastifyError, FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import type { Deps } from "../services/deps.js";
import { createContext, type Context } from "./context.js";
import { executeOverHttp } from "./execute-over-http.js";
import { faultCode, faultMessage } from "./errors.js";
import type { Explorer } from "./explorer.js";
import { readJsonBody } from "./json-body.js";
import { refusal } from "./refusal.js";

export const graphqlPath = "/graphql";

export interface GraphqlRouteOptions {
  readonly deps: Deps;
  /** Started. */
  readonly server: ApolloServer<Context>;
  /** The page for browsers; null where it was not built. */
  readonly explorer: Explorer | null;
}

/** The endpoint, and for browsers a page to explore it. Every answer but that page is JSON, errors included. */
export function registerGraphql(app: FastifyInstance, { deps, server, explorer }: GraphqlRouteOptions): void {
  void app.register((scope, _options, done) => {
    scope.removeAllContentTypeParsers();
    scope.addContentTypeParser("application/json", { parseAs: "buffer" }, readJsonBody);
    scope.setErrorHandler((error: FastifyError, request, reply) => refuse(error, request, reply));
    const ask = (request: FastifyRequest, reply: FastifyReply): Promise<FastifyReply> =>
      executeOverHttp(server, createContext(deps, request.id, request.actor), request, reply);
    scope.get(graphqlPath, (request, reply) =>
      explorer !== null && wantsPage(request) ? explorer.sendPage(reply) : ask(request, reply),
    );
    scope.post(graphqlPath, (request, reply) => {
      const refused = bodyRefusal(request.body);
      return refused ? reply.code(400).send(refused) : ask(request, reply);
    });
    scope.route({
      method: ["PUT", "PATCH", "DELETE"],
      url: graphqlPath,
      handler: (_request, reply) =>
        reply
          .code(405)
          .header("allow", "GET, HEAD, POST")
          .send(refusal("METHOD_NOT_ALLOWED", "Send an operation by POST, or a query by GET.")),
    });
    if (explorer !== null) {
      scope.get(`${graphqlPath}/explorer/:name`, (request: FastifyRequest<{ Params: { name: string } }>, reply) =>
        explorer.sendAsset(request.params.name, reply),
      );
    }
    done();
  });
}

/** A browser following a link: it would rather have a page, and asks nothing. */
const wantsPage = (request: FastifyRequest): boolean =>
  (request.headers.accept ?? "").includes("text/html") && !/[?&]query=/.test(request.url);

function bodyRefusal(body: unknown): ReturnType<typeof refusal> | null {
  if (Array.isArray(body)) {
    return refusal("BATCHING_REFUSED", "Send one operation a request. Lists of operations are not taken.");
  }
  if (typeof body === "object" && body !== null) return null;
  return refusal("BAD_REQUEST", "The body must be a JSON object with a `query`.");
}

function refuse(error: FastifyError, request: FastifyRequest, reply: FastifyReply): FastifyReply {
  const status = error.statusCode ?? 500;
  if (status === 401) return reply.code(status).send(refusal("UNAUTHENTICATED", error.message));
  if (status === 413) return reply.code(status).send(refusal("TOO_LARGE", "The body is too large."));
  if (status === 415) {
    return reply.code(status).send(refusal("UNSUPPORTED_MEDIA_TYPE", "Send the body as application/json in UTF-8."));
  }
  if (status < 500) return reply.code(status).send(refusal("BAD_REQUEST", error.message));
  request.log.error({ err: error }, "a GraphQL request failed");
  const { errors } = refusal(faultCode, faultMessage);
  return reply
    .code(500)
    .send({ errors: errors.map((each) => ({ ...each, extensions: { ...each.extensions, requestId: request.id } })) });
}
