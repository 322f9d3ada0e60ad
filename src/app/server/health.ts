import type { FastifyInstance } from "fastify";
import type { Readiness } from "./readiness.js";

export const healthPaths: ReadonlySet<string> = new Set(["/healthz", "/readyz"]);

/** `/healthz`: the process answers. `/readyz`: it should also be sent requests, or why not. */
export function registerHealth(app: FastifyInstance, readiness: Readiness): void {
  const free = { config: { points: 0 } };
  app.get("/healthz", free, (_request, reply) => reply.send({ status: "ok" }));
  app.get("/readyz", free, async (_request, reply) => {
    const reasons = await readiness.check();
    return reasons.length === 0
      ? reply.send({ status: "ready" })
      : reply.code(503).send({ status: "not ready", reasons });
  });
}
