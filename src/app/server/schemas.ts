import type { FastifyInstance } from "fastify";
import { documentKinds, jsonSchemas } from "../../imports/documents/document-kinds.js";

/** `/schemas/{kind}.json`: the JSON Schema of each kind of document, for editors. They may be kept for a day. */
export function registerSchemas(app: FastifyInstance): void {
  const schemas = jsonSchemas();
  for (const kind of documentKinds) {
    const text = JSON.stringify(schemas[kind]);
    app.get(`/schemas/${kind}.json`, (_request, reply) =>
      reply.header("cache-control", "public, max-age=86400").type("application/schema+json; charset=utf-8").send(text),
    );
  }
}
