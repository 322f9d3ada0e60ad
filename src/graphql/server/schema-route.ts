import type { FastifyInstance } from "fastify";
import { printSchema, type GraphQLSchema } from "graphql";
import { liveCaching } from "../../http/caching.js";
import { tagOf } from "../../http/entity-tag.js";
import { sendShared } from "../../http/send-shared.js";

/** `/schema.graphql`: the schema as text, for generators and editors, with what fields cost. */
export function registerSchemaText(app: FastifyInstance, schema: GraphQLSchema): void {
  const body = Buffer.from(`${printSchema(schema)}\n`);
  const answer = { body, type: "text/plain; charset=utf-8", etag: tagOf(body), vary: null };
  app.get("/schema.graphql", (request, reply) =>
    sendShared({ ...answer, onCompressed: () => undefined }, request, reply.header("cache-control", liveCaching)),
  );
}
