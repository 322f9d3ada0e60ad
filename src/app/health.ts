import type { FastifyInstance } from "fastify";
import type { Readiness } from "./readiness.js";

export const healthPaths: ReadonlySet<string> = new Set(["/healthz", "/readyz"]);

/** `/healthz`: the process answers. `/readyz`: it should also be sent requests, or why not. */
export function registerHealth(app: FastifyInstance, readiness: Readiness): void {
  app.get("/healthz", (_request, reply) => reply.header("cache-control", "no-store").send({ status: "ok" }));
  app.get("/readyz", async (_request, reply) => {
    const reasons = await readiness.check();
    void reply.header("cache-control", "no-store");
    return reasons.length === 0
      ? reply.send({ status: "ready" })
      : reply.code(503).send({ status: "not ready", reasons });
  });
}
