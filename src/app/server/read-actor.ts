import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { anyone, type Actor } from "../../services/access/actor.js";
import { authenticate } from "../../services/access/authenticate.js";
import type { Deps } from "../../services/deps.js";
import type { RateLimit } from "../../services/access/rate-limit.js";
import { callerAddress } from "./caller-address.js";

declare module "fastify" {
  interface FastifyRequest {
    /** Who asks. Read from the Authorization header before anything else of a request is looked at. */
    actor: Actor;
  }
}

/** A token that is not taken ends the request with 401, in the form that errors have on its route. */
class TokenRefused extends Error {
  override readonly name = "TokenRefused";
  readonly statusCode = 401;
}

/** What an address pays for a token that had to be looked up and was not taken: as much as for an answer below /v1. */
const pointsOfLookUp = 500;

/**
 * Gives every request its actor. A token that is right is always taken, whatever came from its address before; one whose checksum is
 * wrong is refused without a look-up, and every other that is not taken costs its address points.
 */
export function readActor(app: FastifyInstance, deps: Deps, limit: RateLimit): void {
  app.decorateRequest("actor");
  const read = async (authorization: string, request: FastifyRequest, reply: FastifyReply): Promise<void> => {
    const found = await authenticate(deps, authorization);
    if (!found.ok) {
      reply.charged = limit.refuseToken(callerAddress(request), found.lookedUp ? pointsOfLookUp : 0);
      // RFC 6750, section 3.
      void reply.header("www-authenticate", 'Bearer error="invalid_token"');
      throw new TokenRefused(found.message);
    }
    request.actor = found.actor;
  };
  app.addHook("onRequest", (request, reply, done) => {
    const { authorization } = request.headers;
    // Until it is known, so that whatever refuses the request can ask.
    request.actor = anyone;
    // Most have none, and wait for nothing.
    if (authorization === undefined) return done();
    read(authorization, request, reply).then(() => done(), done);
  });
}
