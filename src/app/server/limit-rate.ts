import type { FastifyInstance, FastifyReply } from "fastify";
import { pointsOwed } from "../../services/access/rate-limit-window.js";
import type { Charged, RateLimit } from "../../services/access/rate-limit.js";
import { callerAddress } from "./caller-address.js";

declare module "fastify" {
  interface FastifyReply {
    /**
     * Charges whoever asks. The header fields of the answer say what is left.
     * @throws QuotaExceeded
     */
    charge(points: number): void;
    /** Charges whoever asks what computing took beyond what was charged before. It never refuses. */
    chargeOwed(steps: number): void;
    /** Points that were charged. */
    paid: number;
    /** Steps that were taken for it. */
    steps: number;
    /** What was charged last; null: nothing, or there is no limit. */
    charged: Charged | null;
  }
  interface FastifyContextConfig {
    /** What a request for this route costs before it is looked at; left out: one point. */
    points?: number;
  }
}

/** Charges every request what its route says. To be called after `readActor`: it asks who asks. */
export function limitRate(app: FastifyInstance, limit: RateLimit): void {
  app.decorateReply("charged", null);
  app.decorateReply("paid", 0);
  app.decorateReply("steps", 0);
  app.decorateReply("chargeOwed", function (this: FastifyReply, steps: number): void {
    this.steps += steps;
    const owed = pointsOwed(this.steps, this.paid);
    if (owed === 0) return;
    this.charged = limit.chargeOwed(this.request.actor, callerAddress(this.request), owed);
    this.paid += owed;
  });
  app.decorateReply("charge", function (this: FastifyReply, points: number): void {
    this.charged = limit.charge(this.request.actor, callerAddress(this.request), points);
    this.paid += points;
  });
  app.addHook("onRequest", (request, reply, done) => {
    const { points = 1 } = request.routeOptions.config;
    if (points > 0) reply.charge(points);
    done();
  });
  // Once for each answer, however often it was charged for.
  app.addHook("onSend", (_request, reply, payload, done) => {
    if (reply.charged !== null && !reply.hasHeader("ratelimit")) reply.headers(reply.charged.fields());
    done(null, payload);
  });
}
