// @ts-nocheck
import type { FastifyInstance } from "fastify";

/** Whether this process should be sent requests. */
export interface Readiness {
  /** Resolves to what is wrong, or to null if nothing is. Never rejects. */
  check(): Promise<string | null>;
}

/** `/healthz`: the process answers. `/readyz`: it should also be sent requests. */
export function registerHealth(app: FastifyInstance, readiness: Readiness): void {
  app.get("/healthz", (_request, reply) => reply.header("cache-control", "no-store").send({ status: "ok" }));
  app.get("/readyz", async (_request, reply) => {
    const wrong = await readiness.check();
    void reply.header("cache-control", "no-store");
    return wrong === null
      ? reply.send({ status: "ready" })
      : reply.code(503).send({ status: "not ready", reason: wrong });
  });
}
