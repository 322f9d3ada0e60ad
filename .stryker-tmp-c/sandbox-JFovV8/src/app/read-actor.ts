// @ts-nocheck
import type { FastifyInstance } from "fastify";
import type { Actor } from "../services/actor.js";
import { authenticate } from "../services/authenticate.js";
import type { Deps } from "../services/deps.js";

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

/** Gives every request its actor. */
export function readActor(app: FastifyInstance, deps: Deps): void {
  app.decorateRequest("actor");
  app.addHook("onRequest", async (request, reply) => {
    const found = await authenticate(deps, request.headers.authorization);
    if (!found.ok) {
      // RFC 6750, section 3.
      void reply.header("www-authenticate", 'Bearer error="invalid_token"');
      throw new TokenRefused(found.message);
    }
    request.actor = found.actor;
  });
}
