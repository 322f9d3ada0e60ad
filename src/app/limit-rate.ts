import type { FastifyInstance, FastifyReply } from "fastify";
import type { RateLimit } from "../services/rate-limit.js";
import { callerAddress } from "./caller-address.js";

declare module "fastify" {
  interface FastifyReply {
    /**
     * Charges whoever asks, and says in the header fields of the answer what is left.
     * @throws QuotaExceeded
     */
    charge(points: number): void;
  }
  interface FastifyContextConfig {
    /** What a request for this route costs before it is looked at; left out: one point. */
    points?: number;
  }
}

/** Charges every request what its route says. To be called after `readActor`: it asks who asks. */
export function limitRate(app: FastifyInstance, limit: RateLimit): void {
  app.decorateReply("charge", function (this: FastifyReply, points: number): void {
    const fields = limit.admit(this.request.actor, callerAddress(this.request), points);
    if (fields !== null) this.headers({ ...fields });
  });
  app.addHook("onRequest", (request, reply, done) => {
    const { points = 1 } = request.routeOptions.config;
    if (points > 0) reply.charge(points);
    done();
  });
}
